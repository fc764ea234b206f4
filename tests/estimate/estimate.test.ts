import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Decimal from 'decimal.js';
import { beforeAll, describe, expect, it } from 'vitest';
import { estimateGown } from '../../src/cli/estimate-gown.ts';
import { run } from '../../src/cli/main.ts';
import { BUST_GIRTHS, bodySize } from '../../src/estimate/body-sizes.ts';
import { readSpec } from '../../src/gown-file/read-spec.ts';
import { withMeasures } from '../../src/gown-file/with-measures.ts';
import { draftSpec } from '../../src/pipeline.ts';
import { freshFolder, projectFile } from '../cli/gorewright.ts';
import { RecordingMachine } from '../cli/recording-machine.ts';

const TEMPLATES = readdirSync(projectFile('templates')).map((file) => file.replace('.yaml', ''));

interface Estimated {
  readonly cloth: readonly {
    readonly layer: string;
    readonly cloth: string;
    readonly widths: readonly { readonly width: number; readonly buy: number | null }[];
  }[];
  readonly hours: { readonly least: string; readonly most: string };
  readonly price: { readonly least: string; readonly most: string } | null;
}

async function estimated(flags: Omit<Parameters<typeof estimateGown>[0], 'json'>): Promise<Estimated> {
  const machine = new RecordingMachine(freshFolder());
  expect(await estimateGown({ ...flags, json: true }, machine)).toBe(0);
  return JSON.parse(machine.stdout);
}

function specOf(template: string) {
  const text = readFileSync(join(projectFile('templates'), `${template}.yaml`), 'utf8');
  return readSpec({ name: `${template}.yaml`, text }).spec!;
}

describe('sizes', () => {
  it('are those of EN 13402-3 (from memory)', () => {
    expect(BUST_GIRTHS).toEqual([76, 80, 84, 88, 92, 96, 100, 104, 110, 116]);
    expect(BUST_GIRTHS.map((bust) => bodySize(bust)!.waist / 10)).toEqual([
      60, 64, 68, 72, 76, 80, 84, 88, 94.5, 101,
    ]);
    expect(BUST_GIRTHS.map((bust) => bodySize(bust)!.hip / 10)).toEqual([
      84, 88, 92, 96, 100, 104, 108, 112, 117, 122,
    ]);
    expect(bodySize(88)).toEqual({ bust: 880, waist: 720, hip: 960 });
    expect(bodySize(90)).toBeUndefined();
  });
});

describe('a gown for other measures', () => {
  it.each(TEMPLATES)(
    '%s drafts true for the smallest and for the largest size, and keeps to its measures',
    (name) => {
      for (const bust of [BUST_GIRTHS[0]!, BUST_GIRTHS.at(-1)!]) {
        const { waist, hip } = bodySize(bust)!;
        const { gown, diagnostics } = draftSpec(withMeasures(specOf(name), { waist, hip, toFloor: 1_000 }));
        expect(diagnostics.filter(({ level }) => level === 'error')).toEqual([]);
        // A drafted bodice is sewn to her waist less what it is laced in, and lower where its edge drops.
        const { bodice } = gown!.report;
        const own = bodice?.levels.find(({ at }) => at === 'waist')?.body ?? gown!.report.waist.sewn;
        expect(own).toBeCloseTo(waist, 0);
      }
    },
  );

  it('is longer by as much everywhere, with the train and the hem that were asked for', () => {
    const own = specOf('round-train');
    const before = draftSpec(own).gown!.report;
    const after = draftSpec(withMeasures(own, { toFloor: 1_100, train: 900 })).gown!.report;
    // The template's front is 107 to the floor, and its train 60 on the floor.
    const grown = (name: string) => {
      const length = (report: typeof before) => report.seams.find((seam) => seam.name === name)!.lengths[0];
      return length(after) - length(before);
    };
    // A station that the template does not name follows its neighbours round the hem, which is wider now.
    expect(Math.abs(grown('front/side-front') - 30)).toBeLessThan(0.2);
    expect(grown('centre-back')).toBeCloseTo(30 + 300, 3);
  });
});

describe('figures', () => {
  // Two lays at two widths, planned once for both.
  let six: Estimated;
  beforeAll(async () => {
    const price = ['shell=24.50', 'lining=7.90'];
    six = await estimated({ from: 'six-gores', width: ['112', '150'], rate: '23', price });
  });

  it('cloth is what lay says for the same widths', async () => {
    const { cloth } = six;
    const machine = new RecordingMachine(projectFile('templates'));
    await run(['lay', 'six-gores.yaml', '--width', '112', '--width', '150', '--json'], machine);
    const { lays } = JSON.parse(machine.stdout) as {
      lays: { layer: string; width: number; buy: number }[];
    };
    for (const { layer, widths } of cloth)
      for (const { width, buy } of widths)
        expect(buy).toBeCloseTo(lays.find((lay) => lay.layer === layer && lay.width === width)!.buy, 3);
  });

  it('the price is metres by price and hours by rate, to the penny, at the widest cloth', () => {
    const { cloth, hours, price } = six;
    const prices: Record<string, string> = { shell: '24.50', lining: '7.90' };
    const bought = cloth.reduce(
      (sum, row) => sum.plus(new Decimal(row.widths[1]!.buy!).div(1000).times(prices[row.cloth]!)),
      new Decimal(0),
    );
    for (const end of ['least', 'most'] as const) {
      // Hours are printed whole, so the price may be out by half an hour.
      const about = bought.plus(new Decimal(hours[end]).times(23)).toNumber();
      expect(Math.abs(Number(price![end]) - about)).toBeLessThanOrEqual(11.5);
    }
    expect(Number(price!.least)).toBeLessThan(Number(price!.most));
  });

  it('there is no price where one is missing', async () => {
    expect((await estimated({ from: 'pencil', width: ['150'], rate: '23' })).price).toBeNull();
    expect(
      (await estimated({ from: 'pencil', width: ['150'], price: ['shell=1', 'lining=1'] })).price,
    ).toBeNull();
  });

  it('a bigger size takes more cloth, and never less', async () => {
    const bought = async (size: string) =>
      (await estimated({ from: 'pencil', width: ['150'], size })).cloth.reduce(
        (sum, row) => sum + row.widths[0]!.buy!,
        0,
      );
    expect(await bought('116')).toBeGreaterThanOrEqual(await bought('76'));
  });
});
