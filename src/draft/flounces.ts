import { lengthOfRun } from '../geometry/length.ts';
import type { FlounceSpec, Spec } from '../gown-file/spec.ts';
import { draftGown, type GownDraft } from './draft-gown.ts';
import type { LayerDrafts } from './draft-layers.ts';
import { godetHems } from './godets.ts';
import { type Part, partLayer } from './part.ts';
import { JOINS, sectorPiece } from './sector-piece.ts';
import { usableWidth } from './usable-width.ts';

/** Largest angle of one circular piece, radians: beyond it the two ends would lie over each other on the cloth. */
const WIDEST = (7 / 4) * Math.PI;

/** Flounces as parts: each as long round as the edge of its layer where it is sewn on. */
export function flounceParts(spec: Spec, drafts: LayerDrafts): Part[] {
  return (spec.flounces ?? []).flatMap((flounce) => {
    const edge = edgeRound(spec, flounce, drafts);
    return edge === undefined ? [] : [flouncePart(spec, flounce, edge)];
  });
}

/** Length all round of the line that the flounce is sewn to, mm: the layer's hem, or a line above it, godets and all. */
export function edgeRound(spec: Spec, flounce: FlounceSpec, drafts: LayerDrafts): number | undefined {
  const own = drafts.layers.find(({ layer }) => layer.name === flounce.layer);
  if (own === undefined) return undefined;
  const { gown, shape } = own.draft;
  const draft =
    flounce.aboveHem === 0
      ? own.draft
      : draftGown(gown, { ...shape, shorter: shape.shorter + flounce.aboveHem });
  if ('reason' in draft) return undefined;
  return hemRound(draft, own.layer.gores) + godetHems(spec, { layer: own.layer, draft });
}

function hemRound(draft: GownDraft, gores: readonly string[] | undefined): number {
  const own = draft.pieces.filter((piece) => gores === undefined || gores.includes(piece.gore));
  const hem = own.reduce((sum, piece) => sum + lengthOfRun(piece.edges[2]!.curves), 0);
  return draft.gown.closed ? hem : 2 * hem;
}

function flouncePart(spec: Spec, flounce: FlounceSpec, edge: number): Part {
  const seam = flounce.allowances.seam ?? spec.allowances.seam ?? 0;
  const { top, hem, copies } =
    flounce.kind === 'circular' ? circularPiece(flounce, edge) : straightPiece(spec, flounce, edge, seam);
  return {
    layer: partLayer(flounce.name, flounce.cloth, flounce.hem, flounce.allowances),
    piece: sectorPiece({
      name: flounce.name,
      top,
      hem,
      depth: flounce.depth,
      layers: [flounce.name],
      copies,
    }),
    allowances: { top: flounce.allowances.top ?? seam, [JOINS.left]: seam, [JOINS.right]: seam },
    notches: new Map(),
    quartered: true,
  };
}

interface Share {
  readonly top: number;
  readonly hem: number;
  readonly copies: number;
}

/** Inner arc = the edge, outer arc = fullness times it: a sector of a ring, in as many pieces as lie flat. */
function circularPiece(flounce: FlounceSpec, edge: number): Share {
  const outer = edge * flounce.fullness;
  const angle = (outer - edge) / flounce.depth;
  const copies = flounce.pieces ?? Math.max(1, Math.ceil(angle / WIDEST));
  return { top: edge / copies, hem: outer / copies, copies };
}

/** Cut across the cloth from selvedge to selvedge unless the maker says in how many pieces. */
function straightPiece(spec: Spec, flounce: FlounceSpec, edge: number, seam: number): Share {
  const run = edge * flounce.fullness;
  const copies = flounce.pieces ?? stripsFor(run, usableWidth(spec, flounce.cloth) - 2 * seam);
  return { top: run / copies, hem: run / copies, copies };
}

/** Strips of at most `widest` that make up a run. */
export function stripsFor(run: number, widest: number): number {
  return Math.max(1, Math.ceil(run / widest - 1e-9));
}
