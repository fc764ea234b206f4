import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';
import type { CutPiece } from '../draft/piece.ts';
import type { ClothSpec } from '../spec/spec.ts';
import { buyLength } from './buy-length.ts';
import { checkLay } from './check-lay.ts';
import { fitToCloth } from './fit-to-cloth.ts';
import type { LayItem } from './lay-items.ts';
import type { ClothFacts, Fold, LayPlan, LaySection, LayWay, PlacedPiece } from './lay-plan.ts';
import * as problems from './lay-problems.ts';
import { layRemarks } from './lay-remarks.ts';
import { type PackedSection, type PackingEffort, SectionPacker } from './pack-section.ts';
import type { StripPacking } from './packing/strip-problem.ts';
import { laidWidth, SHARED_LINE } from './section-strip.ts';
import { spareAreas } from './spare-areas.ts';
import { type UnfoldedPiece, unfolded } from './unfold.ts';
import { type Way, waysOf } from './ways.ts';

/** One layer to lay. */
export interface LayerToLay {
  readonly layer: string;
  readonly cloth: string;
  readonly pieces: readonly CutPiece[];
  readonly spec: ClothSpec;
  readonly facts: ClothFacts;
  /** Allowance of a join along the grain, mm. */
  readonly seam: number;
  readonly span: Span;
  readonly say: (mm: number) => string;
}

export interface LayerPlanned {
  /** Absent where the layer cannot be cut from its cloth. */
  readonly plan?: LayPlan;
  readonly diagnostics: readonly Diagnostic[];
}

/** Lengths nearer than this, mm, are one: the way that is easier to cut is then taken. */
const ALIKE = 1;

/** A way with what it came to. */
interface Tried {
  readonly way: Way;
  readonly packed: readonly PackedSection[] | undefined;
  readonly length: number;
  readonly why: string | undefined;
}

/** Plans every way to lay one layer, takes the shortest of those that the cloth's `fold` allows, and checks it afresh. */
export function planLayer(
  toLay: LayerToLay,
  effort: PackingEffort,
  onBetter: (length: number) => void = () => {},
): LayerPlanned {
  const fitted = fitToCloth(toLay.pieces, toLay);
  if (!('items' in fitted)) return { diagnostics: fitted.diagnostics };
  const { items, railroaded } = fitted;
  const packer = new SectionPacker(items, toLay.facts, effort);
  const ways = railroaded ? waysOf(items).slice(0, 1) : waysOf(items);
  const tried = withSingleAtBest(
    ways.map((way) => tryWay(way, packer, toLay, way.fold === 'single' ? onBetter : undefined)),
    packer,
    toLay.facts,
    onBetter,
  );
  const { taken, diagnostics } = choose(tried, toLay);
  const plan = finished(taken, tried, items, toLay, { joins: fitted.joins, railroaded });
  return { plan, diagnostics: [...fitted.diagnostics, ...diagnostics] };
}

function tryWay(
  way: Way,
  packer: SectionPacker,
  toLay: LayerToLay,
  onBetter?: (length: number) => void,
): Tried {
  for (const section of way.sections) {
    const wide = packer.tooWide(section);
    if (wide !== undefined) {
      const width = laidWidth(toLay.facts, section.fold);
      const why = `${wide.item.cut.gore} takes ${toLay.say(wide.width)}, there are ${toLay.say(width)}`;
      return { way, packed: undefined, length: Infinity, why };
    }
  }
  const packed = way.sections.map((section) => packer.pack(section, onBetter));
  return { way, packed, length: packed.reduce((sum, { length }) => sum + length, 0), why: undefined };
}

/**
 * Any fold opens out to a lay of single cloth that is no longer: where the search found a shorter fold, the single lay
 * starts again from it.
 */
function withSingleAtBest(
  tried: readonly Tried[],
  packer: SectionPacker,
  facts: ClothFacts,
  onBetter: (length: number) => void,
): readonly Tried[] {
  const single = tried[0]!;
  const shortest = tried.reduce((a, b) => (b.length < a.length ? b : a));
  if (shortest === single || shortest.packed === undefined || facts.repeatAcross !== undefined) return tried;
  const section = single.way.sections[0]!;
  const start = openedOut(shortest, packer.pack(section), facts);
  const better = packer.better(section, start, onBetter);
  return [{ ...single, packed: [better], length: better.length }, ...tried.slice(1)];
}

function openedOut(tried: Tried, single: PackedSection, facts: ClothFacts): StripPacking {
  const pieces = unfoldedPieces(tried.packed!, facts);
  const margin = facts.selvedge + facts.edgingDepth - SHARED_LINE / 2;
  const free = [...pieces];
  const placements = single.strip.pieces.map(({ item }, i) => {
    const attitudes = single.strip.problem.items[i]!.attitudes;
    const index = free.findIndex(
      (piece) => piece.item === item && attitudes.some(({ mirrored }) => mirrored === piece.lie.mirrored),
    );
    const { lie } = free.splice(index, 1)[0]!;
    const attitude = attitudes.find(
      ({ mirrored, turned }) => mirrored === lie.mirrored && turned === lie.turned,
    )!;
    return { attitude, x: lie.x - margin, y: lie.y };
  });
  return { length: tried.length, placements };
}

function unfoldedPieces(packed: readonly PackedSection[], facts: ClothFacts): UnfoldedPiece[] {
  let from = 0;
  return packed.flatMap((section, index) => {
    const pieces = unfolded(section, index, from, facts);
    from += section.length;
    return pieces;
  });
}

/** The shortest of the ways that the cloth asks for; of ways alike the one with the fewest cuts. */
function choose(
  tried: readonly Tried[],
  { spec, layer, facts, span, say }: LayerToLay,
): { readonly taken: Tried; readonly diagnostics: readonly Diagnostic[] } {
  const shortestOf = (ways: readonly Tried[]): Tried =>
    ways.reduce((a, b) =>
      b.length < a.length - ALIKE || (b.length < a.length + ALIKE && cutsOf(b) < cutsOf(a)) ? b : a,
    );
  const possible = tried.filter(({ packed }) => packed !== undefined);
  const { fold } = spec;
  if (fold === 'any') return { taken: shortestOf(possible), diagnostics: [] };
  const asked = tried.filter(({ way }) => isAsFolded(way, fold));
  const fitting = asked.filter(({ packed }) => packed !== undefined);
  if (fitting.length > 0) return { taken: shortestOf(fitting), diagnostics: [] };
  const taken = shortestOf(possible);
  const words = { layer, fold: fold === 'single' ? 'single' : `folded ${fold}`, way: taken.way.name };
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
function isAsFolded(way: Way, fold: Fold): boolean {
  if (fold === 'single') return way.fold === 'single';
  const others = way.sections.filter((section) => section.fold !== fold).flatMap(({ items }) => items);
  if (way.sections.every((section) => section.fold !== fold)) return false;
  return others.every(({ kind }) => kind === 'single' || (fold === 'crosswise' && kind === 'on-fold'));
}

function cutsOf({ packed }: Tried): number {
  return (packed ?? []).reduce((sum, { packing }) => sum + packing.placements.length, 0);
}

function finished(
  taken: Tried,
  tried: readonly Tried[],
  items: readonly LayItem[],
  toLay: LayerToLay,
  fit: Pick<LayPlan, 'joins' | 'railroaded'>,
): LayPlan {
  const { facts, spec } = toLay;
  const area = items.reduce((sum, { whole, copies }) => sum + whole.area * copies, 0);
  const used = (length: number): number => area / (length * facts.width);
  const pieces = numbered(unfoldedPieces(taken.packed!, facts));
  const faults = checkLay(pieces, facts, taken.length);
  if (faults.length > 0) throw new Error(`the lay of ${toLay.layer} fails its check: ${faults.join('; ')}`);
  const sections = sectionsOf(taken.packed!, facts);
  const ways = tried.map((one): LayWay => {
    const { way, packed, length, why } = one;
    const known = packed !== undefined;
    return {
      name: way.name,
      fold: way.fold,
      length: known ? length : undefined,
      used: known ? used(length) : undefined,
      buy: known ? buyLength(length, spec) : undefined,
      handling: known ? handlingOf(one, facts) : '',
      why,
      taken: one === taken,
    };
  });
  const plan = {
    layer: toLay.layer,
    cloth: toLay.cloth,
    facts,
    fold: taken.way.fold,
    way: taken.way.name,
    sections,
    length: taken.length,
    used: used(taken.length),
    buy: buyLength(taken.length, spec),
    pieces,
    spare: spareAreas(pieces, sections, facts, taken.length),
    ways,
    ...fit,
  };
  return { ...plan, remarks: layRemarks(plan, toLay.say) };
}

function sectionsOf(packed: readonly PackedSection[], facts: ClothFacts): LaySection[] {
  let from = 0;
  return packed.map(({ section: { fold }, length }) => {
    const to = from + length;
    const section = { fold, from, to, upperTurned: fold === 'crosswise' && facts.oneWay };
    from = to;
    return section;
  });
}

/** Down the cloth, then across it; plies cut at once share a number. */
function numbered(pieces: readonly UnfoldedPiece[]): PlacedPiece[] {
  const cuts = new Map<string, UnfoldedPiece>();
  for (const piece of pieces) {
    const key = cutKey(piece);
    if (!cuts.has(key)) cuts.set(key, piece);
  }
  const order = [...cuts]
    .sort(
      ([, a], [, b]) => a.placed.section - b.placed.section || topOf(a) - topOf(b) || a.cutAt.x - b.cutAt.x,
    )
    .map(([key]) => key);
  const copies = new Map<LayItem, number>();
  return pieces
    .map((piece) => ({ piece, number: order.indexOf(cutKey(piece)) + 1 }))
    .sort((a, b) => a.number - b.number)
    .map(({ piece, number }) => ({ ...piece.placed, number, copy: copyOf(piece, copies) }));
}

function cutKey({ placed, cut }: UnfoldedPiece): string {
  return `${placed.section} ${cut}`;
}

function topOf({ cutAt, item }: UnfoldedPiece): number {
  return cutAt.y - item.whole.height / 2;
}

/** Of a pair the piece as drawn is 1 and its mirror image 2; others count in the order of cutting. */
function copyOf({ item, placed }: UnfoldedPiece, counted: Map<LayItem, number>): number {
  if (item.kind === 'pair') return placed.mirrored ? 2 : 1;
  const copy = (counted.get(item) ?? 0) + 1;
  counted.set(item, copy);
  return copy;
}

function handlingOf(tried: Tried, facts: ClothFacts): string {
  const cuts = cutsOf(tried);
  const double = tried
    .packed!.filter(({ section }) => section.fold !== 'single')
    .reduce((sum, { packing }) => sum + packing.placements.length, 0);
  const turned = facts.oneWay && tried.way.sections.some(({ fold }) => fold === 'crosswise');
  return [
    `${cuts} ${cuts === 1 ? 'piece' : 'pieces'} to mark`,
    ...(double === 0 ? [] : double === cuts ? ['all cut double'] : [`${double} cut double`]),
    ...(turned ? ['upper layer cut off and turned round'] : []),
  ].join(', ');
}
