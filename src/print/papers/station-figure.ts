import type { Curve, Point } from '../../geometry/curve.ts';
import type { Drawing, LineStyle, Mark } from '../drawing.ts';
import { lineMark, textMark } from '../page/ruled-marks.ts';
import { textWidth } from '../text/text-width.ts';

const OUTLINE: LineStyle = { width: 0.35 };
const THIN: LineStyle = { width: 0.2 };
const DASHED: LineStyle = { width: 0.2, dash: [1.2, 0.8] };
const TEXT = 3;

/** Levels of the body figure that are named, from the top, mm in the figure. */
const LEVELS = {
  shoulders: 12.5,
  bust: 16.2,
  underbust: 19.6,
  waist: 23,
  edge: 26.5,
  hip: 31,
  hoop: 53,
  floor: 58.5,
} as const;

type LevelKey = keyof typeof LEVELS;

/** Levels without a name are not measured, and not shown. */
export type LevelNames = Readonly<Partial<Record<LevelKey, string>>>;

/**
 * Two small sketches: a figure from the front with the levels that are measured, and a skirt from her left with the
 * stations numbered from the front round. They show where, not what: nothing in them is to scale.
 */
export function stationFigure(levels: LevelNames, stations: readonly string[], width: number): Drawing {
  const names = Object.values(levels).map((name) => textWidth(name, TEXT));
  const right = LABELS + Math.max(...names) + 8;
  return {
    x: 0,
    y: 0,
    width,
    height: 66,
    marks: [...bodyMarks(levels), ...stationMarks(stations, right, width)],
  };
}

/** Middle of the body, and where its labels begin. */
const MIDDLE = 20;
const LABELS = 44;

function bodyMarks(levels: LevelNames): Mark[] {
  const at = (x: number, y: number): Point => ({ x: MIDDLE + x, y });
  const half = (sign: 1 | -1): Curve[] => [
    line(at(1.2 * sign, 8), at(1.2 * sign, 10)),
    bow(at(1.2 * sign, 10), at(5 * sign, 10.5), at(7.5 * sign, 12.5)),
    line(at(7.5 * sign, 12.5), at(6.2 * sign, 17.5)),
    bow(at(6.2 * sign, 17.5), at(4.6 * sign, 20.5), at(4.4 * sign, 23)),
    line(at(4.4 * sign, 23), at(17 * sign, 57)),
  ];
  const path = (curves: Curve[], style: LineStyle): Mark => ({
    kind: 'path',
    runs: [curves],
    closed: false,
    line: style,
  });
  const heel: Mark[] = [
    lineMark(at(-3, 57.2), at(-2, LEVELS.floor), OUTLINE),
    lineMark(at(3, 57.2), at(2, LEVELS.floor), OUTLINE),
  ];
  const named = (Object.keys(LEVELS) as LevelKey[]).flatMap((level): Mark[] => {
    const name = levels[level];
    if (name === undefined) return [];
    return [
      lineMark(at(REACH[level], LEVELS[level]), { x: LABELS - 1.5, y: LEVELS[level] }, THIN),
      textMark(name, { x: LABELS, y: LEVELS[level] + TEXT * 0.35 }, TEXT),
    ];
  });
  const girths = (['bust', 'underbust'] as const)
    .filter((level) => levels[level] !== undefined)
    .map((level) => {
      const reach = REACH[level];
      return path(
        [bow(at(-reach, LEVELS[level]), at(0, LEVELS[level] + 1.6), at(reach, LEVELS[level]))],
        DASHED,
      );
    });
  return [
    { kind: 'path', runs: [[circle(at(0, 5), 3.2)]], closed: true, line: OUTLINE },
    path(half(1), OUTLINE),
    path(half(-1), OUTLINE),
    path([bow(at(-5.6, 26), at(0, 29.5), at(5.6, 26))], OUTLINE),
    path([bow(at(-17, 57), at(0, 58.2), at(17, 57))], OUTLINE),
    path([bow(at(-6.8, LEVELS.hip), at(0, LEVELS.hip + 2.4), at(6.8, LEVELS.hip))], DASHED),
    ...(levels.hoop === undefined
      ? []
      : [path([bow(at(-15.5, LEVELS.hoop), at(0, LEVELS.hoop + 2), at(15.5, LEVELS.hoop))], DASHED)]),
    lineMark(at(-20, LEVELS.floor), at(20, LEVELS.floor), DASHED),
    ...heel,
    ...girths,
    ...named,
  ];
}

/** Where each level's leader leaves the figure, from its middle. */
const REACH: Readonly<Record<LevelKey, number>> = {
  shoulders: 8,
  bust: 6.5,
  underbust: 5.2,
  waist: 5,
  edge: 6.2,
  hip: 7.4,
  hoop: 16.5,
  floor: 20,
};

function stationMarks(stations: readonly string[], left: number, width: number): Mark[] {
  const [top, floor] = [8, 50];
  const [hemLeft, hemRight] = [left + 2, left + 48];
  const middle = (hemLeft + hemRight) / 2;
  const marks: Mark[] = [
    lineMark({ x: middle - 9, y: top }, { x: middle + 9, y: top }, OUTLINE),
    lineMark({ x: hemLeft - 3, y: floor }, { x: hemRight + 3, y: floor }, DASHED),
  ];
  const column = hemRight + 8;
  const spacing = Math.min(1.5 * TEXT, (floor - top + 8) / Math.max(1, stations.length));
  for (const [i, name] of stations.entries()) {
    const part = stations.length < 2 ? 0.5 : i / (stations.length - 1);
    // Round a body seen from the side the outer stations crowd together.
    const shown = (1 - Math.cos(Math.PI * part)) / 2;
    const outer = i === 0 || i === stations.length - 1;
    const foot = { x: hemLeft + (hemRight - hemLeft) * shown, y: floor };
    marks.push(lineMark({ x: middle - 9 + 18 * shown, y: top }, foot, outer ? OUTLINE : THIN));
    marks.push(
      textMark(String(i + 1), { x: foot.x, y: floor + 1.3 * TEXT }, TEXT, { anchor: 'middle', bold: true }),
    );
    const size = Math.min(
      TEXT,
      spacing / 1.2,
      (TEXT * (width - column)) / Math.max(1, textWidth(`${i + 1}  ${name}`, TEXT)),
    );
    marks.push(textMark(`${i + 1}  ${name}`, { x: column, y: top + spacing * (i + 0.5) }, size));
  }
  return marks;
}

function line(from: Point, to: Point): Curve {
  return { kind: 'line', from, to };
}

/** A curve that leaves and arrives towards one point. */
function bow(from: Point, towards: Point, to: Point): Curve {
  const part = (a: Point, b: Point): Point => ({
    x: a.x + ((b.x - a.x) * 2) / 3,
    y: a.y + ((b.y - a.y) * 2) / 3,
  });
  return { kind: 'cubic', from, control1: part(from, towards), control2: part(to, towards), to };
}

function circle(centre: Point, radius: number): Curve {
  return { kind: 'arc', centre, radius, start: 0, sweep: 2 * Math.PI };
}
