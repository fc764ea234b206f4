import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { FOLD_WORDS, layWords } from '../../diagnostics/lay-words.ts';
import type { LayItem } from './lay-items.ts';
import type { ClothFacts, Fold, LayHandling, TooWide } from './lay-plan.ts';
import * as problems from './lay-problems.ts';
import type { LayToPlan } from './lay-to-plan.ts';
import type { PackedSection } from './pack-section.ts';
import { laidWidth } from './section-strip.ts';
import type { Way } from './ways.ts';

/** Lengths nearer than this, mm, are one: the way that is easier to cut is then taken. */
const ALIKE = 1;

/** A way with what it came to. */
export interface TriedWay {
  readonly way: Way;
  /** Undefined where the cloth is too narrow for it. */
  readonly packed: readonly PackedSection[] | undefined;
  /** mm of flat cloth; infinite where it cannot be. */
  readonly length: number;
  readonly tooWide: TooWide | undefined;
}

/**
 * The shortest of the ways that the cloth asks for; of ways alike the one with the fewest cuts.
 *
 * @param most a length that one of the ways is known to come to, mm: fewer cuts are not worth even a millimetre more
 */
export function chooseWay(
  tried: readonly TriedWay[],
  { spec, layers, facts, span, say }: LayToPlan,
  most = Infinity,
): { readonly taken: TriedWay; readonly diagnostics: readonly Diagnostic[] } {
  const shortestOf = (ways: readonly TriedWay[]): TriedWay => {
    const within = ways.filter(({ length }) => length <= most);
    return (within.length === 0 ? ways : within).reduce((a, b) =>
      b.length < a.length - ALIKE || (b.length < a.length + ALIKE && cutsOf(b) < cutsOf(a)) ? b : a,
    );
  };
  const possible = tried.filter(({ packed }) => packed !== undefined);
  const { fold } = spec;
  if (fold === 'any') return { taken: shortestOf(possible), diagnostics: [] };
  const asked = tried.filter(({ way }) => isAsFolded(way, fold));
  const fitting = asked.filter(({ packed }) => packed !== undefined);
  if (fitting.length > 0) return { taken: shortestOf(fitting), diagnostics: [] };
  const taken = shortestOf(possible);
  const words = {
    layers: layers.map(({ name }) => name),
    fold: FOLD_WORDS[fold],
    way: layWords(taken.way.folds),
  };
  const wide = asked[0]?.way.sections
    .filter((section) => section.fold === fold)
    .flatMap(({ items }) => items)
    .reduce<LayItem | undefined>(
      (a, b) => (a === undefined || widthOnFold(b) > widthOnFold(a) ? b : a),
      undefined,
    );
  const diagnostic =
    wide === undefined
      ? problems.foldImpossible(span, words)
      : problems.foldDoesNotFit(span, {
          ...words,
          gore: wide.cut.gore,
          width: say(widthOnFold(wide)),
          usable: say(laidWidth(facts, fold)),
        });
  return { taken, diagnostics: [diagnostic] };
}

function widthOnFold({ half, whole }: LayItem): number {
  return (half ?? whole).width;
}

/** Whether a way does all that can be done with the fold asked for. */
export function isAsFolded(way: Way, fold: Fold): boolean {
  if (fold === 'single') return way.fold === 'single';
  const others = way.sections.filter((section) => section.fold !== fold).flatMap(({ items }) => items);
  if (way.sections.every((section) => section.fold !== fold)) return false;
  return others.every(({ kind }) => kind === 'single' || (fold === 'crosswise' && kind === 'on-fold'));
}

function cutsOf({ packed }: TriedWay): number {
  return (packed ?? []).reduce((sum, { packing }) => sum + packing.placements.length, 0);
}

/** How the way is handled at the table. */
export function handlingOf(tried: TriedWay, facts: ClothFacts): LayHandling {
  const double = tried
    .packed!.filter(({ section }) => section.fold !== 'single')
    .reduce((sum, { packing }) => sum + packing.placements.length, 0);
  const upperTurned = facts.oneWay && tried.way.sections.some(({ fold }) => fold === 'crosswise');
  return { pieces: cutsOf(tried), double, upperTurned };
}
