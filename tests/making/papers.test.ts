import { describe, expect, it } from 'vitest';
import { TOILE_ALLOWANCES, toileOf } from '../../src/gown/toile.ts';
import type { BoughtCloth } from '../../src/lay/plan/lay-facts.ts';
import { draftWhole } from '../../src/pipeline.ts';
import type { FlowedPages } from '../../src/print/page/page-flow.ts';
import { clientPages } from '../../src/print/papers/client-pages.ts';
import { jobSheet } from '../../src/print/papers/job-sheet.ts';
import { measuresForm, measuresText } from '../../src/print/papers/measures-form.ts';
import { isWinAnsi } from '../../src/print/text/win-ansi.ts';
import { english } from '../../src/words/english.ts';
import { textsOf } from '../print/page-texts.ts';
import { example, made, skirt } from './made.ts';
import { inputOf } from './paper-input.ts';

const A4 = { width: 210, height: 297 };
const LETTER = { width: 215.9, height: 279.4 };

function told(pages: FlowedPages): string {
  return pages.pages
    .map((page) =>
      textsOf(page)
        .map((one) => one.text)
        .join('\n'),
    )
    .join('\n');
}

const LAYS: BoughtCloth[] = [
  { cloth: 'cupro', layers: ['lining'], length: 4310, buy: 4500 },
  { cloth: 'crepe', layers: ['shell'], length: 4630, buy: 4700 },
  { cloth: 'organza', layers: ['organza'], length: 5100, buy: 5500 },
];

const lantern = made(example('lantern'), LAYS);
const puffin = made(example('puffin'));
const plain = made(skirt());

describe.each([
  ['an evening gown on A4', lantern, A4],
  ['a stage costume in inches on Letter', puffin, LETTER],
  ['the plainest skirt', plain, A4],
])('the papers of %s', (_, one, paper) => {
  const input = inputOf(one, paper);
  const words = english(one.gown.gown.units);
  const papers = [jobSheet(input), clientPages(input), measuresForm(one.gown.gown, words, paper)];

  it('keep every text within the margins of its page', () => {
    for (const page of papers.flatMap((own) => own.pages)) {
      for (const text of textsOf(page)) {
        expect(text.left, text.text).toBeGreaterThan(14);
        expect(text.right, text.text).toBeLessThan(paper.width - 14);
        expect(text.baseline, text.text).toBeLessThan(paper.height - 14);
      }
    }
  });

  it('print no text over another', () => {
    for (const page of papers.flatMap((own) => own.pages)) {
      const texts = textsOf(page);
      for (const [i, a] of texts.entries()) {
        for (const b of texts.slice(i + 1)) {
          const apart = a.right <= b.left + 0.2 || b.right <= a.left + 0.2;
          const lines = Math.abs(a.baseline - b.baseline) > 0.55 * Math.min(a.size, b.size);
          // Letters of a small piece's corners may crowd; they are one or two characters.
          const letters = a.text.length <= 2 && b.text.length <= 2;
          expect(apart || lines || letters, `${a.text} | ${b.text}`).toBe(true);
        }
      }
    }
  });

  it('need no font but the standard ones', () => {
    for (const page of papers.flatMap((own) => own.pages)) {
      for (const { text } of textsOf(page)) expect(isWinAnsi(text), text).toBe(true);
    }
  });

  it('never certify', () => {
    for (const own of papers)
      expect(told(own)).not.toMatch(/\b(certified|guaranteed?|is safe|fireproof|compliant)\b/i);
  });
});

describe('the job sheet of an evening gown', () => {
  const text = told(jobSheet(inputOf(lantern)));

  it('prints the figures of the draft', () => {
    const words = english('cm');
    for (const station of lantern.facts.skirt.stations)
      expect(text).toContain(words.number(station.finished));
    expect(text).toContain(words.length(lantern.facts.skirt.hem));
    for (const point of lantern.facts.bustle!.points) expect(text).toContain(words.number(point.pickUp));
    for (const piece of lantern.gown.cut.pieces) expect(text).toContain(piece.gore);
  });

  it('has a number to tick for every step', () => {
    for (const step of lantern.facts.order) expect(text).toContain(`\n${step.number}\n`);
  });
});

describe('the client’s pages', () => {
  const text = told(clientPages(inputOf(lantern)));

  it('show the price and not how it is made up', () => {
    const quote = lantern.facts.pricing.quote!;
    const words = english('cm');
    expect(text).toContain(words.money(quote.total));
    for (const amount of [quote.overhead, quote.labour, quote.materials])
      expect(text).not.toContain(words.amount(amount));
    expect(text).not.toMatch(/overhead|margin|an hour|23\.00/);
  });

  it('warn of stairs, flame and weight, which she would not read in the workroom’s papers', () => {
    expect(text).toMatch(/Stairs and escalators/);
    expect(text).toMatch(/fire officer/);
    expect(text).toMatch(/weighs about 1\.\d\d kg/);
  });

  it('have no quote where there are no prices, and no bustle where there is none', () => {
    const pages = told(clientPages(inputOf(plain)));
    expect(pages).not.toMatch(/Quote|bustle up/);
    expect(pages).toMatch(/The drawing to approve/);
  });
});

describe('a spec with half of its sections', () => {
  it('gives half of the papers and says what is missing', () => {
    const text = told(jobSheet(inputOf(plain)));
    expect(text).toMatch(/Not in the spec/);
    expect(text).toMatch(/closure: nothing is said of how she gets in/);
    expect(text).toMatch(/there is no costing and no quote/);
    expect(text).not.toMatch(/Costing|Edging|Bustle\n/);
    expect(text).toMatch(/Order of making/);
  });
});

describe('what is to be settled before cutting', () => {
  const finding = (level: string) => ({ level, message: `A ${level} of it.`, hint: `Mend the ${level}.` });
  const sheet = (...levels: string[]) =>
    told(jobSheet({ ...inputOf(plain), diagnostics: levels.map(finding) as never }));

  it('has a heading where there is something, its hint with it, and counts it on the bench page; notes are none of it', () => {
    expect(sheet('note')).not.toMatch(/To settle|to settle/);
    const text = sheet('note', 'warning', 'error');
    expect(text).toMatch(/2 things to settle before cutting: see the next page/);
    expect(text).toMatch(
      /To settle before cutting[\s\S]*A warning of it[\s\S]*Mend the warning[\s\S]*A error of it/,
    );
    expect(text).not.toContain('A note of it');
  });
});

describe('the form of measures', () => {
  it('asks for every station and panel, and prints none of the spec’s measures', () => {
    const words = english('cm');
    const stations = lantern.gown.drafts.gown.gown.stations.map((station) => station.name);
    const form = told(measuresForm(lantern.gown.gown, words, A4));
    const lines = measuresText(lantern.gown.gown, words);
    for (const own of [form, lines]) {
      for (const station of stations) expect(own).toContain(words.station(station));
      for (const gore of lantern.gown.gown.gores) expect(own).toContain(gore.name);
      for (const asked of ['hip', 'shoulders', 'hoop', 'heel', 'bones']) expect(own).toContain(asked);
      expect(own).not.toMatch(/101\.5|111\.5|\b74\b/);
    }
  });
});

describe('the form of measures, of what the spec needs', () => {
  const words = english('cm');
  it.each([
    ['a gown over a hoop', lantern, true, true],
    ['a costume over a net petticoat that is sewn here', puffin, false, true],
    ['the plainest skirt', plain, false, false],
  ])('%s', (_, { gown: { gown } }, hoop, train) => {
    const form = measuresForm(gown, words, A4);
    expect(form.pages.length).toBeLessThanOrEqual(2);
    for (const own of [told(form), measuresText(gown, words)]) {
      expect(/hoop|[Pp]etticoat/.test(own)).toBe(hoop);
      expect(/train on the floor/.test(own)).toBe(train);
    }
  });

  it('of a gown that nobody has drawn yet: whatever one may need', () => {
    const form = told(measuresForm(plain.gown.gown, words, A4, true));
    for (const asked of ['hip depth', 'high hip', 'knee', 'heel', 'bottom hoop', 'bending-length', 'train'])
      expect(form).toContain(asked);
  });
});

describe('a toile', () => {
  it('has the gown’s own seam lines, in one layer with wide allowances', () => {
    const toile = draftWhole(toileOf(lantern.gown.asked)).gown!;
    const lengths = (gown: typeof toile): readonly number[] => gown.drafts.gown.lengths;
    expect(lengths(toile)).toEqual(lengths(lantern.gown));
    expect(toile.cut.pieces.map((piece) => piece.layers)).toEqual(
      lantern.gown.gown.gores.map(() => ['toile']),
    );
    expect(toile.cut.pieces.at(-1)?.allowances).toMatchObject({
      waist: TOILE_ALLOWANCES.waist,
      hem: TOILE_ALLOWANCES.hem,
    });
  });
});
