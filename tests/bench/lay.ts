/**
 * The lay planner on a public strip-packing instance:
 * `npm run bench:lay -- FILE.json --seconds 60 [--seed 1]`, or `--work 4000` for so many million overlap look-ups.
 * Seconds are the processor's, not the clock's, so that a busy machine does not shorten the search. Prints the density and, where it is known, how near that comes to the best published. The search is the one that
 * plans the lays, with the effort meant for many pieces. Work, unlike seconds, gives the same packing on any machine,
 * however busy it is: compare changes by it. The result is checked by another library.
 *
 * FILE.json has the form in which the European Working Group on Cutting and Packing's data sets are published as JSON,
 * documented in `../shared/data/strip-packing/README.md` beside the project: `name`, `strip_height` (the strip's fixed
 * width) and `items`, each with `demand`, `allowed_orientations` in degrees and `shape.data`, a polygon as pairs of numbers.
 */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { Clipper, FillRule, type Path64 } from 'clipper2-ts';
import { packStrip } from '../../src/lay/pack/pack-strip.ts';
import {
  placedOutline,
  type StripPacking,
  type StripProblem,
  signedArea,
} from '../../src/lay/pack/strip-problem.ts';

/**
 * Best densities published, per cent: J. Gardeyn, G. Vanden Berghe, T. Wauters, "An open-source heuristic to reboot
 * 2D nesting research", 2025, arXiv 2509.13329 (hours of computing on 16 cores).
 */
const BEST_PUBLISHED: Readonly<Record<string, number>> = { albano: 89.82, shirts: 90.92 };

/** Least distance kept between items, as a share of the width: far below what density shows. */
const GAP = 1e-8;

/** Grid of the outside check, steps across the strip: its integers stay exact in a double. */
const CHECK_STEPS = 1e10;

/** As far as it is read here; see above. */
interface Instance {
  readonly name: string;
  readonly strip_height: number;
  readonly items: readonly {
    readonly demand: number;
    readonly allowed_orientations?: readonly number[];
    readonly shape: { readonly data: readonly (readonly [number, number])[] };
  }[];
}

const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: {
    seconds: { type: 'string', default: '60' },
    work: { type: 'string' },
    seed: { type: 'string', default: '1' },
  },
});
const file = positionals[0];
const seconds = Number(values.seconds);
const millions = values.work === undefined ? undefined : Number(values.work);
if (file === undefined || !(seconds > 0) || !((millions ?? 1) > 0)) {
  process.stderr.write('usage: npm run bench:lay -- FILE.json [--seconds 60 | --work 4000] [--seed 1]\n');
  process.exit(2);
}

const instance: Instance = JSON.parse(readFileSync(file, 'utf8'));
const problem = problemOf(instance);
const area = problem.items.reduce((sum, item) => sum + areaOf(problem, item.attitudes[0]!.shape), 0);
const density = (packing: StripPacking): number => (100 * area) / (problem.width * packing.length);

const began = process.cpuUsage();
let done = 0;
const packing = packStrip(problem, {
  seed: Number(values.seed),
  spent: (work) => {
    done = work / 1e6;
    return millions === undefined ? worked() / seconds : done / millions;
  },
  onBetter: (better) => {
    if (process.stderr.isTTY)
      process.stderr.write(`\r${worked().toFixed(0)} s ${density(better).toFixed(2)} % `);
  },
});
const took = worked();
if (process.stderr.isTTY) process.stderr.write('\r');

const { overlap, outside } = faults(problem, packing);
const best = BEST_PUBLISHED[instance.name];
const report = [
  `${instance.name}: ${problem.items.length} items, width ${problem.width}, ${took.toFixed(1)} s of the processor, seed ${values.seed}`,
  `length ${packing.length.toFixed(3)}, after ${done.toFixed(0)} million overlap look-ups`,
  `density ${density(packing).toFixed(2)} %`,
  best === undefined
    ? 'best published: not in the table'
    : `best published ${best} %: ${((100 * density(packing)) / best).toFixed(2)} % of it`,
  `checked apart: largest overlap ${overlap.toExponential(1)} of an item's area, outside the strip by ${outside.toExponential(1)}`,
];
process.stdout.write(`${report.join('\n')}\n`);
if (overlap > 1e-9 || outside > problem.width * 1e-9) process.exitCode = 1;

/** Seconds of the processor since the search began. */
function worked(): number {
  const { user, system } = process.cpuUsage(began);
  return (user + system) / 1e6;
}

/** The file's strip runs along x; ours along y. Swapping the axes reflects everything alike. */
function problemOf({ strip_height: width, items }: Instance): StripProblem {
  const shapes: { x: number; y: number }[][] = [];
  const shapeAt = new Map<string, number>();
  return {
    width,
    gap: width * GAP,
    shapes,
    items: items.flatMap(({ demand, allowed_orientations: turns = [0], shape }, index) => {
      const outline = shape.data.map(([along, across]) => ({ x: across, y: along }));
      const attitudes = turns.map((degrees) => {
        const turn = ((degrees % 360) + 360) % 360;
        const key = `${index} ${turn % 180}`;
        if (!shapeAt.has(key)) shapeAt.set(key, shapes.push(turnedBy(outline, turn % 180)) - 1);
        return { shape: shapeAt.get(key)!, mirrored: false, turned: turn >= 180 };
      });
      return Array.from({ length: demand }, () => ({ attitudes }));
    }),
  };
}

function turnedBy(outline: { x: number; y: number }[], degrees: number): { x: number; y: number }[] {
  if (degrees === 0) return outline;
  const [cos, sin] =
    degrees === 90 ? [0, 1] : [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return outline.map(({ x, y }) => ({ x: x * cos + y * sin, y: y * cos - x * sin }));
}

function areaOf({ shapes }: StripProblem, shape: number): number {
  return Math.abs(signedArea(shapes[shape]!));
}

/** Largest overlap of two items as a share of the smaller one's area, and how far an item lies outside. */
function faults(
  of: StripProblem,
  { placements, length }: StripPacking,
): { overlap: number; outside: number } {
  const outlines = placements.map((placement) => placedOutline(of, placement));
  const points = outlines.flat();
  const outside = Math.max(0, ...points.flatMap(({ x, y }) => [-x, x - of.width, -y, y - length]));
  const scale = CHECK_STEPS / of.width;
  const paths: Path64[] = outlines.map((outline) =>
    outline.map(({ x, y }) => ({ x: Math.round(x * scale), y: Math.round(y * scale) })),
  );
  let overlap = 0;
  for (let i = 0; i < paths.length; i++) {
    for (let j = 0; j < i; j++) {
      const common = Clipper.intersect([paths[i]!], [paths[j]!], FillRule.NonZero);
      const shared = common.reduce((sum, path) => sum + Math.abs(Clipper.area(path)), 0);
      const smaller = Math.min(Math.abs(Clipper.area(paths[i]!)), Math.abs(Clipper.area(paths[j]!)));
      overlap = Math.max(overlap, shared / smaller);
    }
  }
  return { overlap, outside };
}
