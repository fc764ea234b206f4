import type { Source, Span } from '../../src/diagnostics/diagnostic.ts';
import type { CutPiece } from '../../src/draft/piece.ts';
import type { Line, Point } from '../../src/geometry/curve.ts';
import { flattenedRun } from '../../src/geometry/flatten.ts';
import type { ClothSpec } from '../../src/gown-file/spec.ts';
import type { ClothFacts, LayPlan, PlacedPiece } from '../../src/lay/plan/lay-plan.ts';
import { gownToLay } from '../../src/lay/plan/lay-to-plan.ts';
import { type LayPlanned, planLay } from '../../src/lay/plan/plan-lay.ts';
import { type LaysPlanned, planLays } from '../../src/lay/plan/plan-lays.ts';
import { draft } from '../../src/pipeline.ts';
import { overlapBy } from './polygons.ts';

const SOURCE: Source = { name: 'invented', text: '' };
const NOWHERE: Span = { source: SOURCE, start: 0, end: 0 };

/** A cut piece with straight edges, clockwise as drawn from its top left corner; its grain down the middle. */
export function flatPiece(
  gore: string,
  corners: readonly Point[],
  cut: CutPiece['piece']['cut'],
  options: { readonly copies?: number; readonly foldEdge?: number } = {},
): CutPiece {
  const edges = corners.map((from, i) => {
    const line: Line = { kind: 'line', from, to: corners[(i + 1) % corners.length]! };
    const name = i === options.foldEdge ? 'fold' : ['top', 'back', 'hem', 'front'][i % 4]!;
    return { name, curves: [line] };
  });
  const ys = corners.map(({ y }) => y);
  const x = corners.reduce((sum, corner) => sum + corner.x, 0) / corners.length;
  return {
    piece: {
      gore,
      layers: ['layer'],
      edges,
      frontEdge: options.foldEdge === 3 ? 'fold' : 'front',
      backEdge: options.foldEdge === 1 ? 'fold' : 'back',
      grain: { kind: 'line', from: { x, y: Math.min(...ys) }, to: { x, y: Math.max(...ys) } },
      cut,
      ...(options.copies === undefined ? {} : { copies: options.copies }),
    },
    gore,
    layers: ['layer'],
    cutEdges: edges,
    notches: [],
    marks: [],
    allowances: {},
    roughCut: 0,
    labelAt: { x, y: (Math.min(...ys) + Math.max(...ys)) / 2 },
  };
}

export function clothOf(cloth: Partial<ClothSpec>): ClothSpec {
  return {
    width: 1400,
    selvedge: 0,
    oneWay: false,
    fold: 'any',
    shrinkage: 0,
    pricedPer: 1000,
    endLoss: 0,
    safety: 0,
    ...cloth,
  };
}

export function factsOf(cloth: Omit<ClothSpec, 'price'>, edgingDepth = 0): ClothFacts {
  return {
    width: cloth.width,
    selvedge: cloth.selvedge,
    edgingDepth,
    usable: cloth.width - 2 * cloth.selvedge - 2 * edgingDepth,
    oneWay: cloth.oneWay,
    repeatDown: cloth.repeatDown,
    repeatAcross: cloth.repeatAcross,
  };
}

/** Plans invented pieces on an invented cloth, with little work: for shapes whose best lay is known. */
export function laid(
  pieces: readonly CutPiece[],
  cloth: Partial<ClothSpec>,
  work = 3e5,
  layers: readonly string[] = ['layer'],
): LayPlanned {
  const spec = clothOf(cloth);
  return planLay(
    {
      name: 'cloth',
      cloth: 'cloth',
      layers: layers.map((name) => ({ name, seam: 15 })),
      pieces,
      spec,
      facts: factsOf(spec),
      span: NOWHERE,
      say: (mm) => `${Math.round(mm)} mm`,
    },
    {
      seed: 1,
      work: { cutting: () => work, comparing: () => work / 4 },
      stopped: () => false,
    },
  );
}

/** The lays of a spec as text, each layer's cloth changed as asked. */
export function laysOf(
  text: string,
  cloth: Partial<ClothSpec> = {},
  layers?: readonly string[],
  seed = 1,
): LaysPlanned {
  const { gown, diagnostics } = draft({ name: 'gown.yaml', text });
  if (gown === undefined) throw new Error(diagnostics.map(({ message }) => message).join('\n'));
  const toLay = gownToLay({
    ...gown,
    layers: gown.layers.filter(({ name }) => layers?.includes(name) ?? true),
  });
  const changed = toLay.lays.map((own) => {
    const spec = { ...own.spec, ...cloth };
    return { ...own, spec, facts: factsOf(spec, own.facts.edgingDepth) };
  });
  return planLays({ ...toLay, lays: changed }, { seed, say: (mm) => `${(mm / 10).toFixed(1)} cm` });
}

export function ringOf({ outline }: PlacedPiece): Point[] {
  return flattenedRun(outline, 0.005).slice(0, -1);
}

/** What another library finds wrong with a lay: pieces that overlap by over 0.05 mm or lie outside the cloth. */
export function faultsOf({ pieces, facts, length }: LayPlan): string[] {
  const rings = pieces.map(ringOf);
  const margin = facts.selvedge + facts.edgingDepth;
  return rings.flatMap((ring, i) => {
    const name = `${pieces[i]!.gore} ${pieces[i]!.copy}`;
    const outside = ring.some(
      ({ x, y }) => x < margin - 0.05 || x > facts.width - margin + 0.05 || y < -0.05 || y > length + 0.05,
    );
    const overlaps = rings
      .slice(0, i)
      .flatMap((other, j) =>
        overlapBy(ring, other, 0.05) ? [`${name} on ${pieces[j]!.gore} ${pieces[j]!.copy}`] : [],
      );
    return [...(outside ? [`${name} outside`] : []), ...overlaps];
  });
}

/** Whether two placed pieces are mirror images: each corner of one, flipped about its middle, is a corner of the other. */
export function pairsMirror(a: PlacedPiece, b: PlacedPiece): boolean {
  const [first, second] = [ringOf(a), ringOf(b)].map(centred);
  const flip = a.turned === b.turned ? { x: -1, y: 1 } : { x: 1, y: -1 };
  return first!.every(({ x, y }) =>
    second!.some((other) => Math.hypot(other.x - flip.x * x, other.y - flip.y * y) < 0.02),
  );
}

function centred(ring: readonly Point[]): Point[] {
  const xs = ring.map(({ x }) => x);
  const ys = ring.map(({ y }) => y);
  const middle = {
    x: (Math.min(...xs) + Math.max(...xs)) / 2,
    y: (Math.min(...ys) + Math.max(...ys)) / 2,
  };
  return ring.map(({ x, y }) => ({ x: x - middle.x, y: y - middle.y }));
}
