import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Gown } from '../../src/gown/gown.ts';
import { bendingLengthOf } from '../../src/hanging/bending-lengths.ts';
import type { HangFigures, HemPlace } from '../../src/hanging/hang-figures.ts';
import { hangFindings } from '../../src/hanging/hang-findings.ts';
import type { BustlePoint } from '../../src/making/bustle/bustle.ts';
import { draft } from '../../src/pipeline.ts';

const ROOT = join(import.meta.dirname, '../..');

function gownOf(file: string): Gown {
  const { gown } = draft({ name: file, text: readFileSync(join(ROOT, file), 'utf8') });
  if (gown === undefined) throw new Error(`${file} does not draft`);
  return gown.gown;
}

const say = (mm: number): string => `${mm / 10} cm`;

/** A hem 5 cm off the floor but where it is said to be otherwise, by distance along it. */
function hemOf(otherwise: Readonly<Record<number, number>>): HangFigures {
  const hem = Array.from({ length: 40 }, (_, i): HemPlace => {
    const along = 50 * i;
    const left = along < 1000 ? 300 : -300;
    return {
      along,
      height: otherwise[along] ?? 50,
      left,
      behind: 0,
      near: { station: 'centre-back', beside: 1000 - along },
    };
  });
  const lain = hem.filter(({ height }) => height <= 4).map(({ along }) => along);
  const touches = lain.length === 0 ? [] : [{ from: lain[0]!, to: lain[lain.length - 1]! }];
  return { hem, touches, lainBehind: 0, stretch: 0, assumedFloor: false };
}

describe('what hanging finds', () => {
  const trained = gownOf('templates/round-train.yaml');
  const round = gownOf('templates/over-a-hoop.yaml');

  it('a bustled hem on the floor between its points, with how far from the nearest seam', () => {
    const bustled = { figures: hemOf({ 800: 3, 850: 0, 900: 2 }), views: [] };
    const found = hangFindings(trained, { figures: hemOf({}), views: [], bustled }, say);
    expect(found.map(({ code, message }) => [code, message])).toEqual([
      ['bustled-hem-on-floor', 'Bustled, the hem lies on the floor 15 cm from `centre-back`.'],
    ]);
  });

  it('says it once for both sides of a mirrored gown', () => {
    const bustled = { figures: hemOf({ 1150: 0 }), views: [] };
    expect(hangFindings(trained, { figures: hemOf({}), views: [], bustled }, say)).toEqual([]);
  });

  it('a hem that hangs otherwise than was asked, at the place where it does so most', () => {
    const even = Object.fromEntries(Array.from({ length: 40 }, (_, i) => [50 * i, 27]));
    expect(hangFindings(round, { figures: hemOf(even), views: [] }, say)).toEqual([]);
    const folded = hangFindings(round, { figures: hemOf({ ...even, 400: 43 }), views: [] }, say);
    expect(folded.map(({ message, level }) => [level, message])).toEqual([
      ['note', 'Hung by computation, the hem is 4.3 cm off the floor near `centre-back`; 2.5 cm was asked.'],
    ]);
  });

  it('says nothing of a height that nobody measured, nor of a train', () => {
    expect(hangFindings(round, { figures: { ...hemOf({}), assumedFloor: true }, views: [] }, say)).toEqual(
      [],
    );
    expect(hangFindings(trained, { figures: hemOf({}), views: [] }, say)).toEqual([]);
  });
});

describe('what clears a bustled hem', () => {
  const asked = gownOf('examples/lantern.yaml');
  const advised = gownOf('templates/round-train.yaml');
  const figures = { lift: 400, pickUp: 550, loopBottom: 570, aboveHem: 300 };
  const more: BustlePoint = { gore: 'back', across: 0.75, copies: 2, anchor: 145, ...figures };
  const has: BustlePoint = { seam: 'centre-back', copies: 1, anchor: 120, ...figures };
  const hintOf = (gown: Gown, clears: boolean): string | undefined => {
    const bustled = { figures: hemOf({ 800: 0 }), views: [], advice: { points: [more], clears } };
    return hangFindings(gown, { figures: hemOf({}), views: [], bustled }, say, { points: [has] })[0]?.hint;
  };

  it('the points more alone where some are asked for; those that are advised with them where none are', () => {
    expect(hintOf(asked, true)).toContain('`bustle`: {gore: back, across: 75%, anchor: 14.5 cm}. Hung so');
    const all = '{seam: centre-back, anchor: 12 cm}, {gore: back, across: 75%, anchor: 14.5 cm}. Hung so';
    if (advised.bustle?.points.length === 0) expect(hintOf(advised, true)).toContain(all);
    expect(hintOf(asked, false)).not.toContain('gore: back');
  });

  it('names every stretch that lies, each with its own distance', () => {
    const two = hemOf({ 400: 0, 800: 0 });
    const touches = [
      { from: 400, to: 400 },
      { from: 800, to: 800 },
    ];
    const bustled = { figures: { ...two, touches }, views: [] };
    const found = hangFindings(asked, { figures: hemOf({}), views: [], bustled }, say);
    expect(found.map(({ message }) => message)).toEqual([
      'Bustled, the hem lies on the floor 60 cm from `centre-back` and 20 cm from `centre-back`.',
    ]);
  });
});

describe('what contradicts the spec', () => {
  const trained = gownOf('templates/round-train.yaml');
  const round = gownOf('templates/over-a-hoop.yaml');
  /** A hem on the floor at one place, 30 mm off it elsewhere, all nearest to one station. */
  const near = (station: string, height: number): HangFigures => {
    const { hem, ...rest } = hemOf({ 400: height });
    const own = hem.map((place) => ({
      ...place,
      height: place.along === 400 ? height : 30,
      near: { ...place.near, station },
    }));
    return { ...rest, hem: own, touches: [] };
  };
  const found = (gown: Gown, figures: HangFigures, floor?: number): (readonly [string, string, string])[] => {
    const behind = { name: 'centre-back', finished: 1700, floor: { length: floor ?? 1700 } };
    const skirt = { stations: [behind] } as never;
    return hangFindings(gown, { figures, views: [] }, say, { skirt }).map(
      ({ level, code, message }) => [level, code, message] as const,
    );
  };

  it('a hem that lies on the floor where it was to hang, and not where the train lies', () => {
    const said =
      'Hung by computation, the hem lies on the floor 60 cm from `centre-front`, where 2.5 cm off it was asked.';
    expect(found(round, near('centre-front', 2))).toEqual([['warning', 'hem-on-floor', said]]);
    expect(found(trained, near('centre-front', 2))).toEqual([['warning', 'hem-on-floor', said]]);
    expect(found(trained, near('centre-back', 2))).toEqual([]);
  });

  it('before the train begins a hem that hangs otherwise than was asked', () => {
    expect(found(trained, near('front/side-front', 42))).toEqual([
      [
        'note',
        'hem-hangs-otherwise',
        'Hung by computation, the hem is 4.2 cm off the floor near `front/side-front`; 2.5 cm was asked.',
      ],
    ]);
    expect(found(trained, near('side-front/side', 42))).toEqual([]);
  });

  it('a train of which more or less lies than its length and the floor give', () => {
    const train = (lainBehind: number): HangFigures => ({ ...hemOf({}), lainBehind });
    // 170 cm long where the floor is 110 below: 60 on the floor.
    expect(found(trained, train(480), 1100)).toEqual([
      [
        'note',
        'train-lies-otherwise',
        'Hung by computation, 48 cm of the train lie on the floor at the centre back; 60 cm was asked.',
      ],
    ]);
    expect(found(trained, train(560), 1100)).toEqual([]);
    expect(found(trained, train(650), 1100)).toEqual([]);
    expect(found(trained, train(710), 1100)[0]?.[2]).toContain('71 cm of the train lie');
    expect(found(trained, { ...train(480), assumedFloor: true }, 1100)).toEqual([]);
  });

  it('cloth that did not come to rest, and then nothing else', () => {
    const bustled = { figures: { ...hemOf({ 800: 0 }), stretch: 0.034 }, views: [] };
    const all = hangFindings(trained, { figures: hemOf({}), views: [], bustled }, say);
    expect(all.map(({ code, message }) => [code, message])).toEqual([
      [
        'hang-not-at-rest',
        'Hung by computation, the cloth did not come to rest: somewhere it is stretched by 3.4 %.',
      ],
    ]);
  });
});

describe('how stiff a cloth is', () => {
  it('as the maker measured it, before anything else', () => {
    expect(bendingLengthOf({ name: 'chiffon', weave: 'chiffon', weight: 20, bendingLength: 31 })).toBe(31);
  });

  it('else by its weave or its name, stiffer where it is heavier (from memory: limp 12 to 18, crisp 30 to 45 mm)', () => {
    expect(bendingLengthOf({ name: 'shell', weave: 'chiffon' })).toBeLessThan(18);
    expect(bendingLengthOf({ name: 'silk taffeta' })).toBeGreaterThan(30);
    const [light, heavy] = [120, 240].map((weight) => bendingLengthOf({ name: 'satin', weight }));
    expect(heavy).toBeGreaterThan(light!);
  });
});
