import { describe, expect, it } from 'vitest';
import { gownToLay } from '../../src/lay/plan/lay-to-plan.ts';
import { planLays } from '../../src/lay/plan/plan-lays.ts';
import { layFigures } from '../../src/publish/lay-files.ts';
import { pageFile } from '../../src/publish/page-file.ts';
import { layReport } from '../../src/report/lay-report.ts';
import { made, skirt } from '../making/made.ts';
import { ringOf } from './laid.ts';

/** What a lay says in words and in the report, against its pieces as they lie and sums by hand. */
const SPEC = skirt({ more: 'currency: EUR' }).replace(
  '  crepe: {width: 140, selvedge: 1, weight: 100}',
  '  crepe: {width: 140, selvedge: 2, weight: 100, sold-by: 0.25m, shrinkage: 4%, safety: 10%, end-loss: 6, price: 12.40}',
);
const { gown } = made(SPEC);
const toLay = gownToLay(gown);
const { lays } = planLays(toLay, { seed: 1, say: (mm) => `${mm / 10} cm` });
const [lay] = lays as [(typeof lays)[number]];

/** In the shop's steps, by hand: ⌈(lay + 60) × 1.04 × 1.1 ÷ 250⌉ × 250, half a millimetre forgiven. */
const buyOf = (length: number) => Math.ceil(((length + 60) * 1.04 * 1.1 - 0.5) / 250) * 250;
const cm = (mm: number) => `${(mm / 10).toFixed(1).replace(/\.0$/, '')} cm`;

function areaOf(ring: readonly { x: number; y: number }[]): number {
  return (
    Math.abs(
      ring.reduce(
        (sum, a, i) => sum + a.x * ring[(i + 1) % ring.length]!.y - ring[(i + 1) % ring.length]!.x * a.y,
        0,
      ),
    ) / 2
  );
}

describe('the figures of a lay', () => {
  const rings = lay.pieces.map(ringOf);
  const length = Math.max(...rings.flat().map(({ y }) => y));
  const used = rings.reduce((sum, ring) => sum + areaOf(ring), 0) / (length * 1400);

  it('every piece lies inside both selvedges', () => {
    expect(lay.pieces.length).toBe(6);
    for (const { x, y } of rings.flat()) {
      expect(x).toBeGreaterThan(20 - 0.05);
      expect(x).toBeLessThan(1380 + 0.05);
      expect(y).toBeGreaterThan(-0.05);
    }
  });

  it('width, length, what to buy and what is used, in words', () => {
    const [figure] = layFigures(gown.gown, lays, 210);
    const [, layers, cloth, width, said, buy, share] =
      /^(.+) from (.+), (.+?) wide, .+; lay (.+?), buy (.+?), (\d+) % used\./.exec(figure!.caption)!;
    expect([layers, cloth, width]).toEqual(['shell', 'crepe', '140 cm']);
    expect(said).toBe(cm(length));
    expect(buy).toBe(cm(buyOf(length)));
    expect(Number(share)).toBe(Math.round(100 * used));
  });

  it('and in the report, with what it costs', () => {
    const [report] = layReport(gown.gown, lays);
    expect(report!.width).toBe(1400);
    expect(report!.length).toBeCloseTo(length, 1);
    expect(report!.buy).toBe(buyOf(length));
    expect(report!.used).toBeCloseTo(used, 3);
    expect(report!.cost).toBeCloseTo((buyOf(length) / 1000) * 12.4, 2);
    expect(report!.layer).toBe('shell');
    // Its waist all round as the spec gives the bodice’s, 72 cm: both halves.
    expect(gown.report.layers[0]!.sewnWaist).toBeCloseTo(720, 1);
  });
});

describe('what is left of a cloth’s width', () => {
  const factsFor = (more: string) => gownToLay(made(SPEC + more).gown).lays[0]!.facts;

  it('less both selvedges', () => expect(factsFor('').usable).toBeCloseTo(1400 - 2 * 20, 9));

  it('less an edging on both of its edges, where that is cut off them', () => {
    const own = '\nedging: {name: border, from: own-edges, cloth: crepe, depth: 7}\n';
    const edged = made(SPEC.replace('hem: turned}', 'hem: raw, edging: border}') + own).gown;
    expect(gownToLay(edged).lays[0]!.facts.usable).toBeCloseTo(1400 - 2 * 20 - 2 * 70, 9);
  });
});

describe('the page for a screen', () => {
  const entry = (milestone: string, date: string, weekday: number, daysBefore: number) => ({
    milestone,
    date,
    weekday,
    daysBefore,
  });
  const calendar = [entry('cut', '2027-06-12', 5, 49), entry('deliver', '2027-07-27', 1, 4)];
  const page = (own: object = {}) =>
    pageFile({ gown, facts: { calendar }, lays, files: new Map(), findings: [], ...own } as never);
  /** Cells of every row of the section with this title. */
  const rowsOf = (text: string, title: string) => {
    const section = text.split('<section').find((part) => part.includes(`<h2>${title}</h2>`)) ?? '';
    return [...section.matchAll(/<tr>(.*?)<\/tr>/gs)].map(([, row]) =>
      [...row!.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/gs)].map(([, cell]) => cell),
    );
  };

  it('what to buy: a row a lay, each figure under its head', () => {
    const length = Math.max(...lay.pieces.flatMap(ringOf).map(({ y }) => y));
    const cost = ((buyOf(length) / 1000) * 12.4).toFixed(2);
    expect(rowsOf(page(), 'What to buy')).toEqual([
      ['layers', 'cloth', 'width', 'lay', 'buy', 'cost'],
      ['shell', 'crepe', '140 cm', cm(length), cm(buyOf(length)), cost],
    ]);
  });

  it('the calendar: what, when, how long before', () => {
    expect(rowsOf(page(), 'Calendar')).toEqual([
      ['what', 'date', 'days before'],
      ['cut the cloth', 'Saturday 12 June 2027', '49'],
      ['deliver, pins counted', 'Tuesday 27 July 2027', '4'],
    ]);
    expect(page({ facts: {} })).not.toContain('<h2>Calendar</h2>');
  });

  it('sheets as they are taped, each with its page', () => {
    const sheet = (label: string, number: number) => ({ label, page: number });
    const sheets = [sheet('A1', 2), sheet('B1', 3), sheet('A2', 4), sheet('B3', 5)];
    const rows = rowsOf(page({ sheets: { paper: 'a4', sheets } }), 'Sheets');
    const plain = rows.map((row) =>
      row.map((cell) =>
        cell
          ?.replaceAll(/<[^>]+>/g, ' ')
          .trim()
          .replaceAll(/ +/g, ' '),
      ),
    );
    expect(plain).toEqual([
      ['A1 page 2', 'A2 page 4', ''],
      ['B1 page 3', '', 'B3 page 5'],
    ]);
  });
});
