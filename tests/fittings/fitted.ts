import { stringify } from 'yaml';
import { type DraftedGown, type Drafting, draft } from '../../src/pipeline.ts';
import type { Tree } from '../outside/plain-gown.ts';

/** Four gores a half with a dropped front and a train: nothing about it is level. Lengths in mm. */
export const GOWN = {
  format: 1,
  gown: 'Trial',
  units: 'mm',
  bodice: {
    'waist-seam': 720,
    'drop-below-waist': { 'centre-front': 50, 'front/side-front': 40, 'side-front/side': 15 },
  },
  gores: [
    { name: 'front', 'on-fold': true, 'half-top': 70, 'half-flare': '9deg' },
    { name: 'side-front', top: 95, flare: '14deg' },
    { name: 'side', top: 100, flare: ['8deg', '10deg'] },
    { name: 'back', top: 95, flare: '16deg' },
  ],
  lengths: { at: { 'centre-front': 960, 'side-front/side': 1000, 'centre-back': 1250 } },
  train: { begins: 'side-front/side', shape: 'round' },
  allowances: { seam: 15, waist: 15, hem: 15 },
  layers: [
    { name: 'lining', cloth: 'calico', hem: 'turned', shorter: 20 },
    { name: 'shell', cloth: 'calico', hem: 'faced' },
  ],
  cloths: { calico: { width: 3000 } },
};

export function drafting(fields: Tree = {}): Drafting {
  return draft({ name: 'gown.yaml', text: stringify({ ...GOWN, ...fields }) });
}

export function fitted(fittings: readonly Tree[], fields: Tree = {}): DraftedGown {
  const { gown, diagnostics } = drafting({ ...fields, ...(fittings.length === 0 ? {} : { fittings }) });
  const errors = diagnostics.filter(({ level }) => level === 'error');
  if (gown === undefined || errors.length > 0)
    throw new Error(`the spec was refused:\n${errors.map((d) => `${d.code}: ${d.message}`).join('\n')}`);
  return gown;
}
