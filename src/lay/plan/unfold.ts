import type { Line, Point } from '../../geometry/curve.ts';
import { type Placement, placed } from '../../geometry/transform.ts';
import { middleOfBounds, type StripPlacement, signsOf } from '../pack/strip-problem.ts';
import type { LayItem } from './lay-items.ts';
import type { ClothFacts, PlacedPiece } from './lay-plan.ts';
import type { PackedSection } from './pack-section.ts';
import { type SectionPiece, SHARED_LINE } from './section-strip.ts';

/** A placed piece before it has its number in the cutting order; plies cut at once share their `cut`. */
export interface UnfoldedPiece {
  readonly item: LayItem;
  readonly cut: number;
  /** Where the cut lies on the cloth as it is folded, for the order of cutting. */
  readonly cutAt: Point;
  readonly lie: Lie;
  readonly placed: Omit<PlacedPiece, 'number' | 'copy'>;
}

/** Where a shape lies on flat cloth: the middle of its bounds, and how it is flipped. */
export interface Lie {
  readonly x: number;
  readonly y: number;
  readonly mirrored: boolean;
  readonly turned: boolean;
  readonly face: PlacedPiece['face'];
}

/**
 * Opens a packed section out: one placed piece for every piece that falls out of the cloth, in coordinates of the
 * flat cloth, right side up, the section beginning `from` mm down it.
 */
export function unfolded(
  packed: PackedSection,
  section: number,
  from: number,
  facts: ClothFacts,
): UnfoldedPiece[] {
  const { strip, packing } = packed;
  return packing.placements.flatMap((placement, cut) => {
    const piece = strip.pieces[cut]!;
    const cutAt = { x: placement.x, y: from + placement.y };
    if (piece.shape === piece.item.half) {
      const lie = openedOnFold(piece, placement, from, facts);
      return [{ item: piece.item, cut, cutAt, lie, placed: placedWhole(piece.item, lie, section) }];
    }
    return plies(packed, placement, from, facts).map((lie) => ({
      item: piece.item,
      cut,
      cutAt,
      lie,
      placed: placedWhole(piece.item, lie, section),
    }));
  });
}

function plies(
  { section, length }: PackedSection,
  { attitude, x, y }: StripPlacement,
  from: number,
  facts: ClothFacts,
): Lie[] {
  const { mirrored, turned } = attitude;
  const middle = facts.width / 2;
  const down = from + y;
  if (section.fold === 'lengthwise') {
    return [
      { x: middle + x, y: down, mirrored, turned, face: 'up' },
      { x: middle - x, y: down, mirrored: !mirrored, turned, face: 'down' },
    ];
  }
  const across = facts.selvedge + facts.edgingDepth + x - SHARED_LINE / 2;
  const lower: Lie = { x: across, y: down, mirrored, turned, face: 'up' };
  if (section.fold === 'single') return [lower];
  // Cut off at the fold and turned round in its plane, the upper layer keeps its direction and changes its sides;
  // left folded, it runs the other way.
  const upper: Lie = facts.oneWay
    ? { x: facts.width - across, y: down + length / 2, mirrored: !mirrored, turned, face: 'down' }
    : { x: across, y: from + length - y, mirrored: !mirrored, turned: !turned, face: 'down' };
  return [lower, upper];
}

/** Where a half that was laid against the fold lies once it is opened out. */
function openedOnFold(
  { item, shape }: SectionPiece,
  { attitude, y }: StripPlacement,
  from: number,
  facts: ClothFacts,
): Lie {
  const { turned } = attitude;
  const sign = turned ? -1 : 1;
  const whole = middleOfBounds(item.whole.working);
  return {
    x: facts.width / 2 + sign * (whole.x - item.whole.grain.from.x),
    y: from + y + sign * (whole.y - middleOfBounds(shape.working).y),
    mirrored: false,
    turned,
    face: 'up',
  };
}

function placedWhole(
  item: LayItem,
  { x, y, mirrored, turned, face }: Lie,
  section: number,
): Omit<PlacedPiece, 'number' | 'copy'> {
  const shape = item.whole;
  const middle = middleOfBounds(shape.working);
  const signs = signsOf({ shape: 0, mirrored, turned });
  const placement: Placement = {
    mirror: mirrored,
    angle: turned ? Math.PI : 0,
    shift: { x: x - signs.x * middle.x, y: y - signs.y * middle.y },
  };
  return {
    layer: item.layer,
    gore: item.cut.gore,
    mirrored,
    turned: ((turned ? 180 : 0) + (item.railroaded ? 90 : 0) + (item.tilt ?? 0)) % 360,
    section,
    face,
    source: item.cut,
    ...(item.part === undefined ? {} : { part: item.part }),
    outline: shape.outline.map((curve) => placed(placement, curve)),
    grain: placed(placement, shape.grain) as Line,
    notches: shape.notches.map((tick) => placed(placement, tick) as Line),
  };
}
