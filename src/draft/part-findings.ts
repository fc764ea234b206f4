import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import { selfCrossing } from '../geometry/self-crossing.ts';
import { FLAT } from '../geometry/tolerances.ts';
import type { Gown } from '../gown/gown.ts';
import type { LayerDrafts } from './draft-layers.ts';
import { edgeRound } from './flounces.ts';
import { hasGodet } from './godets.ts';
import type { Part } from './part.ts';
import { flounceAboveWaist, godetBeyondSeam, partCrossesItself } from './part-problems.ts';

/** Flounces and godets that find no room on the drafted gown: none is left out in silence. */
export function partFindings(gown: Gown, drafts: LayerDrafts, parts: readonly Part[]): Diagnostic[] {
  const isMade = (name: string, layer: string): boolean =>
    parts.some((part) => part.piece.gore === name && part.layer.name === layer);
  const godets = gown.godets.flatMap((godet) => {
    const { name, seam, from } = godet;
    const lacking = drafts.layers.find(
      (own) => hasGodet(godet, own.layer) && !isMade(godet.name, own.layer.name),
    );
    if (lacking === undefined) return [];
    const { gown: lines, lengths } = lacking.draft;
    const own = lengths.filter((_, station) => lines.stations[station]!.name === seam);
    const shortest = Math.min(...own);
    // Between the seam's two halves it finds no hem: so wide at its foot that it would lie over itself.
    if (from < shortest) return [partCrossesItself(godet.place(), name)];
    const length = tapeText(shortest, gown.units);
    return [godetBeyondSeam(godet.place('from'), name, seam, tapeText(from, gown.units), length)];
  });
  const flounces = gown.flounces.flatMap((flounce) =>
    edgeRound(flounce, gown.godets, drafts) === undefined
      ? [flounceAboveWaist(flounce.place('above-hem'), flounce.name, flounce.sewnTo.name)]
      : [],
  );
  const crossing = parts
    .filter(
      ({ piece }) =>
        selfCrossing(
          piece.edges.flatMap(({ curves }) => curves),
          FLAT,
        ) !== undefined,
    )
    .map(({ piece, place }) => partCrossesItself(place(), piece.gore));
  return [...godets, ...flounces, ...crossing];
}
