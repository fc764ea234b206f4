import { describe, expect, it } from 'vitest';
import { draftedTrue } from './drafted.ts';
import { factsOf } from './facts.ts';
import { LANTERN } from './lantern-spec.ts';
import { type Gore, innerAngle, type Placed, placedIn } from './measure/gore.ts';
import { measuredGown } from './measure/gown.ts';
import { areaOf, samplesOf } from './measure/path.ts';
import { level, plainGown } from './plain-gown.ts';
import { expectTrue } from './truth/untruths.ts';

/** The train's shapes as the design writes them, over t from 0 to 1 across the grain. */
const SHAPES = {
  round: (t: number) => t * t * (3 - 2 * t),
  pointed: (t: number) => t * t,
  square: (t: number) => SHAPES.round(Math.min(1, t / 0.6)),
};

async function measured(yaml: string) {
  const { svg, report } = await draftedTrue(yaml);
  expectTrue(svg, report, yaml);
  return measuredGown(svg, report, factsOf(yaml));
}

/** The hem of neighbouring gores as one line: slant distance against the way round across the grain. */
function hemOf(gores: readonly Gore[], drops: readonly number[]): { line: Placed[]; seams: Placed[] } {
  const line: Placed[] = [];
  const seams: Placed[] = [];
  let before = 0;
  for (const [i, gore] of gores.entries()) {
    const placed = placedIn(
      gore,
      drops[i]!,
      samplesOf(gore.hem, 0.5).map((sample) => sample.point),
    );
    line.push(...placed.map((p) => ({ ...p, across: p.across + before })));
    seams.push({ ...placed[0]!, across: before });
    before += placed.at(-1)!.across;
    if (i === gores.length - 1) seams.push({ ...placed.at(-1)!, across: before });
  }
  return { line, seams };
}

const gores = [
  { name: 'front', 'on-fold': true, 'half-top': 60, 'half-hem': 180 },
  { name: 'side-front', top: 85, hem: 380 },
  { name: 'side', top: 80, hem: 420 },
  { name: 'side-back', top: 75, hem: 430 },
  { name: 'back', top: 70, hem: 450 },
];
const bodice = { 'waist-seam': 740 };

describe('trains: the hem follows its shape across the grain', () => {
  for (const shape of ['round', 'pointed', 'square'] as const) {
    for (const measure of ['to-floor', 'finished'] as const) {
      it(`${shape}, lengths ${measure}`, async () => {
        const onFloor = 400;
        const lengths =
          measure === 'to-floor'
            ? {
                measured: 'to-floor',
                'off-floor': 20,
                'hem-width-at': 1000,
                at: { 'centre-front': 1040, 'side-front/side': 1040, 'centre-back': 1040 },
              }
            : {
                measured: 'finished',
                'hem-width-at': 1000,
                at: {
                  'centre-front': 1020,
                  'front/side-front': 1020,
                  'side-front/side': 1020,
                  'centre-back': 1440,
                },
              };
        const yaml = plainGown({
          units: 'mm',
          bodice,
          gores,
          lengths,
          train: { begins: 'side-front/side', 'on-floor': onFloor, shape },
        });
        const gown = await measured(yaml);
        const drawn = gown.layers[0]!.gores as Gore[];
        const { line } = hemOf(drawn.slice(2), [0, 0, 0]);
        const whole = line.at(-1)!.across;
        // Both ways of measuring come to 1020 before the train and 1440 at the centre back.
        let worst = 0;
        for (const { slant, across } of line) {
          worst = Math.max(worst, Math.abs(slant - (1020 + 420 * SHAPES[shape](across / whole))));
        }
        expect(worst).toBeLessThan(0.1);
        const flat = hemOf(drawn.slice(0, 2), [0, 0]).line;
        for (const { slant } of flat) expect(Math.abs(slant - 1020)).toBeLessThan(0.1);
        const last = innerAngle(drawn[4]!, 'hem', 'back');
        if (shape === 'pointed') expect(last).toBeLessThan(80);
        else expect(Math.abs(last - 90)).toBeLessThan(0.05);
      });
    }
  }

  it('a station named inside the train is final, the others follow the shape', async () => {
    const yaml = plainGown({
      units: 'mm',
      bodice,
      gores,
      lengths: {
        measured: 'finished',
        'hem-width-at': 1000,
        at: { 'centre-front': 1020, 'side-front/side': 1020, 'side/side-back': 1077, 'centre-back': 1400 },
      },
      train: { begins: 'side-front/side', 'on-floor': 380, shape: 'round' },
    });
    const gown = await measured(yaml);
    const back = gown.layers[0]!.gores as Gore[];
    expect(Math.abs(back[2]!.back.length - 1077)).toBeLessThan(0.1);
    expect(back[3]!.back.length).toBeGreaterThan(1077);
    expect(back[3]!.back.length).toBeLessThan(1400);
  });
});

describe('the hem between stations set by hand', () => {
  const at = {
    'centre-front': 1000,
    'front/side-front': 1012,
    'side-front/side': 1060,
    'side/side-back': 1130,
    'side-back/back': 1205,
    'centre-back': 1230,
  };
  const yaml = plainGown({ units: 'mm', bodice, gores, lengths: { ...level(1000), at } });

  it('is the clamped cubic spline over the way round, where that is monotone', async () => {
    const gown = await measured(yaml);
    const drawn = gown.layers[0]!.gores as Gore[];
    const { line, seams } = hemOf(drawn, [0, 0, 0, 0, 0]);
    const slopes = clampedSlopes(seams);
    for (let i = 1; i < seams.length - 1; i++) {
      const off = innerAngle(drawn[i]!, 'hem', 'front') - 90;
      expect(Math.abs(Math.abs(off) - (Math.atan(slopes[i]!) * 180) / Math.PI)).toBeLessThan(0.1);
    }
    let worst = 0;
    for (const { slant, across } of line)
      worst = Math.max(worst, Math.abs(slant - hermite(seams, slopes, across)));
    expect(worst).toBeLessThan(0.1);
  });

  it('does not swing past its stations', async () => {
    const steps = {
      ...at,
      'side-front/side': 1013,
      'side/side-back': 1014,
      'side-back/back': 1180,
      'centre-back': 1181,
    };
    const stepped = plainGown({ units: 'mm', bodice, gores, lengths: { ...level(1000), at: steps } });
    const gown = await measured(stepped);
    const { line } = hemOf(gown.layers[0]!.gores as Gore[], [0, 0, 0, 0, 0]);
    for (const [i, { slant }] of line.entries()) {
      if (i > 0) expect(slant - line[i - 1]!.slant).toBeGreaterThan(-0.005);
    }
  });
});

describe('an invented evening gown with a train (expectations from a rough model, arcs ± 0.5 cm)', () => {
  it('has the hem, the angles and the area that were expected', async () => {
    const gown = await measured(LANTERN);
    const shell = gown.layers[1]!.gores as Gore[];
    const hem = 2 * shell.reduce((sum, gore) => sum + gore.hem.length, 0);
    expect(hem).toBeGreaterThan(5005);
    expect(hem).toBeLessThan(5055);
    expect(Math.abs(innerAngle(shell[3]!, 'hem', 'front') - 90)).toSatisfy(about(13));
    expect(Math.abs(innerAngle(shell[4]!, 'hem', 'front') - 90)).toSatisfy(about(40));
    const area = 2 * shell.reduce((sum, gore) => sum + areaOf(gore.outline), 0);
    expect(Math.abs(area / 1e6 - 3.24)).toBeLessThan(0.04);
  });
});

/** Slopes of the cubic spline through the knots, flat at both ends: the textbook's three-term equations, solved straight down. */
function clampedSlopes(knots: readonly Placed[]): number[] {
  const n = knots.length;
  const gap = (i: number) => knots[i + 1]!.across - knots[i]!.across;
  const rise = (i: number) => (knots[i + 1]!.slant - knots[i]!.slant) / gap(i);
  const upper: number[] = [0];
  const right: number[] = [0];
  for (let i = 1; i < n - 1; i++) {
    const [a, b, c] = [gap(i), 2 * (gap(i - 1) + gap(i)), gap(i - 1)];
    const d = 3 * (gap(i) * rise(i - 1) + gap(i - 1) * rise(i));
    const pivot = b - a * upper[i - 1]!;
    upper.push(c / pivot);
    right.push((d - a * right[i - 1]!) / pivot);
  }
  const slopes = new Array<number>(n).fill(0);
  for (let i = n - 2; i > 0; i--) slopes[i] = right[i]! - upper[i]! * slopes[i + 1]!;
  return slopes;
}

function hermite(knots: readonly Placed[], slopes: readonly number[], across: number): number {
  let i = 0;
  while (i < knots.length - 2 && across > knots[i + 1]!.across) i++;
  const [a, b] = [knots[i]!, knots[i + 1]!];
  const gap = b.across - a.across;
  const t = (across - a.across) / gap;
  const [h00, h10, h01, h11] = [
    (1 + 2 * t) * (1 - t) ** 2,
    t * (1 - t) ** 2,
    t * t * (3 - 2 * t),
    t * t * (t - 1),
  ];
  return h00 * a.slant + h10 * gap * slopes[i]! + h01 * b.slant + h11 * gap * slopes[i + 1]!;
}

/** "About" so many degrees: to within one and a half. */
const about = (degrees: number) => (value: number) => Math.abs(value - degrees) < 1.5;
