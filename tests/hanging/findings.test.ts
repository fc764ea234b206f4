import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Gown } from '../../src/gown/gown.ts';
import { bendingLengthOf } from '../../src/hanging/bending-lengths.ts';
import type { HangFigures, HemPlace } from '../../src/hanging/hang-figures.ts';
import { hangFindings } from '../../src/hanging/hang-findings.ts';
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
  return { hem, touches, stretch: 0, assumedFloor: false };
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
