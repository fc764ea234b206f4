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
