import type { DartSpec, GoreSpec } from '../gown-file/spec.ts';
import type { Dart } from './cloth.ts';
import { widthRuleOf } from './gore-widths.ts';
import type { Gore, Round } from './lines.ts';
import type { LinesAsked } from './lines-asked.ts';

/** One gore, its top and width as they follow from what is asked of the whole. */
export function goreOf(asked: LinesAsked, gore: GoreSpec, index: number, tops: readonly number[]): Gore {
  const fold = foldOf(gore, index);
  const side = sideOf(asked.round, index, tops);
  const panel = panelOf(asked.panels, gore);
  const top = tops[index]!;
  const { round } = asked;
  const { name, fullness, notes } = gore;
  return {
    name,
    ...(fold === undefined ? {} : { fold }),
    ...(side === undefined ? {} : { side }),
    top,
    ...(panel === undefined ? {} : { panel }),
    width: widthRuleOf(asked, gore, index, tops),
    ...fullnessOf(
      fullness,
      (asked.darts ?? [])
        .filter((dart) => dart.gore === name)
        .map((dart) => ({
          ...dart,
          towards: dart.towards ?? nearerCentre(round, dart, { index, side, tops }),
        })),
      top,
    ),
    grain: grainOf(gore, fold, side),
    roughCut: asked.roughCut[name] ?? 0,
    ...(notes === undefined ? {} : { notes }),
    place: (...path) => asked.place('gores', index, ...path),
  };
}

/** Which side of a gore lies on the fold; one gore alone is folded at the centre front. */
function foldOf({ onFold }: GoreSpec, index: number): 'front' | 'back' | undefined {
  if (!onFold) return undefined;
  return index === 0 ? 'front' : 'back';
}

/** On a ring, gores whose middle lies in the second half of the waist are on the wearer's right. */
function sideOf(round: Round, index: number, tops: readonly number[]): Gore['side'] {
  if (round === 'mirrored') return undefined;
  const all = tops.reduce((sum, top) => sum + top, 0);
  const before = tops.slice(0, index).reduce((sum, top) => sum + top, 0);
  return before + tops[index]! / 2 > (all / 2) * (1 + 1e-9) ? 'right' : 'left';
}

/** A dart is folded towards the centre that it lies nearer to (common practice), as its gore lies round her. */
function nearerCentre(
  round: Round,
  { at }: Pick<DartSpec, 'at'>,
  { index, side, tops }: { index: number; side: Gore['side']; tops: readonly number[] },
): 'front' | 'back' {
  const whole = tops.reduce((sum, top) => sum + top, 0);
  const before = tops.slice(0, index).reduce((sum, top) => sum + top, 0);
  const way = before + (side === 'right' ? 1 - at : at) * tops[index]!;
  const half = round === 'mirrored' ? whole : whole / 2;
  return Math.min(way, 2 * half - way) < half / 2 ? 'front' : 'back';
}

/** Darts are cloth at the waist that is sewn away, and gone at their points. */
function fullnessOf(
  own: GoreSpec['fullness'],
  darts: readonly (DartSpec & Pick<Dart, 'towards'>)[],
  top: number,
): Pick<Gore, 'fullness'> {
  if (own !== undefined) return { fullness: own };
  if (darts.length === 0) return {};
  const taken = darts.reduce((sum, { takesIn }) => sum + takesIn, 0);
  return {
    fullness: {
      ratio: (top + taken) / top,
      where: 'waist',
      by: 'darts',
      darts: darts.map(({ name, at, takesIn, length, towards }) => ({ name, at, takesIn, length, towards })),
    },
  };
}

/** The bodice edge that a gore's top meets; of the half, on a fold. */
function panelOf(panels: LinesAsked['panels'], { name, onFold }: GoreSpec): number | undefined {
  const whole = panels[name];
  return whole === undefined || !onFold ? whole : whole / 2;
}

/** A gore's sewn top, mm; of its half on a fold. */
export function topOf({ panels }: Pick<LinesAsked, 'panels'>, gore: GoreSpec): number {
  const top = (gore.onFold ? gore.halfTop : gore.top) ?? panelOf(panels, gore);
  if (top === undefined) throw new Error(`gore ${gore.name} has no top`);
  return top;
}

/** The ring runs from the front edge to the back edge of a gore on the wearer's left, and the other way on her right. */
function grainOf(gore: GoreSpec, fold: Gore['fold'], side: Gore['side']): Gore['grain'] {
  if (fold !== undefined) return { frontPart: fold === 'front' ? 0 : 1 };
  const [first, second] = side === 'right' ? ['back-edge', 'front-edge'] : ['front-edge', 'back-edge'];
  if (typeof gore.flare === 'object') {
    const [front, back] = gore.flare;
    return side === 'right' ? { front: back, back: front } : { front, back };
  }
  return { frontPart: gore.grain === first ? 0 : gore.grain === second ? 1 : 0.5 };
}
