import type { Spec } from './spec.ts';

/**
 * Stations in order. Mirrored: the centre front, each seam, the centre back. All the way round: each seam, the closing
 * seam `last/first` in front of the first gore; it lies at the centre front.
 */
export function stationsOf(gores: readonly string[], symmetry: Spec['symmetry']): string[] {
  const seams = gores.slice(1).map((name, index) => `${gores[index]}/${name}`);
  return symmetry === 'none'
    ? [`${gores.at(-1)}/${gores[0]}`, ...seams]
    : ['centre-front', ...seams, 'centre-back'];
}

/** First and last station of an overskirt on the half: its outer edge, and its back edge unless it goes round the back. */
export function endsOfOverskirt(to = 'centre-back'): ['outer-edge', 'back-edge' | 'centre-back'] {
  return ['outer-edge', to === 'centre-back' ? 'centre-back' : 'back-edge'];
}
