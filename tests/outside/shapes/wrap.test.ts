import { describe, expect, it } from 'vitest';
import { wrapLine } from '../../../src/hanging/wrap-line.ts';
import { draft } from '../../../src/pipeline.ts';
import { remarkText } from '../../../src/words/english-remarks.ts';
import { made } from '../../making/made.ts';
import { draftedPattern, mustDraft } from '../drafted.ts';
import { type CurvePath, distanceTo, readPaths, samplesOf } from '../measure/path.ts';
import { type PatternPiece, readPattern } from '../measure/pattern.ts';
import { distance, dot, minus, type Point, unitOf } from '../measure/segment.ts';
import { level, plainGown, type Tree } from '../plain-gown.ts';

/** 72 cm round, its centre front on the straight thread. */
const SKIRT: Tree = {
  units: 'cm',
  waist: { finish: 'band', width: 3, cloth: 'calico' },
  wrap: {
    at: 'centre-front',
    overlap: 24,
    'overlap-at-hem': 32,
    fastened: 'ties',
    'edge-facing': { depth: 6 },
    ties: { length: 90, width: 2.5 },
  },
  gores: [
    { name: 'front', top: 20, hem: 36, grain: 'front-edge' },
    { name: 'back', 'on-fold': true, 'half-top': 16, 'half-hem': 30 },
  ],
  lengths: { 'hem-width-at': 70, at: { 'centre-front': 70, 'centre-back': 73 } },
  layers: [
    { name: 'lining', cloth: 'calico', hem: 'turned', shorter: 3 },
    { name: 'shell', cloth: 'calico', hem: 'faced', facing: { depth: 5 } },
  ],
};

interface Finishing {
  readonly part: string;
  readonly name: string;
  readonly copies: number;
  readonly edges: Readonly<Record<string, number>>;
}

async function drafted(fields: Tree = {}) {
  const text = plainGown({ ...SKIRT, ...fields });
  const { svg, report } = mustDraft(await draftedPattern(text), text);
  const { finishing, wrap } = report as unknown as { finishing: readonly Finishing[]; wrap: object };
  return { svg, report, finishing, wrap, pieces: readPattern(svg).pieces };
}

/** The marked line that both edges lie past, on the first piece of that gore and layer. */
function lineOn(svg: string, gore: string, layer: string, at = 'centre-front'): [Point, Point] {
  const own = svg
    .split('<g class="piece"')
    .find((text) => text.includes(`data-gore="${gore}"`) && text.includes(`data-layers="${layer}"`))!;
  const [line] = readPaths(new RegExp(`data-mark="${at}" d="([^"]*)"`).exec(own)![1]!);
  return [line!.from, line!.to];
}

const mirrored = ([from, to]: readonly [Point, Point]) => {
  const way = unitOf(minus(to, from));
  return (point: Point): Point => {
    const along = dot(minus(point, from), way);
    return {
      x: 2 * (from.x + way.x * along) - point.x,
      y: 2 * (from.y + way.y * along) - point.y,
    };
  };
};

/** Of an edge, the points between its end at the wrap and where the line crosses it. */
function pastLine(edge: CurvePath, wrapEdge: CurvePath, [from, to]: readonly [Point, Point]): Point[] {
  const way = unitOf(minus(to, from));
  const away = (point: Point) => way.x * (point.y - from.y) - way.y * (point.x - from.x);
  const sign = Math.sign(away(wrapEdge.from));
  return samplesOf(edge, 3)
    .map(({ point }) => point)
    .filter((point) => sign * away(point) > 0.01);
}

const named = (pieces: readonly PatternPiece[], gore: string, layer: string, part?: string) =>
  pieces.find((one) => one.gore === gore && one.layers.includes(layer) && one.part === part)!;

describe('a skirt that wraps', () => {
  it('runs on past the line by half of its overlap, its waist and its hem lying on those that they cover', async () => {
    const { svg, pieces, report, wrap } = await drafted();
    expect(wrap).toEqual({ at: 'centre-front', over: 'right', overlap: 240, overlapAtHem: 320 });
    expect(report.waist.sewn).toBeCloseTo(720, 3);
    const front = named(pieces, 'front', 'shell');
    expect([...front.sew.keys()].sort()).toEqual(['front/back', 'hem', 'waist', 'wrap-edge']);
    expect(front.sew.get('waist')!.length).toBeCloseTo(200 + 120, 2);
    const own = report.gores[0]!.hem;
    expect(front.sew.get('hem')!.length).toBeCloseTo(own + 160, 2);
    const edge = front.sew.get('wrap-edge')!;
    expect(edge.length).toBeCloseTo(distance(edge.from, edge.to), 6);
    const line = lineOn(svg, 'front', 'shell');
    expect(distance(...line)).toBeCloseTo(700, 2);
    for (const name of ['waist', 'hem']) {
      const beyond = pastLine(front.sew.get(name)!, edge, line);
      expect(beyond.length).toBeGreaterThan(30);
      for (const point of beyond)
        expect(distanceTo(front.sew.get(name)!, mirrored(line)(point))).toBeLessThan(0.02);
    }
    expect(front.text.replaceAll('\n', ' ')).toContain(
      'wraps 12 cm past centre-front at the waist, 16 cm at the hem',
    );
  });

  it('has one edge in all its layers: that of a shorter lining lies on the shell’s', async () => {
    const { svg, pieces } = await drafted();
    const [lining, shell] = ['lining', 'shell'].map((layer) => {
      const piece = named(pieces, 'front', layer).sew.get('wrap-edge')!;
      const [from, to] = lineOn(svg, 'front', layer);
      const way = unitOf(minus(to, from));
      const place = (point: Point) => ({
        down: dot(minus(point, from), way),
        away: Math.abs(way.x * (point.y - from.y) - way.y * (point.x - from.x)),
      });
      return [piece.from, piece.to].map(place).sort((a, b) => a.down - b.down);
    });
    const [top, foot] = shell as [{ down: number; away: number }, { down: number; away: number }];
    const low = lining![1]!;
    const onShell = top.away + ((foot.away - top.away) * (low.down - top.down)) / (foot.down - top.down);
    expect(low.down).toBeLessThan(foot.down - 25);
    expect(Math.abs(low.away - onShell)).toBeLessThan(0.2);
  });

  it('has a band, hem facings and facings of its edges from edge to edge, and its ties', async () => {
    const { finishing, pieces, report } = await drafted();
    const part = (name: string) => finishing.filter((one) => one.part === name);
    expect(part('waistband')[0]!.edges.waist).toBeCloseTo(720 + 240, 3);
    // Both ends lie half of the overlap past the centre front.
    const facings = pieces.filter(({ layers }) => layers.includes('shell-facing'));
    const round = facings.reduce((sum, { sew }) => sum + 2 * sew.get('hem')!.length, 0);
    expect(round).toBeCloseTo(report.hem.sewn + 320, 1);
    expect(report.layers.find(({ name }) => name === 'shell')!.sewnHem).toBeCloseTo(round, 1);
    const edge = named(pieces, 'front-edge', 'wrap-facing', 'facing');
    expect(edge.sew.get('wrap-edge')!.length).toBeCloseTo(
      named(pieces, 'front', 'shell').sew.get('wrap-edge')!.length,
      3,
    );
    expect(edge.text).toContain('cut 1 pair');
    expect(part('tie')).toMatchObject([{ copies: 2, edges: { 'sewn-edge': 900, 'upper-end': 50 } }]);
  });

  it('has binding for both its edges where they are bound: a block as large as its strip', async () => {
    const { finishing, pieces } = await drafted({
      wrap: { at: 'centre-front', overlap: 24, edges: 'bound' },
      trims: [{ kind: 'binding', layer: 'shell', along: 'wrap-edge', width: 4, cloth: 'calico' }],
    });
    const edge = named(pieces, 'front', 'shell').sew.get('wrap-edge')!.length;
    const { edges } = finishing.find(({ part: own }) => own === 'binding')!;
    const side = Math.ceil(Math.sqrt(2 * edge * 40) / 10) * 10;
    expect([edges['right-side'], edges['upper-end']]).toEqual([side, side]);
  });

  it('lies over any seam of a skirt whose sides differ, each edge like the gore beyond it', async () => {
    const { svg, pieces } = await drafted({
      symmetry: 'none',
      gores: [
        { name: 'left', top: 24, hem: 40, grain: 'centre' },
        { name: 'behind', top: 24, hem: 40, grain: 'centre' },
        { name: 'right', top: 24, hem: 52, grain: 'centre' },
      ],
      wrap: { at: 'right/left', overlap: 20, edges: 'bound' },
      lengths: { 'hem-width-at': 70, at: { 'right/left': 70, 'left/behind': 72 } },
      layers: [{ name: 'shell', cloth: 'calico', hem: 'turned' }],
    });
    const [left, right] = ['left', 'right'].map((name) => named(pieces, name, 'shell'));
    const lines = ['left', 'right'].map((name) => lineOn(svg, name, 'shell', 'right/left'));
    for (const [own, other, from, to] of [
      [left!, right!, lines[0]!, lines[1]!],
      [right!, left!, lines[1]!, lines[0]!],
    ] as const) {
      expect(own.sew.get('waist')!.length).toBeCloseTo(240 + 100, 2);
      const turn = (a: readonly [Point, Point]) => Math.atan2(a[1].y - a[0].y, a[1].x - a[0].x);
      const by = turn(to) - turn(from);
      const laid = (point: Point): Point => {
        const { x, y } = minus(point, from[0]);
        return {
          x: to[0].x + Math.cos(by) * x - Math.sin(by) * y,
          y: to[0].y + Math.sin(by) * x + Math.cos(by) * y,
        };
      };
      for (const name of ['waist', 'hem'])
        for (const point of pastLine(own.sew.get(name)!, own.sew.get('wrap-edge')!, from))
          expect(distanceTo(other.sew.get(name)!, laid(point))).toBeLessThan(0.02);
    }
  });

  it('is cut with both its edges, and its back without any, where one side of her was taken in', () => {
    const fittings = [
      {
        date: '2027-01-02',
        side: 'left',
        seams: [{ seam: 'front/back', from: 0, to: 20, 'take-in': 0.5 }],
      },
    ];
    const { cut } = made(plainGown({ ...SKIRT, fittings })).gown;
    const own = (name: string) =>
      cut.pieces.filter(({ gore, piece }) => gore === name && piece.part === undefined);
    const edges = (name: string) => own(name).map(({ piece }) => piece.edges.map((edge) => edge.name));
    expect(edges('front').length).toBeGreaterThan(1);
    for (const names of edges('front')) expect(names).toContain('wrap-edge');
    expect(edges('back').length).toBeGreaterThan(0);
    for (const names of edges('back')) expect(names).not.toContain('wrap-edge');
  });

  it('has a dart that an edge covers once more, as far from the line', async () => {
    const { svg, pieces } = await drafted({
      darts: [{ gore: 'front', at: '30%', 'takes-in': 2, length: 9 }],
      layers: [{ name: 'shell', cloth: 'calico', hem: 'turned' }],
    });
    const legs = [...svg.matchAll(/data-mark="dart-leg-line" d="([^"]*)"/g)].map(
      ([, d]) => readPaths(d!)[0]!,
    );
    expect(legs).toHaveLength(4);
    const line = lineOn(svg, 'front', 'shell');
    const points = legs.map(({ to }) => to);
    for (const point of points)
      expect(Math.min(...points.map((other) => distance(mirrored(line)(point), other)))).toBeLessThan(0.05);
    // Sewn, the waist is 20 and 12 cm: two darts of 2 cm more are cut.
    const open = legs.map(({ from }) => from);
    const waist = named(pieces, 'front', 'shell').sew.get('waist')!;
    for (const point of open) expect(distanceTo(waist, point)).toBeLessThan(0.01);
    // As wide as it takes in, but for what the waist bends between its legs.
    for (const i of [0, 2]) expect(Math.abs(distance(open[i]!, open[i + 1]!) - 20)).toBeLessThan(0.15);
  });

  it('shows its upper edge on the side that it covers, as far from the line as it is cut', () => {
    const line = (over: 'left' | 'right') => {
      const { gown } = made(plainGown({ ...SKIRT, wrap: { ...(SKIRT.wrap as Tree), over } }));
      const shell = gown.drafts.layers[1]!;
      // A front of 30 columns and a back of 24, from the centre front round her left.
      const stations = [0, 30, 54].map((column, i) => ({ name: gown.gown.stations[i]!.name, column }));
      const gores = [
        { name: 'front', first: 0, across: 30 },
        { name: 'back', first: 30, across: 24 },
      ];
      return wrapLine(gown.gown, shell, { stations, gores })!;
    };
    const [right, left] = [line('right'), line('left')];
    // Half of 24 cm on a top of 20 cm; half of 32 cm on the hem of that gore.
    expect(right.top).toBeCloseTo((30 * 12) / 20, 6);
    expect(left.top).toBeCloseTo(108 - right.top, 6);
    expect(left.foot).toBeCloseTo(108 - right.foot, 6);
    const { hem } = made(plainGown(SKIRT)).gown.measures.gores[0]!;
    expect(right.foot).toBeCloseTo((30 * 160) / hem, 6);
  });

  it('is made in this order, its edges hanging with it and what holds it set when it fits', () => {
    const { facts } = made(plainGown(SKIRT));
    const order = facts.order.map(({ id }) => id);
    const at = (id: string) => order.findIndex((one) => one.startsWith(id));
    for (const [before, after] of [
      ['seams:shell', 'wrap-edges'],
      ['wrap-edges', 'waist:'],
      ['wrap-ties', 'waist:'],
      ['waist:', 'hang'],
      ['fit', 'fasten-wrap'],
      ['fasten-wrap', 'finish'],
    ] as const)
      expect(at(before), `${before} before ${after}`).toBeLessThan(at(after));
    expect(order).not.toContain('close');
    const sewn = facts.order.find(({ id }) => id === 'seams:shell')!.work;
    expect(sewn).toMatchObject({ seams: [{ name: 'front/back', copies: 2 }] });
    expect(facts.missing.map(({ fact }) => fact)).not.toContain('closure');
  });

  it('refuses what could not be cut or worn', () => {
    const codes = (fields: Tree) =>
      draft({ name: 'gown.yaml', text: plainGown({ ...SKIRT, ...fields }) })
        .diagnostics.filter(({ level: how }) => how === 'error')
        .map(({ code }) => code);
    expect(codes({})).toEqual([]);
    expect(codes({ wrap: { at: 'front/back', overlap: 20 } })).toEqual(['wrap-twice']);
    expect(codes({ wrap: { at: 'centre-back', overlap: 20 } })).toEqual(['fold-not-seam']);
    expect(codes({ wrap: { at: 'centre-front', overlap: 41 } })).toEqual(['wrap-too-wide']);
    const dart = [{ gore: 'front', at: '55%', 'takes-in': 2, length: 9 }];
    expect(codes({ darts: dart })).toEqual(['wrap-on-dart']);
    expect(codes({ wrap: { at: 'centre-front', overlap: 24, 'edge-facing': { depth: 60 } } })).toEqual([
      'facing-deeper-than-gore',
    ]);
    expect(
      codes({ lengths: level(70), layers: [{ name: 'shell', cloth: 'calico', hem: 'raw', fullness: 2 }] }),
    ).toEqual(['wrap-on-fullness']);
  });
});

describe('the text on a wrap', () => {
  it('says how far past the line, and which side lies on top', () => {
    const say = (length: number) => `${length / 10} cm`;
    const wrap = { kind: 'wrap', at: 'centre-back', over: 'left', atWaist: 100, atHem: 150 } as const;
    expect(remarkText(wrap, say)).toEqual([
      'wraps 10 cm past centre-back at the waist, 15 cm at the hem: that line is marked; her left side lies on top',
    ]);
  });
});
