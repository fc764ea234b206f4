import type { Gore } from '../measure/gore.ts';
import type { MeasuredGown } from '../measure/gown.ts';
import { polygonOf } from '../measure/path.ts';
import type { PatternPiece } from '../measure/pattern.ts';
import { overlapOf } from '../measure/polygons.ts';
import { cross, distance, minus } from '../measure/segment.ts';

/** The drawing is in mm, nothing moved by a transform, nothing off the sheet, no piece on another. */
export function sheetUntruths({ pattern, facts, layers }: MeasuredGown): string[] {
  const found: string[] = [];
  const [x, y, width, height] = pattern.viewBox;
  if (x !== 0 || y !== 0) found.push(`the viewBox begins at ${x}, ${y}`);
  if (pattern.width !== `${width}mm`) found.push(`width ${pattern.width} against ${width} in the viewBox`);
  if (pattern.height !== `${height}mm`)
    found.push(`height ${pattern.height} against ${height} in the viewBox`);
  if (pattern.hasTransform) found.push('a transform in the pattern');
  const polygons = pattern.pieces.map((piece) => polygonOf(piece.cut, 0.05));
  for (const [i, polygon] of polygons.entries()) {
    const name = pattern.pieces[i]!.gore;
    if (polygon.some((p) => p.x < 0 || p.y < 0 || p.x > width! || p.y > height!))
      found.push(`${name} lies off the sheet`);
    for (const [k, other] of polygons.slice(0, i).entries()) {
      if (isVariant(pattern.pieces[k]!, pattern.pieces[i]!)) continue;
      const shared = overlapOf(polygon, other);
      if (shared > 0.01)
        found.push(`${pattern.pieces[k]!.gore} and ${name} overlap by ${shared.toFixed(2)} mm²`);
    }
  }
  for (const { layer, gores } of layers) {
    for (const gore of gores) {
      if (gore !== undefined && !isRightSideUp(gore))
        found.push(`${layer.name}, ${gore.piece.gore}: drawn mirrored`);
    }
  }
  const names = [...facts.gores.map((gore) => gore.name), ...facts.beside];
  const order = pattern.pieces
    .filter(({ part }) => part === undefined)
    .map((piece) => names.indexOf(piece.gore));
  if (order.includes(-1)) found.push('a piece of no known gore');
  if (order.some((place, i) => i > 0 && place < order[i - 1]!))
    found.push('pieces do not come from the centre front round');
  return found;
}

/** As the wearer's left half: with the waist up, the front edge lies at the left. */
function isRightSideUp(gore: Gore): boolean {
  return cross(minus(gore.waist.to, gore.waist.from), minus(gore.hem.from, gore.waist.from)) > 0;
}

/** Layers that differ only at the hem share one place on the sheet, their waists (of facings the inner edges) and seams drawn on each other. */
function isVariant(a: PatternPiece, b: PatternPiece): boolean {
  if (a.gore !== b.gore || a.part !== b.part) return false;
  const top = ({ sew }: PatternPiece) => sew.get('waist') ?? sew.get('inner-edge');
  const [one, other] = [top(a), top(b)];
  if (one === undefined || other === undefined) return false;
  return [0, 0.5, 1].every((t) => distance(one.segments[0]!.at(t), other.segments[0]!.at(t)) < 0.001);
}
