import { Bezier } from 'bezier-js';
import { describe, expect, it } from 'vitest';
import { factsOf, quantities } from '../facts.ts';
import { untruths } from '../truth/untruths.ts';
import { areaOf, distanceTo, readPath, reversed, samplesOf } from './path.ts';
import { readPattern } from './pattern.ts';
import { HAND_YAML, handReport, handSvg } from './rings-by-hand.ts';
import { cubicSegment, distance } from './segment.ts';

describe('the measuring itself, on closed forms', () => {
  it('gives arcs their length, area and distance', () => {
    const half = readPath('M 0 0 A 100 100 0 0 1 200 0');
    expect(half.length).toBeCloseTo(100 * Math.PI, 9);
    expect(areaOf(half)).toBeCloseTo((Math.PI * 100 ** 2) / 2, 6);
    expect(distanceTo(half, { x: 100, y: -130 })).toBeCloseTo(30, 9);
    expect(half.segments[0]!.at(0.5).y).toBeCloseTo(-100, 9);
    const most = readPath('M 0 0 A 100 100 0 1 0 100 100');
    expect(most.length).toBeCloseTo(150 * Math.PI, 9);
  });

  it('gives a cubic its length, against a parabola in closed form', () => {
    // y = x² from 0 to 1 as a cubic; its length is √5/2 + asinh(2)/4 (any calculus book).
    const parabola = readPath('M 0 0 C 0.333333333333333 0 0.666666666666667 0.333333333333333 1 1');
    expect(parabola.length).toBeCloseTo(Math.sqrt(5) / 2 + Math.asinh(2) / 4, 9);
    expect(samplesOf(parabola, 0.1).at(-1)!.distance).toBeCloseTo(parabola.length, 7);
    expect(distanceTo(parabola, { x: 0, y: 1 })).toBeCloseTo(Math.sqrt(3) / 2, 7);
    expect(areaOf(parabola)).toBeCloseTo(1 / 6, 9);
    expect(reversed(parabola).from).toEqual(parabola.to);
  });

  it('gives a cubic its points and directions, against bezier-js', () => {
    const [a, b, c, d] = [
      { x: 0, y: 0 },
      { x: 3, y: 9 },
      { x: 14, y: -2 },
      { x: 20, y: 5 },
    ] as const;
    const [cubic, other] = [cubicSegment(a, b, c, d), new Bezier(a, b, c, d)];
    for (const t of [0, 0.1, 0.5, 0.9, 1]) {
      expect(distance(cubic.at(t), other.get(t))).toBeLessThan(1e-9);
      const slope = other.derivative(t);
      expect(cubic.direction(t).x).toBeCloseTo(slope.x / Math.hypot(slope.x, slope.y), 9);
    }
  });

  it('reads relative and shorthand commands, quotes and entities', () => {
    const path = readPath('m 10 10 h 5 v 5 l -5 0 z');
    expect(path.length).toBeCloseTo(20, 12);
    expect(readPattern(handSvg()).pieces[0]!.text).toBe('front & more');
    expect(() => readPattern('<svg width="1mm"><g></svg>')).toThrow(/closes another/);
  });

  it('reads quantities as the spec writes them', () => {
    const inches = quantities('in');
    expect(inches('1 5/8in')).toBeCloseTo(41.275, 12);
    expect(inches('5/8')).toBeCloseTo(15.875, 12);
    expect(inches('98cm')).toBe(980);
    expect(inches(2)).toBe(50.8);
    expect(inches('90deg')).toBeCloseTo(Math.PI / 2, 12);
    expect(inches('3%')).toBe(0.03);
  });
});

describe('the truths, on a drawing made by hand', () => {
  const facts = factsOf(HAND_YAML);

  it('finds nothing wrong with a true one', () => {
    expect(untruths(handSvg(), handReport(), facts)).toEqual([]);
  });

  const spoiled: readonly [string, (svg: string) => string, RegExp][] = [
    ['a seam 0.3 mm long', (svg) => moved(svg, 'data-edge="front/back"', [0, 0, 0, 0.3]), /corners|seam/],
    [
      'an allowance 0.2 mm off',
      (svg) => svg.replace(/class="cut" d="M [^"]*?A/, (m) => shiftAll(m, 0.2)),
      /allowance/,
    ],
    [
      'a notch 0.5 mm low',
      (svg) => moved(svg, 'class="notch" data-edge="centre-front"', [0, 0.5, 0, 0.5]),
      /notch/,
    ],
    [
      'a transform',
      (svg) => svg.replace('<g class="piece"', '<g transform="scale(1)" class="piece"'),
      /transform/,
    ],
    ['a sheet that is not its viewBox', (svg) => svg.replace('width="1000mm"', 'width="1001mm"'), /width/],
    ['a piece upon a piece', (svg) => shiftPiece(svg, 'back', -240), /overlap/],
    [
      'a waist cut along another arc',
      (svg) =>
        svg.replaceAll(/(class="cut" d=")([^"]*)/g, (_, a, d) => a + d.replace(/A 588 588/g, 'A 560 560')),
      /waist/,
    ],
  ];
  for (const [what, spoil, complaint] of spoiled) {
    it(`notices ${what}`, () => {
      const bad = spoil(handSvg());
      expect(bad).not.toBe(handSvg());
      const found = attempt(() => untruths(bad, handReport(), facts));
      expect(found.join('\n')).toMatch(complaint);
    });
  }

  it('notices a report that says something else', () => {
    const report = handReport();
    const lied = {
      ...report,
      hem: { sewn: 1401 },
      gores: report.gores.map((gore) => ({ ...gore, top: gore.top + 0.1 })),
    };
    expect(untruths(handSvg(), lied, facts)).toHaveLength(3);
  });
});

function attempt(measure: () => string[]): string[] {
  try {
    return measure();
  } catch (error) {
    return [String(error)];
  }
}

function moved(svg: string, mark: string, by: readonly number[]): string {
  const start = svg.indexOf(' d="', svg.indexOf(mark)) + 4;
  const end = svg.indexOf('"', start);
  let k = 0;
  const d = svg.slice(start, end).replace(/-?\d+\.\d+/g, (n) => String(Number(n) + (by[k++] ?? 0)));
  return svg.slice(0, start) + d + svg.slice(end);
}

const shiftAll = (text: string, by: number) => text.replace(/-?\d+\.\d+/g, (n) => String(Number(n) + by));

function shiftPiece(svg: string, gore: string, by: number): string {
  return svg.replace(new RegExp(`<g class="piece" data-gore="${gore}"[\\s\\S]*?</g>`), (piece) =>
    piece.replace(/ d="([^"]*)"/g, (_, d: string) => {
      const shifted = d.replace(/([ML]) (-?[\d.]+)/g, (__, c, x) => `${c} ${Number(x) + by}`);
      return ` d="${shifted.replace(/(A \S+ \S+ 0 0 \d) (-?[\d.]+)/g, (__, c, x) => `${c} ${Number(x) + by}`)}"`;
    }),
  );
}
