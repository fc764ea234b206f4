import { stringify } from 'yaml';

export type Tree = Record<string, unknown>;

/** A spec of one layer in one cloth, for what a test does not speak of. Fields given replace these whole. */
export function plainGown(fields: Tree): string {
  return stringify({
    format: 1,
    gown: 'Trial',
    allowances: { seam: '15mm', waist: '15mm', hem: '10mm' },
    layers: [{ name: 'shell', cloth: 'calico', hem: 'faced' }],
    cloths: { calico: { width: '300cm' } },
    ...fields,
  });
}

/** One length at both centres, so at every station. */
export function level(length: number | string, hemWidthAt: number | string = length): Tree {
  return {
    measured: 'finished',
    'hem-width-at': hemWidthAt,
    at: { 'centre-front': length, 'centre-back': length },
  };
}

/** Waist 28 in, 38 in long: a front on the fold, two sides and a back; in inches. */
export function sevenGores(back: Tree, fields: Tree = {}): string {
  return plainGown({
    units: 'in',
    bodice: { 'waist-seam': 28 },
    gores: [
      { name: 'front', 'on-fold': true, 'half-top': 2, 'half-hem': 6 },
      { name: 'side', top: 4, hem: 10 },
      { name: 'side-back', top: 4, hem: 11 },
      back,
    ],
    lengths: level(38),
    ...fields,
  });
}

/** Circles' shares of a whole turn at a waist of 26 in: radius = W ÷ 2πf. */
export const CIRCLES_OF_26 = [
  { circle: 'full', part: 1, radius: 4.138 },
  { circle: 'half', part: 1 / 2, radius: 8.276 },
  { circle: 'third', part: 1 / 3, radius: 12.414 },
  { circle: 'quarter', part: 1 / 4, radius: 16.552 },
];

/** Waist 70 cm, 100 cm long: a front on the fold, a side and a back. */
export function threeGores(fields: Tree = {}): string {
  return plainGown({
    units: 'cm',
    bodice: { 'waist-seam': 70 },
    gores: [
      { name: 'front', 'on-fold': true, 'half-top': 9, 'half-hem': 30 },
      { name: 'side', top: 14, hem: 45 },
      { name: 'back', top: 12, hem: 40 },
    ],
    lengths: level(100),
    ...fields,
  });
}
