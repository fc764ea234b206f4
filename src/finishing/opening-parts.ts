import type { LayerDrafts } from '../draft/draft-layers.ts';
import type { Part } from '../draft/part.ts';
import type { Piece } from '../draft/piece.ts';
import type { Gown } from '../gown/gown.ts';
import type { Layer } from '../gown/layer.ts';
import { isOneOf, type Loops, type Pocket, type Slit } from '../gown/openings.ts';
import type { Tiers } from '../gown/parts.ts';
import { BAG_ABOVE, bagPiece } from './pocket-bag.ts';
import { FACING_EDGES, rectangle, STRIP_EDGES } from './rectangle.ts';

type GownWithOpenings = Pick<Gown, 'closure' | 'slits' | 'pockets' | 'loops' | 'tiers' | 'wrap'>;

/** What lies in openings of seams, and loops: plackets, guards, facings, stays, pockets. */
export function openingParts(gown: GownWithOpenings, drafts: LayerDrafts): Part[] {
  return [
    ...closureParts(gown),
    ...gown.slits.flatMap((slit) => slitParts(slit, drafts)),
    ...gown.pockets.flatMap(pocketParts),
    ...gown.loops.map(loopsPart),
    ...gown.tiers.flatMap(yokeParts),
    ...tiesParts(gown),
  ];
}

/** How far below the opening a guard and a facing reach, mm (common practice). */
const BELOW_OPENING = { guard: 20, facing: 25 } as const;

function closureParts({ closure }: GownWithOpenings): Part[] {
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
      const size = { along: stops + BELOW_OPENING.facing, across: width };
      const piece = rectangle({ name: layer.name, part: 'facing', copies: 2 }, size, FACING_EDGES);
      return [partOf(piece, layer, { kind: 'opening-facing', at: closure.station.name }, place)];
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
  const strip = facing && {
    piece: rectangle(
      { name: facing.layer.name, part: 'facing', copies: 2 * copies },
      { along: high + ABOVE_SLIT, across: facing.depth },
      FACING_EDGES,
    ),
    layer: facing.layer,
  };
  const square = stayLayer && {
    piece: rectangle(
      { name: stayLayer.name, part: 'stay', copies },
      { along: STAY, across: STAY },
      STRIP_EDGES,
    ),
    layer: stayLayer,
  };
  return [
    ...(strip ? [partOf(strip.piece, strip.layer, { kind: 'slit-facing', seam }, place)] : []),
    ...(square ? [partOf(square.piece, square.layer, { kind: 'slit-stay', seam }, place)] : []),
  ];
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

function partOf(piece: Piece, layer: Layer, of: Part['of'], place: Part['place']): Part {
  return {
    of,
    layer,
    piece: { ...piece, layers: [layer.name] },
    allowances: {},
    notches: new Map(),
    quartered: false,
    lowerSewn: true,
    roughCut: 0,
    place,
  };
}
