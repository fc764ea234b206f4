import type { GownDraft } from '../draft/draft-gown.ts';
import type { LayerDrafts } from '../draft/draft-layers.ts';
import type { Part } from '../draft/part.ts';
import type { Piece } from '../draft/piece.ts';
import type { Gown } from '../gown/gown.ts';
import type { Layer } from '../gown/layer.ts';
import { isOneOf, type Loops, type Pocket, type Slit } from '../gown/openings.ts';
import type { Tiers } from '../gown/parts.ts';
import { type OpenPart, shapedStrips } from './edge-strip.ts';
import { BAG_ABOVE, bagPiece } from './pocket-bag.ts';
import { FACING_EDGES, rectangle, STRIP_EDGES } from './rectangle.ts';

type GownWithOpenings = Pick<Gown, 'closure' | 'slits' | 'pockets' | 'loops' | 'tiers' | 'wrap'>;

/** What lies in openings of seams, and loops: plackets, guards, facings, stays, pockets. */
export function openingParts(gown: GownWithOpenings, drafts: LayerDrafts): Part[] {
  return [
    ...closureParts(gown, drafts),
    ...gown.slits.flatMap((slit) => slitParts(slit, drafts)),
    ...gown.pockets.flatMap(pocketParts),
    ...gown.loops.map(loopsPart),
    ...gown.tiers.flatMap(yokeParts),
    ...tiesParts(gown),
  ];
}

/** How far below the opening a guard and a facing reach, mm (common practice). */
const BELOW_OPENING = { guard: 20, facing: 25 } as const;

function closureParts({ closure }: GownWithOpenings, drafts: LayerDrafts): Part[] {
  if (closure?.piece === undefined || closure.opening === undefined) return [];
  const { layer, width } = closure.piece;
  const stops = closure.starts + closure.opening;
  const place = () => closure.place('finish');
  switch (closure.finish) {
    case 'placket': {
      // One strip down one edge of the opening and up the other, folded over both.
      const size = { along: 2 * stops, across: 2 * width };
      const piece = rectangle({ name: layer.name, part: 'placket' }, size, STRIP_EDGES);
      return [partOf(piece, layer, { kind: 'placket', width, opening: stops }, place)];
    }
    case 'guard': {
      const size = { along: stops + BELOW_OPENING.guard, across: 2 * width };
      const piece = rectangle({ name: layer.name, part: 'guard' }, size, STRIP_EDGES);
      return [partOf(piece, layer, { kind: 'guard', width }, place)];
    }
    case 'facing': {
      const { station, side } = closure;
      const open = { stations: [station], side: station.seams === 2 ? side : undefined, from: 0 };
      const pieces = stripsOrRectangle(
        outermostDraft(drafts),
        { ...open, to: stops + BELOW_OPENING.facing },
        { name: layer.name, depth: width, copies: 2 },
      );
      return pieces.map((piece) =>
        partOf(piece, layer, { kind: 'opening-facing', at: station.name }, place, [stops]),
      );
    }
    default:
      return [];
  }
}

/** How far above a slit its facings reach, mm; and the side of the square over its upper end (common practice). */
const ABOVE_SLIT = 20;
const STAY = 50;

function slitParts(slit: Slit, drafts: LayerDrafts): Part[] {
  const { facing, stayLayer, copies, seam } = slit;
  const high = slitHeight(slit, drafts);
  if (high === undefined || high <= 0) return [];
  const place = () => slit.place();
  const { stations, side } = slit;
  const from = (seamLength(stations, drafts.gown) ?? high) - high - ABOVE_SLIT;
  const strips =
    facing === undefined
      ? []
      : stripsOrRectangle(
          outermostDraft(drafts),
          { stations, side, from },
          { name: facing.layer.name, depth: facing.depth, copies: 2 * copies, along: high + ABOVE_SLIT },
        ).map((piece) => partOf(piece, facing.layer, { kind: 'slit-facing', seam }, place, [ABOVE_SLIT]));
  const square = stayLayer && {
    piece: rectangle(
      { name: stayLayer.name, part: 'stay', copies },
      { along: STAY, across: STAY },
      STRIP_EDGES,
    ),
    layer: stayLayer,
  };
  return [
    ...strips,
    ...(square ? [partOf(square.piece, square.layer, { kind: 'slit-stay', seam }, place)] : []),
  ];
}

function outermostDraft({ layers }: LayerDrafts): GownDraft {
  return layers[layers.length - 1]!.draft;
}

/** Facings along an open stretch of a seam: by its shape where it bends, else strips given by their size. */
function stripsOrRectangle(
  draft: GownDraft,
  open: OpenPart,
  { name, depth, copies, along }: { name: string; depth: number; copies: number; along?: number },
): readonly Piece[] {
  const shaped = shapedStrips(draft, open, { name, part: 'facing', depth });
  if (shaped !== undefined) return shaped;
  const size = { along: along ?? (open.to ?? 0) - open.from, across: depth };
  return [rectangle({ name, part: 'facing', copies }, size, FACING_EDGES)];
}

/** From the hem up, where the gown's own seam is longest, mm; undefined where it has no such seam. */
export function slitHeight(
  { aboveHem, belowWaist, stations }: Slit,
  { gown }: LayerDrafts,
): number | undefined {
  const long = seamLength(stations, gown);
  return long === undefined ? undefined : (aboveHem ?? long - (belowWaist ?? 0));
}

/** The gown's own seam, the longest where her sides differ, mm. */
export function seamLength(
  stations: Slit['stations'],
  { gown, lengths }: LayerDrafts['gown'],
): number | undefined {
  const own = gown.stations.flatMap((station, i) =>
    stations.some((one) => isOneOf(station, one)) ? [lengths[i]!] : [],
  );
  return own.length === 0 ? undefined : Math.max(...own);
}

/** A bag has two sides: a pair for one pocket, and a pair of each side for one on both sides of her. */
function pocketParts(pocket: Pocket): Part[] {
  const { layer, copies, opening, seam } = pocket;
  const names = copies > 1 ? [`${layer.name}-front`, `${layer.name}-back`] : [layer.name];
  return names.map((name) => ({
    ...partOf(bagPiece(pocket, name), layer, { kind: 'pocket', seam, opening }, () => pocket.place()),
    notches: new Map([['seam-edge', [BAG_ABOVE, BAG_ABOVE + opening]]]),
  }));
}

function loopsPart({ layer, count, length, width, place }: Loops): Part {
  const piece = rectangle(
    { name: layer.name, part: 'loop' },
    { along: count * length, across: 2 * width },
    STRIP_EDGES,
  );
  return partOf(piece, layer, { kind: 'loops', count, length, width }, () => place());
}

/** One for each edge of a wrap, sewn double. */
function tiesParts({ wrap }: GownWithOpenings): Part[] {
  if (wrap?.ties === undefined) return [];
  const { length, width, layer } = wrap.ties;
  const piece = rectangle(
    { name: layer.name, part: 'tie', copies: 2 },
    { along: length, across: 2 * width },
    STRIP_EDGES,
  );
  return [partOf(piece, layer, { kind: 'ties', length, width }, () => wrap.place('ties'))];
}

/** A straight yoke, as long round as the edge that the first tier is gathered to. */
function yokeParts({ name, yoke, yokeDepth, yokeLayer, place }: Tiers): Part[] {
  if (yokeLayer === undefined || yokeDepth === undefined) return [];
  const size = { along: yoke, across: yokeDepth };
  const piece = rectangle({ name: yokeLayer.name, part: 'yoke' }, size, YOKE_EDGES);
  return [partOf(piece, yokeLayer, { kind: 'yoke', of: name, round: yoke }, () => place('yoke-depth'))];
}

const YOKE_EDGES = ['left-join', 'top', 'right-join', 'bottom'] as const;

/** @param marked on its sewn edge, from its upper end: where what it is sewn to is marked */
function partOf(
  piece: Piece,
  layer: Layer,
  of: Part['of'],
  place: Part['place'],
  marked: readonly number[] = [],
): Part {
  return {
    of,
    layer,
    piece: { ...piece, layers: [layer.name] },
    allowances: {},
    notches: new Map(marked.length === 0 ? [] : [['sewn-edge', marked]]),
    quartered: false,
    lowerSewn: true,
    roughCut: 0,
    place,
  };
}
