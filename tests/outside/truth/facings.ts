import type { MeasuredGown } from '../measure/gown.ts';
import {
  areaOf,
  type CurvePath,
  directionAtEnd,
  directionAtStart,
  pathOf,
  polygonOf,
} from '../measure/path.ts';
import type { PatternPiece } from '../measure/pattern.ts';
import { loopsOf, overlapOf } from '../measure/polygons.ts';
import { distance, dot, opposite } from '../measure/segment.ts';

/** As the gores' own seams (design, section 3, "Truth"): mm and degrees. */
const SEAM = 0.1;
const ANGLE = 0.1;

/** Facings meet at their seams as the gores that they face do, and have all of the hem between them. */
export function facingUntruths({ pattern, layers, facts }: MeasuredGown): string[] {
  return layers.flatMap(({ layer, gores }) => {
    const own = pattern.pieces.filter(
      ({ part, layers: names }) => part === 'facing' && names.includes(`${layer.name}-facing`),
    );
    if (own.length === 0) return [];
    const found = own.flatMap((piece) => outlineUntruths(piece, layer.name));
    const hems = own.reduce((sum, { sew }) => sum + sew.get('hem')!.length, 0);
    const wanted = gores.reduce((sum, gore) => sum + (gore?.hem.length ?? 0), 0);
    if (!(Math.abs(hems - wanted) <= SEAM))
      found.push(`${layer.name}: faced ${hems} of a hem of ${wanted} mm`);
    for (const { name } of facts.stations) {
      const [a, b] = own.filter(({ sew }) => sew.has(name));
      if (a !== undefined && b !== undefined) found.push(...seamUntruths(a, b, name));
    }
    return found;
  });
}

function seamUntruths(a: PatternPiece, b: PatternPiece, seam: string): string[] {
  const [left, right] = [a.sew.get(seam)!.length, b.sew.get(seam)!.length];
  const sum = angleAtTop(a, seam) + angleAtTop(b, seam);
  return [
    ...(Math.abs(left - right) <= SEAM ? [] : [`facing, ${seam}: ${left} against ${right} mm`]),
    ...(Math.abs(sum - 180) <= ANGLE ? [] : [`facing, ${seam}: its inner edges add to ${sum}°`]),
  ];
}

/** Between the seam downwards and the inner edge, degrees. */
function angleAtTop({ sew }: PatternPiece, seam: string): number {
  const [side, inner] = [sew.get(seam)!, sew.get('inner-edge')!];
  const meets = (a: { x: number; y: number }, b: { x: number; y: number }) => distance(a, b) < 0.01;
  const startsHere = meets(inner.from, side.from) || meets(inner.from, side.to);
  const top = startsHere ? inner.from : inner.to;
  const into = startsHere ? directionAtStart(inner) : opposite(directionAtEnd(inner));
  const down = meets(side.from, top) ? directionAtStart(side) : opposite(directionAtEnd(side));
  return (Math.acos(dot(into, down)) * 180) / Math.PI;
}

function outlineUntruths(piece: PatternPiece, layer: string): string[] {
  const seam = pathOf([...piece.sew.values()].flatMap(({ segments }) => segments));
  const polygon = (path: CurvePath) => polygonOf(path, 0.01);
  const where = `${layer}, facing of ${piece.gore}`;
  const missing = areaOf(seam) - overlapOf(polygon(seam), polygon(piece.cut));
  return [
    ...[seam, piece.cut].flatMap((path) =>
      loopsOf(polygon(path)) === 1 ? [] : [`${where}: crosses itself`],
    ),
    // Whole tenths of a micrometre along some metres of outline.
    ...(missing <= 2 ? [] : [`${where}: ${missing} mm² of it lie outside of the cut line`]),
  ];
}
