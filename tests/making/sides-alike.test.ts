import { describe, expect, it } from 'vitest';
import { checkTable } from '../../src/cli/check-table.ts';
import { hangTask } from '../../src/hanging/hang-task.ts';
import { hungAtFirst } from '../../src/hanging/hung-gown.ts';
import { draft } from '../../src/pipeline.ts';
import { english } from '../../src/words/english.ts';
import { example, type Made, made } from './made.ts';

/**
 * The same gown mirrored, and with its hem pinned up by 1 cm at one seam on her left, well before the train: every
 * figure of another place is what it was. Figures are worked out by hand from examples/lantern.yaml, in mm.
 */
const LANTERN = example('lantern');
const PINNED = '\nfittings:\n  - {date: 2027-03-01, side: left, hem: {front/side-front: 1}}\n';
const FLOORS = / {2}to-floor:[\s\S]*?(?=\ntrain:)/;

function bothWays(text: string): [mirrored: Made, pinned: Made] {
  const [mirrored, pinned] = [made(text), made(text + PINNED)];
  expect([mirrored, pinned].map(({ gown }) => gown.gown.round)).toEqual(['mirrored', 'two-halves']);
  return [mirrored, pinned];
}

describe('a gown altered on one side only', () => {
  it('keeps the five points of its bustle, each as high as it was', () => {
    for (const { facts } of bothWays(LANTERN)) {
      expect(facts.bustle?.number).toBe(5);
      // Anchor + length − (floor − clearance): 120 + 1760 − 1095, 140 + 1390 − 1095, 200 + 1120 − 1085.
      expect(facts.bustle?.points.map(({ seam, copies, pickUp }) => [seam, copies, pickUp])).toEqual([
        ['centre-back', 1, expect.closeTo(785, 6)],
        ['side-back/back', 2, expect.closeTo(435, 6)],
        ['side/side-back', 2, expect.closeTo(235, 6)],
      ]);
    }
  });

  it('is advised the same points, on both of her sides or on neither', () => {
    const advised = LANTERN.replace(/ {2}points:[\s\S]*?(?=\nlabour:)/, '');
    for (const { facts } of bothWays(advised)) {
      expect(facts.bustle?.advised).toBe(true);
      expect(facts.bustle?.points.map(({ seam, copies }) => [seam, copies])).toEqual([
        ['centre-back', 1],
        ['side-back/back', 2],
        ['side/side-back', 2],
      ]);
    }
  });

  it('tells a point of each side where they differ', () => {
    const pinned = made(
      `${LANTERN}\nfittings:\n  - {date: 2027-03-01, side: left, hem: {side-back/back: 3}}\n`,
    );
    expect(pinned.facts.bustle?.number).toBe(5);
    expect(pinned.facts.bustle?.points.map(({ seam, side, pickUp }) => [seam, side, pickUp])).toEqual([
      ['centre-back', undefined, expect.closeTo(785, 6)],
      ['side-back/back', 'left', expect.closeTo(435 - 30, 6)],
      ['side-back/back', 'right', expect.closeTo(435, 6)],
      ['side/side-back', undefined, expect.closeTo(235, 6)],
    ]);
  });

  it('stands on the same floor, where only the train on it says how far down that lies', () => {
    for (const { facts } of bothWays(LANTERN.replace(FLOORS, ''))) {
      const floors = facts.skirt.stations.map(({ name, floor }) => [name, floor] as const);
      expect(floors.find(([name]) => name === 'centre-back')?.[1]).toEqual({
        length: expect.closeTo(1760 - 645, 6),
        estimated: false,
      });
      expect(floors.filter(([, floor]) => floor !== undefined)).toHaveLength(1);
    }
  });

  it('stands on the same floor, worked out on her right as on her left where nobody measured it', () => {
    const few = LANTERN.replace('    front/side-front: 105\n    side-front/side: 108\n', '');
    for (const { facts } of bothWays(few)) {
      const floorsAt = (name: string) =>
        facts.skirt.stations.filter((station) => station.name === name).map(({ floor }) => floor!);
      // Between 1035 at the centre front and 1105 behind the two.
      for (const name of ['front/side-front', 'side-front/side'])
        for (const { length, estimated } of floorsAt(name)) {
          expect(estimated, name).toBe(true);
          expect(length, name).toBeGreaterThan(1035);
          expect(length, name).toBeLessThan(1105);
        }
      const [left, right = left] = floorsAt('side-front/side');
      expect(right!.length).toBeCloseTo(left!.length, 0);
    }
  });

  it.each(['left', 'right'] as const)('closes on her %s', (side) => {
    const text = LANTERN.replace('side: left', `side: ${side}`);
    for (const { gown, facts } of bothWays(text)) {
      expect([facts.closure?.at, facts.closure?.side]).toEqual(['side-front/side', side]);
      // Hung, it opens on that side of her: seen from the front her left is to the right.
      const front = hungAtFirst(hangTask(gown)).views[0]!;
      const middle = (front.box.left + front.box.right) / 2;
      const xs = front.opening.flat().map(({ x }) => x);
      expect(xs.length).toBeGreaterThan(0);
      for (const x of xs) expect(Math.sign(x - middle)).toBe(side === 'left' ? 1 : -1);
    }
  });

  it('lies on the floor with the same train, godets and all', () => {
    const godet = '\ngodets:\n  - {name: wedge, seam: side-back/back, from: 70, width: 30}\n';
    for (const text of [LANTERN, LANTERN + godet]) {
      const [one, two] = bothWays(text).map(({ facts }) => facts.footprint!);
      for (const key of ['length', 'width', 'radius'] as const) expect(two![key]).toBeCloseTo(one![key], 4);
    }
    const [plain, wedged] = [LANTERN, LANTERN + godet].map((text) => bothWays(text)[1].facts.footprint!);
    // Two wedges, 30 wide at the hem 690 below their points, 405 below them at the floor of 1115.
    const wider = (2 * 300 * (1115 - 700)) / (1390 - 700) / (2 * Math.PI);
    expect(wedged!.radius - plain!.radius).toBeCloseTo(wider, 3);
  });

  it('joins its edging where it did: at the closure, and without one at the centre back', () => {
    const unsaid = LANTERN.replace('  start: side-front/side\n', '');
    const open = unsaid.replace(/\nclosure:[\s\S]*?(?=\nedging:)/, '').replace(/\n {2}closure: \[.*\]/, '');
    for (const [text, start] of [
      [LANTERN, 'side-front/side'],
      [unsaid, 'side-front/side'],
      [open, 'centre-back'],
    ] as const)
      for (const { facts } of bothWays(text)) expect(facts.edging?.start).toBe(start);
  });

  it('names every seam once in the order of making', () => {
    for (const { facts } of bothWays(LANTERN)) {
      const sewn = facts.order.flatMap(({ work }) => (work.kind === 'sew-seams' ? [work.seams] : []));
      for (const seams of sewn)
        expect(seams.map(({ name, copies }) => [name, copies])).toEqual([
          ['front/side-front', 2],
          ['side-front/side', 2],
          ['side/side-back', 2],
          ['side-back/back', 2],
          ['centre-back', 1],
        ]);
    }
  });

  it('misses the same facts', () => {
    for (const text of [LANTERN, LANTERN.replace(FLOORS, '')]) {
      const [one, two] = bothWays(text).map(({ facts }) => facts.missing);
      expect(two).toEqual(one);
    }
  });
});

describe('a seam taken in from the waist down', () => {
  const taken = (side: string) =>
    `${LANTERN}\nfittings:\n  - {date: 2027-03-01, ${side}seams: [{seam: side/side-back, from: 0, to: 30, take-in: 0.5}]}\n`;

  it.each([
    ['on both sides', '', [81, 81]],
    ['on her left', 'side: left, ', [81, 86]],
  ])('takes the bodice panel in with the top, %s', (_where, side, tops) => {
    const { gores } = made(taken(side)).gown.measures;
    const own = gores.filter(({ name }) => name === 'side');
    expect(own.map(({ panel }) => panel)).toEqual(
      (own.length === 1 ? [81] : tops).map((top) => expect.closeTo(top, 6)),
    );
    for (const { top, panel } of gores) expect(top).toBeCloseTo(panel!, 1);
  });
});

describe('a seam let out past its allowance', () => {
  const letOut = (lining: string, side = '') =>
    `${LANTERN.replace('allowances: {hem: 1.5}}', `allowances: {hem: 1.5, seam: ${lining}}}`)}
fittings:
  - {date: 2027-03-01, ${side}seams: [{seam: side/side-back, from: 30, to: 60, take-in: -1}]}
`;
  const saidOf = (text: string): string[] =>
    draft({ name: 'gown.yaml', text })
      .diagnostics.filter(({ code }) => code === 'fitting-past-allowance')
      .map(({ message }) => message);

  it.each(['', 'side: left, '])('is said of the layer that has less than the gown (%s)', (side) => {
    const text = letOut('0.5', side);
    const all = saidOf(text);
    expect(all).toHaveLength(1);
    expect(all[0]).toContain(
      'Seam `side/side-back` of layer `lining` is let out by 1 cm, and its allowance is 0.5 cm',
    );
    expect(saidOf(letOut('1.5', side))).toEqual([]);
  });
});

describe('where her sides differ', () => {
  const pinned = made(LANTERN + PINNED);
  /** Seams of Lantern that there are two of. */
  const PAIRED = ['front/side-front', 'side-front/side', 'side/side-back', 'side-back/back'];

  it('a step names the side of each seam that it speaks of, or that both are meant', () => {
    const words = english('cm');
    const told = pinned.facts.order.flatMap(({ work }) => {
      const { does, notes, holds } = words.step(work);
      return [does, ...notes, ...holds];
    });
    const speaking = told.filter((text) => PAIRED.some((seam) => text.includes(seam)));
    expect(speaking.filter((text) => text.includes('left side-front/side')).length).toBeGreaterThan(3);
    for (const text of speaking)
      for (const seam of PAIRED) {
        const rest = text
          .replaceAll(`left ${seam}`, '')
          .replaceAll(`right ${seam}`, '')
          .replaceAll(`${seam}, her `, '')
          .replaceAll(`${seam} (2)`, '');
        expect(rest.includes(seam), text).toBe(BOTH_ARE_MEANT.test(text) && rest.includes(seam));
      }
  });

  it('every row of the checked figures does', () => {
    const rows = checkTable(pinned.gown.report, 'cm').split('\n');
    for (const seam of PAIRED)
      for (const side of ['left', 'right'])
        expect(rows.filter((row) => row.startsWith(`${seam} ${side} `)).length, `${seam} ${side}`).toBe(2);
    // 1 cm up on her left: 103 as asked on her right.
    const lengthOf = (row: string) => row.trim().split(/ +/).at(-1);
    const [left, right] = ['left', 'right'].map((side) =>
      lengthOf(rows.find((row) => row.startsWith(`front/side-front ${side} `))!),
    );
    expect([left, right]).toEqual(['102.00', '103.00']);
    for (const gore of ['front', 'side-front', 'back'])
      for (const side of ['left', 'right'])
        expect(
          rows.some((row) => row.startsWith(`${gore} ${side} `)),
          `${gore} ${side}`,
        ).toBe(true);
  });
});

/** Marks and bustle points that are the same on both sides are told once. */
const BOTH_ARE_MEANT = /^Bustle, /;
