import type { MakingFacts } from '../making-facts.ts';
import { step, type UnplacedStep } from './step.ts';
import { cutId, type StepId, togetherId } from './step-id.ts';

/**
 * A skirt that wraps: its edges are finished before it hangs, so that their weight draws them down, and what holds them
 * is set at the fitting, where she has shown how tightly she wears it.
 */
export function wrapSteps({ bench: { gown } }: MakingFacts): UnplacedStep[] {
  const { wrap } = gown;
  if (wrap === undefined) return [];
  const { at, over, edges, overlap, overlapAtHem, facing, ties, fastened } = wrap;
  const layers = gown.layers.map(({ name }) => name);
  const waist = togetherId('waist', layers);
  const sewn = layers.flatMap((name): StepId[] => [`seams:${name}`, `darts:${name}`]);
  return [
    step(
      'wrap-edges',
      ['stay-edges', ...sewn, ...(facing === undefined ? [] : [cutId(facing.layer)])],
      {
        kind: 'wrap-edges',
        at,
        layers,
        edges,
        facing: facing && { name: facing.layer.name, depth: facing.depth },
      },
      { before: [waist, 'hang'] },
    ),
    ...(ties === undefined
      ? []
      : [
          step(
            'wrap-ties',
            [cutId(ties.layer), 'mark'],
            { kind: 'wrap-ties', name: ties.layer.name, length: ties.length, width: ties.width, over },
            { before: [waist] },
          ),
        ]),
    step(
      'fasten-wrap',
      ['fit', waist],
      { kind: 'fasten-wrap', at, over, overlap, overlapAtHem, fastened, tiesCut: ties !== undefined },
      { before: ['finish'] },
    ),
  ];
}
