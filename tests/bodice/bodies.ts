import fc from 'fast-check';
import type { BodiceMeasures } from '../../src/bodice/bodice-measures.ts';
import { evenly } from '../evenly.ts';

/** The invented body of the spec's example: a boned bodice of ten panels, laced behind; mm. */
export const EXAMPLE: BodiceMeasures = {
  girths: [
    { at: 'bust', above: 165, girth: 920, front: 490 },
    { at: 'underbust', above: 85, girth: 780, front: 400 },
    { at: 'waist', above: 0, girth: 700 },
    { at: 'high-hip', above: -90, girth: 880 },
    { at: 'hip', above: -200, girth: 990 },
  ],
  bustPointsApart: 185,
  panels: ['front', 'side-front', 'side', 'side-back', 'back'].map((name, i) => ({
    name,
    onFold: i === 0,
    widths: {},
  })),
  sideSeam: 'side-front/side',
  reduce: { bust: 20, underbust: 20, waist: 50 },
  upperEdge: {
    above: { 'centre-front': 130, 'front/side-front': 180, 'side-front/side': 150, 'centre-back': 100 },
    points: ['centre-front'],
  },
  lowerEdge: {
    above: { 'centre-front': -70, 'front/side-front': -55, 'side-front/side': -25 },
    points: ['centre-front'],
  },
  lacings: [{ at: 'centre-back', gap: 50 }],
};

/** Women, children and figures that no table holds: waist above hip or without suppression, full busts on small backs. */
export const anyBodice: fc.Arbitrary<BodiceMeasures> = fc
  .record({
    waist: evenly(480, 1200),
    underbust: evenly(-0.02, 0.16),
    bust: evenly(0, 0.26),
    highHip: evenly(-0.05, 0.22),
    front: fc.option(evenly(0.47, 0.6), { nil: undefined }),
    long: evenly(0.7, 1.25),
    panels: fc.integer({ min: 3, max: 8 }),
    fold: fc.boolean(),
    reduced: evenly(-20, 60),
    gap: fc.constantFrom(0, 50),
    upper: fc.array(evenly(90, 175), { minLength: 9, maxLength: 9 }),
    lower: fc.array(evenly(-10, 75), { minLength: 9, maxLength: 9 }),
    points: fc.array(fc.integer({ min: 0, max: 8 }), { maxLength: 2 }),
  })
  .map((drawn): BodiceMeasures => {
    const names = Array.from({ length: drawn.panels }, (_, i) => `p${i}`);
    const stations = [
      'centre-front',
      ...names.slice(1).map((name, i) => `${names[i]}/${name}`),
      'centre-back',
    ];
    const heights = (drawnHeights: readonly number[], sign: number): Record<string, number> =>
      Object.fromEntries(stations.map((name, i) => [name, sign * drawnHeights[i]! * drawn.long]));
    const points = [...new Set(drawn.points)].flatMap((i) => stations[i] ?? []);
    const under = drawn.waist * (1 + drawn.underbust);
    const part = drawn.front === undefined ? {} : { front: drawn.front };
    const bust = under * (1 + drawn.bust);
    return {
      girths: [
        {
          at: 'bust',
          above: 165 * drawn.long,
          girth: bust,
          ...(part.front === undefined ? {} : { front: bust * part.front }),
        },
        { at: 'underbust', above: 85 * drawn.long, girth: under },
        { at: 'waist', above: 0, girth: drawn.waist },
        { at: 'high-hip', above: -100 * drawn.long, girth: drawn.waist * (1 + drawn.highHip) },
      ],
      panels: names.map((name, i) => ({ name, onFold: drawn.fold && i === 0, widths: {} })),
      sideSeam: stations[Math.ceil(drawn.panels / 2)]!,
      reduce: { waist: drawn.reduced, underbust: drawn.reduced / 2 },
      upperEdge: { above: heights(drawn.upper, 1), points },
      lowerEdge: { above: heights(drawn.lower, -1), points: points.slice(0, 1) },
      lacings: drawn.gap === 0 ? [] : [{ at: 'centre-back', gap: drawn.gap }],
    };
  });
