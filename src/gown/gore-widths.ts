import type { GoreSpec } from '../gown-file/spec.ts';
import type { WidthLevel, WidthRule } from './lines.ts';
import type { FittedTo, LinesAsked } from './lines-asked.ts';
import { slantLevels } from './slant-levels.ts';

/** What decides how wide a gore is below its top. */
export function widthRuleOf(
  asked: LinesAsked,
  gore: GoreSpec,
  index: number,
  tops: readonly number[],
): WidthRule {
  const top = tops[index]!;
  const flare = gore.onFold ? gore.halfFlare : gore.flare;
  if (flare !== undefined)
    return { kind: 'flare', angle: typeof flare === 'number' ? flare : flare[0] + flare[1] };
  const { sweep, petticoat, fitted } = asked;
  const share = top / asked.waistSeam;
  if (fitted !== undefined && sweep !== undefined)
    return { kind: 'girths', levels: fittedLevels(asked, fitted, tops, index, sweep) };
  const hem = (gore.onFold ? gore.halfHem : gore.hem) ?? (sweep === undefined ? undefined : sweep * share);
  if (hem !== undefined) return { kind: 'hem', width: hem, at: asked.lengths.hemWidthAt ?? 0 };
  if (petticoat === undefined) throw new Error(`gore ${gore.name} has no width below its top`);
  const levels = slantLevels(petticoat).filter((level) => level.down > 0);
  const shareAt = (level: number): number =>
    typeof gore.share === 'object' ? (gore.share[level] ?? share) : (gore.share ?? share);
  return {
    kind: 'girths',
    levels: levels.map(({ down, girth }, i) => ({ down, width: girth * shareAt(i) })),
  };
}

/** Of each girth a gore has the part that its top has of the waist: of the front's where the front is known, or of the back's. */
function fittedLevels(
  asked: LinesAsked,
  { levels, sideSeam }: FittedTo,
  tops: readonly number[],
  index: number,
  sweep: number,
): WidthLevel[] {
  const whole = tops.reduce((sum, top) => sum + top, 0);
  const side = sideSeam === undefined ? -1 : asked.names.indexOf(sideSeam);
  const isFront = index < side;
  const part = tops.slice(isFront ? 0 : side, isFront ? side : undefined).reduce((sum, top) => sum + top, 0);
  const own = tops[index]!;
  const halves = asked.round === 'mirrored' ? 2 : 1;
  const widthOf = ({ girth, front }: FittedTo['levels'][number]): number =>
    side <= 0 || front === undefined
      ? (girth / halves) * (own / whole)
      : ((isFront ? front : girth - front) / halves) * (own / part);
  const hem = { down: asked.lengths.hemWidthAt ?? 0, width: (sweep / halves) * (own / whole) };
  return [...levels.map((level) => ({ down: level.down, width: widthOf(level) })), hem];
}
