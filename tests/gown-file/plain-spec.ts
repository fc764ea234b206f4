/** A spec of two gores with nothing that need not be there. */
export const PLAIN = `format: 1
gown: Plain
units: cm
bodice: {waist-seam: 72, panels: {front: 20, back: 26}}
gores:
  - {name: front, on-fold: true, half-hem: 40}
  - {name: back, hem: 60}
lengths: {hem-width-at: 100, at: {centre-front: 104, centre-back: 106}}
allowances: {seam: 1.5, waist: 1.5, hem: 3}
layers: [{name: shell, cloth: crepe, hem: faced}]
cloths: {crepe: {width: 140, selvedge: 1}}
`;
