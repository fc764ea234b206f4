import { describe, expect, it } from 'vitest';
import {
  edgeFacingTooDeep,
  facingTooDeep,
  kicksInFacing,
  upperFacingTooDeep,
  waistFacingTooDeep,
} from '../../src/finishing/finishing-problems.ts';
import { openingProblems } from '../../src/finishing/opening-problems.ts';

/** What finishing pieces that find no room are told as: each figure in its own place, by hand. mm. */

const place = (key = 'whole') => ({ source: { name: key, text: '' }, start: 0, end: 0 });
type Told = ReturnType<typeof kicksInFacing>[number];
const told = ({ code, message, span }: Told) => [
  code,
  message.replaceAll(/[`“”"']/g, ''),
  (span as unknown as { source: { name: string } }).source.name,
];

describe('a facing too deep', () => {
  const facing = { depth: 61, place };
  it.each<[string, Told, string, string]>([
    ['hem', facingTooDeep({ gore: 'side', layer: { facing } } as never, 'mm'), 'the hem 61 mm deep', 'whole'],
    [
      'waist',
      waistFacingTooDeep({ width: 61, place } as never, { gore: 'side' }, 'mm'),
      'the waist 61 mm deep',
      'width',
    ],
    ['edge', edgeFacingTooDeep(facing as never, { gore: 'side' }, 'cm'), 'the edge 6.1 cm deep', 'whole'],
  ])('of the %s', (_, found, says, where) => {
    expect(told(found)).toEqual([
      'facing-deeper-than-gore',
      `A facing of ${says} reaches over the other side of side.`,
      where,
    ]);
  });

  it('of an upper edge', () => {
    expect(told(upperFacingTooDeep(facing as never, 'side-front', 'in'))).toEqual([
      'facing-deeper-than-panel',
      // 2.40 in, to the sixteenth.
      'A facing 2 3/8 in deep reaches from the upper edge over the waist seam of the panel side-front.',
      'whole',
    ]);
  });
});

describe('kick pleats within a facing', () => {
  const kick = { kind: 'kick', name: 'vent', aboveHem: 200, foldDepth: 80, layers: ['shell'], place };
  const layer = (name: string, depth?: number) => ({
    name,
    facing: depth === undefined ? undefined : { depth },
  });
  const found = (pleats: object[], layers: object[]) =>
    kicksInFacing({ pleats, layers, units: 'mm' } as never).map(told);
  const says = (straight: number, of: string, depth: number, name = 'vent') => [
    'kick-in-facing',
    `The edge of kick pleat ${name} runs straight for ${straight} mm above the hem, and the facing of ${of} is ${depth} mm deep.`,
    'above-hem',
  ];

  it('its edge runs straight for its height less its depth: so much room has the facing', () => {
    expect(found([kick], [layer('shell', 119)])).toEqual([]);
    expect(found([kick], [layer('shell', 120)])).toEqual([says(120, 'shell', 120)]);
    expect(found([{ ...kick, aboveHem: 70 }], [layer('shell', 31)])).toEqual([says(0, 'shell', 31)]);
    expect(found([{ ...kick, aboveHem: undefined }], [layer('shell', 31)])).toEqual([says(0, 'shell', 31)]);
  });

  it('of every layer that has both, and of kick pleats alone', () => {
    const layers = [layer('lining'), layer('shell', 150), layer('net', 160), layer('other', 170)];
    const both = { ...kick, layers: ['lining', 'shell', 'net'] };
    expect(found([both, { ...kick, kind: 'knife' }, { ...kick, name: 'slit' }], layers)).toEqual([
      says(120, 'shell', 150),
      says(120, 'net', 160),
      says(120, 'shell', 150, 'slit'),
    ]);
  });
});

describe('what meets in a seam that is longer on one side of her', () => {
  const drafts = {
    gown: {
      gown: {
        round: 'two-halves',
        stations: ['centre-front', 'a/b', 'centre-back', 'a/b'].map((name) => ({ name, drop: 0 })),
        gores: [],
      },
      lengths: [1000, 1010, 1100, 1030],
      frames: [],
    },
    layers: [],
  };
  const pocket = {
    layer: { name: 'own' },
    copies: 1,
    seam: 'a/b',
    stations: [],
    place,
    belowWaist: 210,
    opening: 150,
    depth: 100,
    width: 160,
  };
  const kick = (aboveHem: number) => ({ name: 'k', kind: 'kick', at: 'a/b', aboveHem, place });

  it('is told of the longer one: a pleat begins so far above its hem', () => {
    const found = (aboveHem: number) =>
      openingProblems(
        { units: 'mm', slits: [], godets: [], pockets: [pocket], pleats: [kick(aboveHem)] } as never,
        drafts as never,
      ).map(({ code }) => code);
    // The pocket ends at 360: 1030 less 670.
    expect(found(670)).toEqual([]);
    expect(found(671)).toEqual(['openings-meet']);
  });
});
