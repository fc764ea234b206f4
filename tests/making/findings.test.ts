import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { lineAndColumn } from '../../src/diagnostics/place.ts';
import { example, made, skirt } from './made.ts';

/** Code and level of every finding of a spec, with the line that it points at. */
function found(text: string): { code: string; level: string; line: string }[] {
  return made(text).findings.map(({ code, level, span }) => ({
    code,
    level,
    line: text.split('\n')[lineAndColumn(span).line - 1]!.trim(),
  }));
}

const closure = (more: string): string =>
  skirt({ more: `closure: {kind: zip, at: centre-back, starts: 2.5, ${more}}` });
const hemmed = (depth: number, cloth = 'crepe', more = ''): string =>
  skirt({ layers: `  - {name: shell, cloth: ${cloth}, hem: turned, allowances: {hem: ${depth}}}`, more });
const layered = (more: string): string =>
  skirt({ layers: `  - {name: shell, cloth: crepe, hem: turned, ${more}}` });
const bustled = (more: string): string =>
  skirt({
    train: 'train: {on-floor: 60, begins: front/side, shape: round}',
    more: `bustle: {kind: over, clearance: 2.5${more}}`,
  });

/** Every problem of the workroom with a spec that has it, and what the finding points at. */
const CASES: Readonly<Record<string, { text: string; level: string; line: RegExp }>> = {
  'opening-too-small': {
    text: closure('opening: 10, hip: 100, entry: steps-in'),
    level: 'warning',
    line: /^closure/,
  },
  'opening-not-given': { text: closure('hip: 100'), level: 'warning', line: /^closure/ },
  'opening-longer-than-seam': { text: closure('opening: 102'), level: 'error', line: /^closure/ },
  'no-stock-zip': { text: closure('opening: 65'), level: 'warning', line: /^closure/ },
  'price-rounded-away': {
    text: skirt({ more: 'currency: GBP\nlabour: {rate: 20, hours: 10, rounding: 500}' }),
    level: 'warning',
    line: /rounding: 500/,
  },
  'needle-near-bone': { text: skirt({ bodice: '  bones-end: 0.9' }), level: 'warning', line: /^bones-end/ },
  'closure-edge-unfinished': {
    text: skirt({ more: 'closure: {kind: lacing, at: centre-back, opening: 30}' }),
    level: 'warning',
    line: /^closure/,
  },
  'layers-not-neighbours': {
    text: skirt({
      layers: ['a', 'b', 'c'].map((name) => `  - {name: ${name}, cloth: crepe, hem: turned}`).join('\n'),
      more: 'sewn-as-one: {waist: [[b], [a, c]]}',
    }),
    level: 'warning',
    line: /^sewn-as-one/,
  },
  'bagged-hem-without-gap': {
    text: skirt({
      layers: ['a', 'b'].map((name) => `  - {name: ${name}, cloth: crepe, hem: bagged}`).join('\n'),
    }),
    level: 'warning',
    line: /name: a/,
  },
  'bagged-hem-alone': {
    text: skirt({ layers: '  - {name: a, cloth: crepe, hem: bagged}' }),
    level: 'warning',
    line: /name: a/,
  },
  'bagged-hem-not-equal': {
    text: skirt({
      layers:
        '  - {name: a, cloth: crepe, hem: bagged, shorter: 1}\n  - {name: b, cloth: crepe, hem: bagged}',
    }),
    level: 'warning',
    line: /name: a/,
  },
  'gap-does-not-fit': {
    text: skirt({
      layers:
        '  - {name: a, cloth: crepe, hem: bagged, gap: {at: centre-back, length: 200}}\n  - {name: b, cloth: crepe, hem: bagged}',
    }),
    level: 'warning',
    line: /name: a/,
  },
  'hem-surplus': { text: hemmed(6), level: 'warning', line: /name: shell/ },
  'edging-without-repeat': {
    text: skirt({
      layers: '  - {name: shell, cloth: crepe, hem: raw, edging: galloon}',
      more: 'edging: {name: galloon, depth: 6}',
    }),
    level: 'warning',
    line: /^edging/,
  },
  'scallops-off-floor': {
    text: skirt({
      layers: '  - {name: shell, cloth: crepe, hem: raw, edging: lace}',
      more: 'edging: {name: lace, depth: 6, repeat: 10, scallop: 2}',
    }),
    level: 'note',
    line: /^edging/,
  },
  'sweep-narrow-over-hoop': {
    text: skirt({ more: 'petticoat: {hoop: 260}' }),
    level: 'warning',
    line: /^petticoat/,
  },
  'hoop-small': { text: skirt({ more: 'petticoat: {hoop: 180}' }), level: 'warning', line: /^petticoat/ },
  'hem-low': { text: skirt().replace('off-floor: 2.5', 'off-floor: 1'), level: 'note', line: /^off-floor/ },
  'bustle-lifts-nothing': {
    text: skirt({ more: 'bustle: {kind: over, clearance: 2}' }),
    level: 'warning',
    line: /^bustle/,
  },
  'bustle-point-lifts-nothing': {
    text: bustled(', points: [{seam: centre-back, anchor: 15}, {seam: front/side, anchor: 15}]'),
    level: 'warning',
    line: /^bustle/,
  },
  'bustle-number': {
    text: bustled(', points: [{seam: centre-back, anchor: 15}]'),
    level: 'warning',
    line: /^bustle/,
  },
  'bustle-loop-below-hem': {
    text: bustled(', loop: 30, points: [{seam: centre-back, anchor: 90}, {seam: side/back, anchor: 15}]'),
    level: 'warning',
    line: /^bustle/,
  },
  'bias-without-rough-cut': { text: layered('grain: bias'), level: 'warning', line: /^- \{name: shell/ },
  'tucks-above-waist': {
    text: layered('growth-tucks: {count: 12, width: 8, above-hem: 90}'),
    level: 'error',
    line: /^- \{name: shell/,
  },
  'tucks-lie-over': {
    text: layered('growth-tucks: {count: 2, width: 3, above-hem: 10, apart: 2}'),
    level: 'error',
    line: /^- \{name: shell/,
  },
  'tucks-eased': {
    text: layered('growth-tucks: {count: 1, width: 7, above-hem: 10}'),
    level: 'warning',
    line: /^- \{name: shell/,
  },
  'tasks-over-hours': {
    text: skirt({ more: 'labour: {rate: 20, hours: 3, tasks: {cutting: 2, sewing: 2.5}}' }),
    level: 'warning',
    line: /^labour/,
  },
  'calendar-clash': {
    text: skirt({ more: 'dates: {event: 2027-06-12, before: {cut: 60}}' }),
    level: 'warning',
    line: /^dates/,
  },
  'unknown-milestone': {
    text: skirt({ more: 'dates: {event: 2027-06-12, before: {cutting: 60}}' }),
    level: 'error',
    line: /^dates/,
  },
};

describe('every finding of the workroom', () => {
  const source = readFileSync(join(import.meta.dirname, '../../src/making/problems.ts'), 'utf8');
  const codes = [...source.matchAll(/(?:error|warning|note)\(\s*'([a-z-]+)'/g)].map((match) => match[1]!);
  const elsewhere = ['edging-short', 'order-impossible'];

  it('has a case here, or with the order of making', () => {
    expect([...new Set(codes)].sort()).toEqual([...Object.keys(CASES), ...elsewhere].sort());
  });

  it.each(Object.entries(CASES))('%s', (code, { text, level, line }) => {
    const own = found(text).filter((one) => one.code === code);
    expect(own).toEqual([{ code, level, line: expect.stringMatching(line) }]);
  });

  it('none of these on a plain skirt', () => {
    expect(found(skirt()).map((one) => one.code)).toEqual([]);
  });
});

describe('figures of an evening gown, worked out by hand from its own spec', () => {
  const text = example('lantern');
  const { facts, findings } = made(text);

  it('lets her step in: 74 + 2 × 23 = 120 over a hip of 101', () => {
    expect(facts.closure?.passage).toMatchObject({ passes: 1200, clear: true });
    expect(facts.closure?.zip).toEqual({ stock: 250, shortenBy: 20 });
  });

  it('lifts 66.5, 29.5 and 3.5 at the bustle’s seams', () => {
    // 176 − (111.5 − 2), 139 − (111.5 − 2), 112 − (110.5 − 2).
    expect(facts.bustle?.points.map((point) => Math.round(point.lift))).toEqual([665, 295, 35]);
    expect(facts.bustle?.number).toBe(5);
    expect(facts.bustle?.points.map((point) => Math.round(point.pickUp - point.anchor))).toEqual([
      665, 295, 35,
    ]);
  });

  it('takes 36 repeats of 14 round a hem of 501 to 505', () => {
    const hem = facts.edging?.hems[0];
    expect(hem?.length).toBeGreaterThan(5010);
    expect(hem?.length).toBeLessThan(5040);
    expect(hem?.plan).toMatchObject({ repeats: 36, length: 5040 });
    // All its flares together: 2 × (17 + 20 + 20 + 20.5 + 16.5) degrees; × 6 cm of depth.
    const flare = (2 * 94 * Math.PI) / 180;
    expect(hem?.plan?.innerSurplus).toBeCloseTo(flare * 60, 6);
  });

  it('weighs its areas times its cloths', () => {
    const [lining, shell, organza] = facts.weight.layers;
    expect(shell!.netArea / 1e6).toBeCloseTo(3.24, 2);
    expect(facts.weight.inAll).toBeCloseTo(
      (lining!.cutArea * 70 + shell!.cutArea * 210 + organza!.cutArea * 45) / 1e6,
      9,
    );
    expect(facts.weight.inAll).toBeGreaterThan(1000);
  });

  it('is more than 1.3 times its hoop round, and the hoop large enough with a train', () => {
    // Rough: a waist of 74 and a flare of 3.281 rad down to 104 cm and more below the level waist is about 415.
    expect(facts.petticoat?.hoop?.sweep?.sweep).toBeGreaterThan(4100);
    expect(facts.petticoat?.hoop?.sweep?.sweep).toBeLessThan(4200);
    expect(findings.filter((one) => one.level !== 'note')).toEqual([]);
  });

  it('shows the faults planted in copies of it', () => {
    const codes = (from: string | RegExp, to: string): string[] => {
      const copy = text.replace(from, to);
      expect(copy).not.toBe(text);
      return found(copy).map((one) => one.code);
    };
    expect(codes('hoop: 310', 'hoop: 250')).toContain('hoop-small');
    expect(codes(/^ {2}repeat: 14\n/m, '')).toContain('edging-without-repeat');
    expect(codes('bones-end: 1.3', 'bones-end: 0.4')).toContain('needle-near-bone');
    expect(codes('opening: 23', 'opening: 13')).toContain('opening-too-small');
  });
});

it('finds 7 in to ease, 7.6 %, in a 2 in hem of a stage costume', () => {
  // Flares 15, 20 and 15 degrees a half: 1.745 rad all round; × 2 × 2 in = 6.98 in of 91.8 in.
  const puffin = made(example('puffin')).facts;
  const surplus = puffin.hems.find((hem) => hem.layer === 'lining')?.surplus;
  expect(surplus!.toEase / 25.4).toBeCloseTo(6.98, 2);
  expect((surplus!.toEase / puffin.skirt.hem) * 100).toBeCloseTo(7.6, 1);
});
