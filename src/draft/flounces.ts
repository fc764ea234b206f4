import type { Gown } from '../gown/gown.ts';
import { allowanceAt, hasGore, type Layer } from '../gown/layer.ts';
import type { Flounce, Godet } from '../gown/parts.ts';
import { edgeAllRound } from './all-round.ts';
import { draftGown, type GownDraft } from './draft-gown.ts';
import type { LayerDrafts } from './draft-layers.ts';
import { godetHems } from './godets.ts';
import type { Part } from './part.ts';
import { sectorPiece } from './sector-piece.ts';
import { usableWidth } from './usable-width.ts';
import { overlapOf } from './wrapped.ts';

/** Largest angle of one circular piece, radians: beyond it the two ends would lie over each other on the cloth. */
const WIDEST = (7 / 4) * Math.PI;

/** Flounces as parts: each as long round as the edge of its layer where it is sewn on. */
export function flounceParts(
  { flounces, godets, wrapped }: Pick<Gown, 'flounces' | 'godets' | 'wrapped'>,
  drafts: LayerDrafts,
): Part[] {
  return flounces.flatMap((flounce) => {
    const edge = edgeRound(flounce, godets, drafts);
    return edge === undefined ? [] : [flouncePart(flounce, edge, wrapped !== undefined)];
  });
}

/** Length all round of the line that the flounce is sewn to, mm: the layer's hem, or a line above it, godets and all. */
export function edgeRound(
  { sewnTo, aboveHem }: Flounce,
  godets: readonly Godet[],
  drafts: LayerDrafts,
): number | undefined {
  const own = drafts.layers.find(({ layer }) => layer.name === sewnTo.name);
  if (own === undefined) return undefined;
  const { gown, shape } = own.draft;
  const draft = aboveHem === 0 ? own.draft : draftGown(gown, { ...shape, shorter: shape.shorter + aboveHem });
  return 'reason' in draft ? undefined : hemRound({ layer: own.layer, draft }, godets);
}

/** Hem of a layer all round, over the gores that it has and the godets let into them, from edge to edge of a wrap, mm. */
export function hemRound(
  { layer, draft }: { readonly layer: Layer; readonly draft: GownDraft },
  godets: readonly Godet[],
): number {
  const gores = edgeAllRound(draft, 'hem', (gore) => hasGore(layer, gore));
  return gores + godetHems(godets, { layer, draft }) + overlapOf({ layer, draft }, 'hem');
}

function flouncePart(flounce: Flounce, edge: number, open: boolean): Part {
  const { layer, name, depth } = flounce;
  const { top, hem, copies } =
    flounce.kind === 'circular' ? circularPiece(flounce, edge) : straightPiece(flounce, edge);
  return {
    of: { kind: 'flounce', flounce, open },
    layer,
    piece: sectorPiece({ name, top, hem, depth, layers: [name], copies }),
    allowances: {},
    notches: new Map(),
    quartered: true,
    roughCut: flounce.roughCut,
    place: flounce.place,
  };
}

interface Share {
  readonly top: number;
  readonly hem: number;
  readonly copies: number;
}

/** Inner arc = the edge, outer arc = fullness times it: a sector of a ring, in as many pieces as lie flat. */
function circularPiece(flounce: Flounce, edge: number): Share {
  const outer = edge * flounce.fullness;
  const angle = (outer - edge) / flounce.depth;
  const copies = flounce.pieces ?? Math.max(1, Math.ceil(angle / WIDEST));
  return { top: edge / copies, hem: outer / copies, copies };
}

/** Cut across the cloth from selvedge to selvedge unless the maker says in how many pieces. */
function straightPiece({ fullness, pieces, layer }: Flounce, edge: number): Share {
  const run = edge * fullness;
  const copies = pieces ?? stripsFor(run, usableWidth(layer.cloth) - 2 * allowanceAt(layer, 'seam'));
  return { top: run / copies, hem: run / copies, copies };
}

/** Strips of at most `widest` that make up a run. */
export function stripsFor(run: number, widest: number): number {
  return Math.max(1, Math.ceil(run / widest - 1e-9));
}
