import { describe, expect, it } from 'vitest';
import { QUICK, SLOW, USUAL_WIDTHS } from '../../src/estimate/usual-work.ts';
import { unusedMeasures, withMeasures } from '../../src/gown-file/with-measures.ts';
import { decimalText } from '../../src/money/fraction.ts';
import { hoursByTask } from '../../src/money/labour-hours.ts';

/** A gown supposed for other measures: every figure of the spec another, what it becomes by proportion and sum. mm. */

const SPEC = {
  symmetry: 'mirrored',
  bodice: { waistSeam: 840, panels: { front: 100, back: 250 } },
  gores: [
    { name: 'front', halfTop: 50, halfHem: 200 },
    { name: 'side', top: 120, hem: 400 },
    // As wide at its top as its panel.
    { name: 'back', hem: 500 },
  ],
  lengths: { measured: 'to-floor', at: { 'centre-front': 1010, 'side/back': 1030 }, hemWidthAt: 990 },
};
type Measures = Parameters<typeof withMeasures>[1];
const supposed = (measures: Measures, own: object = {}) =>
  withMeasures({ ...SPEC, ...own } as never, measures) as unknown as typeof SPEC & Record<string, never>;
const near = (value: number) => expect.closeTo(value, 9);

describe('a spec for other measures', () => {
  it('stays as it is without any', () => {
    expect(supposed({})).toEqual(SPEC);
  });

  it('waists in their proportion, each hem wider by as much as its top', () => {
    // 924 is a tenth more.
    const { bodice, gores, lengths } = supposed({ waist: 924 });
    expect(bodice).toEqual({ waistSeam: near(924), panels: { front: near(110), back: near(275) } });
    expect(gores).toEqual([
      { name: 'front', halfTop: near(55), halfHem: near(205) },
      { name: 'side', top: near(132), hem: near(412) },
      { name: 'back', hem: near(525) },
    ]);
    expect(lengths).toEqual(SPEC.lengths);
    // On the fold, as wide at its top as half its panel; where no panel is, as wide as it was.
    const gores2 = [
      { name: 'front', halfHem: 200 },
      { name: 'side', hem: 400 },
    ];
    expect(supposed({ waist: 924 }, { gores: gores2 }).gores).toEqual([
      { name: 'front', halfHem: near(205) },
      { name: 'side', hem: near(400) },
    ]);
    expect(supposed({ waist: 924 }, { sweep: 2200 })).toMatchObject({ sweep: near(2284) });
  });

  it('her waist is that of her body where the bodice is drafted over it', () => {
    const body = {
      girths: [
        { at: 'bust', above: 200, girth: 900, front: 480, left: 451 },
        { at: 'waist', girth: 800 },
        { at: 'hip', below: 210, girth: 1000, front: 470, left: 503 },
      ],
      bustPointsApart: 190,
    };
    const closure = { hip: 980 };
    const drafted = { ...SPEC.bodice, draft: {} };
    // 840 of 800 is 1.05; 1078 of 980 is 1.1. Above the waist with it, below it with the hips.
    const found = supposed({ waist: 840, hip: 1078 }, { body, closure, bodice: drafted });
    expect(found).toMatchObject({
      bodice: { waistSeam: near(882) },
      closure: { hip: 1078 },
      body: {
        girths: [
          { at: 'bust', above: 200, girth: near(945), front: near(504), left: near(473.55) },
          { at: 'waist', girth: near(840) },
          { at: 'hip', below: 210, girth: near(1100), front: near(517), left: near(553.3) },
        ],
        bustPointsApart: near(199.5),
      },
    });
    // Else it is the seam.
    expect(supposed({ waist: 840 }, { body }).bodice.waistSeam).toBe(840);
    expect(supposed({ waist: 840 }, { bodice: drafted }).bodice.waistSeam).toBe(840);
    // Half girths and bust points that are not said are not made up.
    expect(supposed({ waist: 924 }, { body: { girths: [{ at: 'waist', girth: 800 }] } })).toMatchObject({
      body: { girths: [{ at: 'waist', girth: near(880) }] },
    });
    const [only] = (
      supposed({}, { body: { girths: [{ at: 'waist', girth: 800 }] } }) as never as typeof SPEC & {
        body: { girths: object[] };
      }
    ).body.girths;
    expect(Object.keys(only!)).toEqual(['at', 'girth']);
  });

  it('so much round the hem all the way, in the proportion of the gores', () => {
    // 2 × (200 + 400 + 500), and 84 more: 3426 is half as much again.
    expect(supposed({ waist: 924, sweep: 3426 }).gores).toEqual([
      { name: 'front', halfTop: near(55), halfHem: near(205 * 1.5) },
      { name: 'side', top: near(132), hem: near(412 * 1.5) },
      { name: 'back', hem: near(525 * 1.5) },
    ]);
    // Once round where every gore is there once.
    expect(supposed({ sweep: 2200 }, { symmetry: 'none' }).gores[1]).toMatchObject({ hem: near(800) });
    expect(supposed({ sweep: 3000 }, { sweep: 2000 })).toMatchObject({ sweep: 3000 });
  });

  it('longer everywhere by as much as the front is', () => {
    expect(supposed({ toFloor: 1040 }).lengths).toEqual({
      measured: 'to-floor',
      at: { 'centre-front': 1040, 'side/back': 1060 },
      hemWidthAt: 1020,
    });
    // Finished lengths: to the floor as it is said, else the finished one and what it clears.
    const finished = { measured: 'finished', at: { 'centre-front': 980 } };
    expect(supposed({ toFloor: 1040 }, { lengths: { ...finished, offFloor: 25 } }).lengths.at).toEqual({
      'centre-front': 1015,
    });
    expect(supposed({ toFloor: 1040 }, { lengths: finished }).lengths.at).toEqual({ 'centre-front': 1040 });
    const said = { ...finished, offFloor: 25, toFloor: { 'centre-front': 1007 } };
    expect(supposed({ toFloor: 1040 }, { lengths: said }).lengths).toMatchObject({
      at: { 'centre-front': 1013 },
      toFloor: { 'centre-front': 1040 },
    });
  });

  it('trains, hoops and overskirts: as asked, else as they were, with her hips and her waist', () => {
    const train = { onFloor: 600, shape: 'round' };
    const petticoat = {
      girths: [
        { down: 200, girth: 1300 },
        { down: 900, girth: 2800 },
      ],
      hoop: 3000,
    };
    const overskirts = [
      {
        name: 'polonaise',
        gores: [{ name: 'only', top: 300, hem: 700 }],
        lengths: { measured: 'finished', at: { 'centre-back': 500 } },
      },
    ];
    const own = { train, petticoat, overskirts, closure: { hip: 1000 } };
    const asked = supposed(
      { train: 900, hoop: 3300, hip: 1100, waist: 924, toFloor: 1040, sweep: 3000 },
      own,
    );
    expect(asked).toMatchObject({
      train: { onFloor: 900, shape: 'round' },
      petticoat: {
        girths: [
          { down: 200, girth: near(1430) },
          { down: 900, girth: near(3080) },
        ],
        hoop: 3300,
      },
      // Its hem is its own, whatever goes round the skirt's.
      overskirts: [
        {
          name: 'polonaise',
          gores: [{ name: 'only', top: near(330), hem: near(730) }],
          lengths: { at: { 'centre-back': 530 } },
        },
      ],
    });
    expect(supposed({}, own)).toMatchObject(own);
    expect(supposed({}, { train: { shape: 'round' } })).toMatchObject({ train: { onFloor: 0 } });
    expect(supposed({ hip: 1100 }, { ...own, closure: undefined })).toMatchObject({ petticoat });
    const noHoop = supposed({ hoop: 9 }, { petticoat: { girths: [] } }) as never as { petticoat: object };
    expect(noHoop.petticoat).toEqual({ girths: [] });
  });

  it('names what could not be given', () => {
    const unused = (measures: Measures, own: object = {}) =>
      unusedMeasures({ ...SPEC, ...own } as never, measures);
    expect(unused({ waist: 1, hip: 1, toFloor: 1, sweep: 1 })).toEqual([]);
    expect(unused({ train: 1, hoop: 1, sweep: 1 }, { gores: [{ name: 'a' }] })).toEqual([
      'train',
      'hoop',
      'sweep',
    ]);
    expect(unused({ sweep: 1 }, { gores: [{ name: 'a' }], sweep: 2000 })).toEqual([]);
    expect(unused({ train: 1, hoop: 1 }, { train: {}, petticoat: { hoop: 1, girths: [] } })).toEqual([]);
    expect(unused({ hoop: 1 }, { petticoat: { girths: [] } })).toEqual(['hoop']);
  });
});

it('cloth is estimated at 112, 140 and 150 cm wide (common practice: 45, 54 to 56 and 60 in)', () => {
  expect(USUAL_WIDTHS).toEqual([1120, 1400, 1500]);
});

it('hours from quick to slow, task by task (common practice, without a source)', () => {
  // 20 m of seams, 0.74 m of waist, 8.4 m of hems, 4.3 m of edging.
  const sewn = { seams: 20_000, waist: 740, hems: 8_400, edging: 4_300 };
  const hours = (work: typeof QUICK) =>
    Object.fromEntries(
      hoursByTask({ ...work, overhead: 0, margin: 0, tax: 0, deposit: 0 } as never, sewn).tasks.map(
        ({ task, hours: own }) => [task, Number(decimalText(own, 3))],
      ),
    );
  expect(hours(QUICK)).toEqual({
    'toile-and-fittings': 7,
    'cutting-and-marking': 3,
    closure: 2,
    seams: 4,
    waist: 1.11,
    hems: 3.36,
    edging: 1.72,
  });
  expect(hours(SLOW)).toEqual({
    'toile-and-fittings': 12,
    'cutting-and-marking': 6,
    closure: 4,
    seams: 7,
    waist: 2.22,
    hems: 6.72,
    edging: 3.44,
  });
});
