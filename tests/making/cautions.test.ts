import { describe, expect, it } from 'vitest';
import { HARMS } from '../../src/making/harms.ts';
import { clientPages } from '../../src/print/papers/client-pages.ts';
import { jobSheet } from '../../src/print/papers/job-sheet.ts';
import { projectorPages } from '../../src/print/pattern/projector-pages.ts';
import { layOutProjector } from '../../src/sheets/lay-out-projector.ts';
import { JOB_CAUTIONS, WEARER_CAUTIONS } from '../../src/words/english-cautions.ts';
import { ENGLISH_PATTERN } from '../../src/words/english-pattern.ts';
import { textsOf } from '../print/page-texts.ts';
import { type Construction, gownOf } from './constructions.ts';
import { example, type Made, made, skirt } from './made.ts';
import { inputOf } from './paper-input.ts';

type Paper = 'job' | 'client';

/** A harm by words that only its caution has, gowns that have it and gowns that have not, and where it has to stand. */
interface Known {
  readonly harm: string;
  readonly says: RegExp;
  readonly papers: readonly Paper[];
  readonly in: readonly string[];
  readonly not: readonly string[];
}

const plain = skirt();
const of = (...asked: Construction[]): string => gownOf(asked);
const child = (wearer: string): string =>
  skirt({
    more: `body: {wearer: ${wearer}, girths: [{at: hip, below: 20, girth: 90}]}\nnotes: A girl of 12 years.`,
  });
const laced = skirt({
  more: 'closure: {kind: lacing, at: centre-back, opening: 25, hip: 98, entry: steps-in, finish: placket}',
});
const hooked = skirt({
  more: 'closure: {kind: hooks, at: centre-back, opening: 25, hip: 98, entry: steps-in}',
});
const short = plain.replace('off-floor: 2.5', 'off-floor: 30');
/** A train that is hooked on over a short skirt. */
const trained = of('overskirt')
  .replace('off-floor: 2.5', 'off-floor: 30')
  .replace(
    '    layers: [{name: tail-shell',
    '    train: {begins: outer-edge, shape: round}\n    layers: [{name: tail-shell',
  );
const weightless = plain.replaceAll(', weight: 100', '');
const boneless = of('bodice').replace(/^ *bones: .*\n/m, '');
const quoted = example('lantern');

const KNOWN: readonly Known[] = [
  {
    harm: 'flame: net tiers, flounces and every sheer',
    says: /(catch fast|flounces and sheers most of all)/,
    papers: ['job', 'client'],
    in: [of('tiers'), of('frill'), of('hemFlounce'), of('net'), of('scallops')],
    not: [],
  },
  {
    harm: 'flame at the work',
    says: /catch fast and burn fast/,
    papers: ['job'],
    in: [of('tiers')],
    not: [plain, of('lining')],
  },
  {
    harm: 'children',
    says: /EN 14682/,
    papers: ['job', 'client'],
    in: [child('child')],
    not: [child('adult'), plain],
  },
  {
    harm: 'a needle on a bone',
    says: /meets a bone/,
    papers: ['job'],
    in: [plain, of('bodice')],
    not: [boneless],
  },
  {
    harm: 'a needle on a zip',
    says: /meets zip teeth/,
    papers: ['job'],
    in: [of('closure')],
    not: [plain, hooked],
  },
  {
    harm: 'stairs',
    says: /(Long hems on steps|lift the hem in front, and mind it)/,
    papers: ['job', 'client'],
    in: [plain],
    not: [trained, short, of('overskirt').replace('off-floor: 2.5', 'off-floor: 30')],
  },
  {
    harm: 'stairs in a train',
    says: /(trains on steps|take off the train)/,
    papers: ['job', 'client'],
    in: [trained],
    not: [plain, short],
  },
  {
    harm: 'weight that is known',
    says: /weighs about \d/,
    papers: ['job', 'client'],
    in: [plain],
    not: [weightless],
  },
  {
    harm: 'weight that is not known, and who to ask',
    says: /(weight is not: weigh it|not known yet: ask the maker).*doctor/,
    papers: ['job', 'client'],
    in: [weightless],
    not: [plain],
  },
  {
    harm: 'personal data',
    says: /data-protection authority/,
    papers: ['job', 'client'],
    in: [plain],
    not: [],
  },
  { harm: 'irons', says: /Irons and steam burn/, papers: ['job'], in: [plain], not: [] },
  {
    harm: 'nickel in every hook',
    says: /may hold nickel/,
    papers: ['job', 'client'],
    // The bar over a zip, a bustle's hooks, what hooks on a train.
    in: [hooked, of('closure'), of('bustle'), of('overskirt')],
    not: [plain, of('closure').replace('starts: 2.5', 'starts: 0'), laced],
  },
  {
    harm: 'hoops',
    says: /(A hoop swings|The hoop swings).*(flame|candles).*door.*s(i|a)t/,
    papers: ['job', 'client'],
    in: [of('petticoat')],
    not: [plain, of('tiers')],
  },
  {
    harm: 'lacing',
    says: /(Lacing presses|Lacing: not so tight)/,
    papers: ['job', 'client'],
    in: [laced, of('bodice')],
    not: [plain, hooked],
  },
  { harm: 'braid', says: /braid melts/, papers: ['job'], in: [of('braid')], not: [plain] },
  {
    harm: 'floor and blades',
    says: /strains back and knees.*Rotary blades/,
    papers: ['job'],
    in: [plain],
    not: [],
  },
  { harm: 'pins', says: /pin left in a seam/, papers: ['job'], in: [plain], not: [] },
  { harm: 'an accountant, at the price', says: /accountant/, papers: ['client'], in: [quoted], not: [plain] },
];

const gowns = new Map<string, Made>();

function told(text: string, paper: Paper): string {
  const gown = gowns.get(text) ?? made(text);
  gowns.set(text, gown);
  const input = inputOf(gown);
  const { pages } = paper === 'job' ? jobSheet(input) : clientPages(input);
  return pages.flatMap((page) => textsOf(page).map((one) => one.text)).join(' ');
}

describe.each(KNOWN)('$harm', ({ says, papers, in: present, not: absent }) => {
  it('is printed where it can happen, and nowhere else', () => {
    for (const paper of papers) {
      for (const gown of present) expect(told(gown, paper)).toMatch(says);
      for (const gown of absent) expect(told(gown, paper)).not.toMatch(says);
    }
  });
});

describe('every caution', () => {
  it('stands once in the order of making, where its harm is first met', () => {
    const everything = of('closure', 'net', 'scallops', 'braid', 'bustle', 'overskirt', 'lining');
    for (const { facts } of [everything, of('bodice', 'lining'), laced].map((text) => made(text))) {
      const all = facts.order.flatMap(({ cautions }) => cautions);
      expect(all.length).toBe(new Set(all).size);
    }
    // Three layers go on to the bodice one by one; bar, bustle and a train that comes off have hooks.
    const { order } = made(everything).facts;
    const first = (kind: string) => order.find(({ work }) => work.kind === kind)!.cautions;
    expect(first('join-waist')).toContain('needle-bone');
    // A drafted bodice is boned only after its waist seam.
    const boned = made(of('bodice')).facts.order.find(({ cautions }) => cautions.includes('needle-bone'))!;
    expect(boned.work.kind).toBe('upper-edge');
    const hooked = order.find(({ work }) => ['close', 'overskirt', 'bustle'].includes(work.kind))!;
    expect(hooked.cautions).toContain('nickel');
  });

  it('has words for each paper that it stands on, and no others', () => {
    for (const { kind, step, jobSheet: atHead, client } of HARMS) {
      expect(JOB_CAUTIONS[kind] !== undefined, kind).toBe(step !== undefined || atHead === true);
      expect(WEARER_CAUTIONS[kind] !== undefined, kind).toBe(client === true);
    }
    const kinds = HARMS.map(({ kind }) => kind as string);
    expect(
      Object.keys({ ...JOB_CAUTIONS, ...WEARER_CAUTIONS }).filter((kind) => !kinds.includes(kind)),
    ).toEqual([]);
  });

  it('says who decides', () => {
    const decides =
      /decides?\b|authority (of your country )?says|body has the rules|manual|maker (says|’s)|fire officer|fitter to say|supplier says|Nobody wears|tell the maker|doctor/i;
    const texts = [...Object.values(JOB_CAUTIONS), ...Object.values(WEARER_CAUTIONS)];
    for (const text of texts) {
      for (const said of typeof text === 'function' ? [text('1 kg'), text(undefined)] : [text])
        expect(said).toMatch(decides);
    }
  });

  it('gives no figure of a standard without what it measures', () => {
    const texts = [...Object.values(JOB_CAUTIONS), ...Object.values(WEARER_CAUTIONS)];
    for (const text of texts) expect(String(text)).not.toMatch(/\d+ mm/);
  });
});

it('a projector’s page, which may be all that a cutter has before her, speaks of floor and blades', () => {
  const { gown } = made(plain);
  const pages = projectorPages(
    layOutProjector(gown.cut.pieces),
    { gown: 'Trial', trace: '', length: String, words: ENGLISH_PATTERN },
    () => 'crepe',
  );
  const [page] = pages;
  const texts = textsOf(page!);
  const caution = texts.find(({ text }) => /floor.*knees.*blades/.test(text))!;
  expect(caution.right).toBeLessThan(page!.width);
  // Beside the test square, clear of it and of the gown's name.
  const others = texts.filter((one) => one !== caution && Math.abs(one.baseline - caution.baseline) < 8);
  expect(others.filter((one) => one.right > caution.left)).toEqual([]);
});
