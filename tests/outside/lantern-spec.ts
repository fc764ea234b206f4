import { stringify } from 'yaml';

/** An invented evening gown with a train set by hand: three layers, a dropped bodice edge, a front on the fold. */
export const LANTERN = stringify({
  format: 1,
  gown: 'Lantern',
  client: 'LAN-07',
  units: 'cm',
  bodice: {
    'waist-seam': 74,
    panels: { front: 11.2, 'side-front': 8.2, side: 8.6, 'side-back': 7.9, back: 6.7 },
    'bones-end': 1.3,
    'drop-below-waist': { 'centre-front': 7, 'front/side-front': 5.5, 'side-front/side': 2.5 },
  },
  gores: [
    { name: 'front', 'on-fold': true, 'half-top': 5.6, 'half-flare': '17deg' },
    { name: 'side-front', top: 8.2, flare: ['10deg', '10deg'] },
    { name: 'side', top: 8.6, flare: ['10deg', '10deg'] },
    { name: 'side-back', top: 7.9, flare: ['10deg', '10.5deg'] },
    { name: 'back', top: 6.7, flare: ['10.5deg', '6deg'] },
  ],
  lengths: {
    measured: 'finished',
    at: {
      'centre-front': 101.5,
      'front/side-front': 103,
      'side-front/side': 106,
      'side/side-back': 112,
      'side-back/back': 139,
      'centre-back': 176,
    },
  },
  train: { 'on-floor': 64.5, begins: 'side-front/side', shape: 'round' },
  allowances: { seam: 1.5, waist: 1.5, hem: 1.5 },
  'rough-cut': { side: 2, 'side-back': 2, back: 2 },
  layers: [
    { name: 'lining', cloth: 'cupro', hem: 'turned', shorter: 2 },
    { name: 'shell', cloth: 'crepe', hem: 'faced' },
    { name: 'organza', cloth: 'organza', hem: 'raw' },
  ],
  cloths: {
    cupro: { width: 148, weight: 70, shrinkage: '1%', price: '7.90', 'sold-by': '0.1m' },
    crepe: { width: 140, weight: 210, 'one-way': true, price: '24.50', 'sold-by': '0.1m' },
    organza: { width: 130, weight: 45, shrinkage: '5%', price: '19.00', 'sold-by': '0.25m' },
  },
  currency: 'GBP',
});
