import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { capeCannotBeLaid } from '../../src/bodice/cape-problems.ts';
import { girthUntrue, seamBent, seamUneven } from '../../src/bodice/truth-problems.ts';
import { baseNotReadHere, chainTooLong } from '../../src/diagnostics/based-on-problems.ts';
import type { Diagnostic, Source, Span } from '../../src/diagnostics/diagnostic.ts';
import { tapeText } from '../../src/diagnostics/tape-text.ts';
import { notUtf8, tooLarge, tooManyValues } from '../../src/diagnostics/text-problems.ts';
import { manyProblems } from '../../src/diagnostics/value-problems.ts';
import { cannotDraft } from '../../src/draft/draft-problems.ts';
import { bodiceEdgeDoesNotSettle, fittingCannotBeDrawn } from '../../src/fittings/fitting-problems.ts';
import {
  bustledHemOnFloor,
  hemHangsOtherwise,
  hemOnFloor,
  notAtRest,
  trainLiesOtherwise,
} from '../../src/hanging/hang-problems.ts';
import { layTooLong } from '../../src/lay/plan/lay-problems.ts';
import { gownToLay } from '../../src/lay/plan/lay-to-plan.ts';
import { planLays } from '../../src/lay/plan/plan-lays.ts';
import { orderImpossible } from '../../src/making/problems.ts';
import { draft, draftOutputs } from '../../src/pipeline.ts';
import { tooManyPieces, tooManySheets } from '../../src/publish/size-problems.ts';
import {
  layerMissesWaist,
  notSmooth,
  partMissesSeam,
  seamsDiffer,
  topsMissBodice,
} from '../../src/truing/truing-problems.ts';
import { workroom } from '../../src/workroom/workroom.ts';

const HERE = import.meta.dirname;
const SOURCE = join(HERE, '../../src');
const UNITS = ['cm', 'mm', 'in'] as const;

/** Specs that bring findings about: those of `found` stand on `plain.yaml`, those of the reader's tests are whole. */
const FOLDERS = [join(HERE, 'found'), join(HERE, '../gown-file/bad')];
const specs = FOLDERS.flatMap((folder) =>
  readdirSync(folder)
    .filter((file) => file.endsWith('.yaml'))
    .map((file) => ({ file, source: { name: file, text: readFileSync(join(folder, file), 'utf8') } })),
);

const PLAIN = { name: 'plain.yaml', text: readFileSync(join(HERE, 'plain.yaml'), 'utf8') };
const font = () => readFileSync(join(HERE, '../../node_modules/dejavu-fonts-ttf/ttf/DejaVuSans.ttf'));

/**
 * What no spec of a file brings about here: bytes, sizes, truths that hold by the way a gown is drafted, and what is found
 * once it is hung.
 */
const NOWHERE: Span = { source: { name: 'gown.yaml', text: '' }, start: 0, end: 0 };
const SEAM = { name: 'front/side', gores: ['front', 'side'] } as unknown as Parameters<typeof seamsDiffer>[1];
const BY_HAND: readonly Diagnostic[] = [
  tooLarge(NOWHERE, 200_000),
  notUtf8(NOWHERE, 'UTF-16'),
  tooManyValues(NOWHERE),
  manyProblems(NOWHERE, 7),
  seamsDiffer(NOWHERE, SEAM, '100 cm', '101 cm'),
  notSmooth.hem(NOWHERE, 'front/side', '178.0°'),
  notSmooth.waist(NOWHERE, 'front/side', '178.0°'),
  topsMissBodice(NOWHERE, '74 cm', '73 cm', '0.15 cm', [['front', '37 cm']]),
  layerMissesWaist(NOWHERE, 'net', '0.2 cm', 'longer'),
  partMissesSeam(NOWHERE, 'wedge', 'net', '0.1 cm', '179.0°'),
  orderImpossible(NOWHERE, 'cut, then sew'),
  cannotDraft(NOWHERE, { reason: 'hem-does-not-settle' }, 'cm'),
  cannotDraft(NOWHERE, { reason: 'at-no-place', gore: 'front' }, 'cm'),
  layTooLong(NOWHERE, { layers: ['shell'], cloth: 'crepe', least: '300 m' }),
  tooManySheets(NOWHERE, 2000, 'a4'),
  tooManyPieces(NOWHERE, 1200, 1000),
  fittingCannotBeDrawn(NOWHERE, 'hem', NOWHERE),
  bodiceEdgeDoesNotSettle(NOWHERE),
  capeCannotBeLaid(NOWHERE, 'wing'),
  seamBent(NOWHERE, 'front/side', 'upper-edge'),
  seamUneven(NOWHERE, 'front/side', 0.3),
  girthUntrue(NOWHERE, 'waist', '0.2'),
  chainTooLong(NOWHERE, 8),
  baseNotReadHere(NOWHERE),
  bustledHemOnFloor(NOWHERE, [{ beside: '18 cm', station: 'centre-back' }]),
  bustledHemOnFloor(NOWHERE, [{ beside: '18 cm', station: 'centre-back' }], {
    lines: ['{gore: back, across: 50%, anchor: 15 cm}'],
    clears: true,
  }),
  bustledHemOnFloor(NOWHERE, [{ beside: '18 cm', station: 'centre-back' }], { lines: ['x'], clears: false }),
  hemOnFloor(NOWHERE, { beside: '12 cm', station: 'front/side', asked: '2.5 cm' }),
  trainLiesOtherwise(NOWHERE, { lies: '52 cm', asked: '60 cm', longer: false }),
  notAtRest(NOWHERE, '4 %'),
  hemHangsOtherwise(NOWHERE, { station: 'centre-back', hangs: '4 cm', asked: '2.5 cm', why: 'folds' }),
];

/** Codes as the sources name them: no other file makes a finding. */
const files = readdirSync(SOURCE, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => ({ file, text: readFileSync(join(SOURCE, file), 'utf8') }));
const MADE = /\b(?:error|warning|note|finding|against)\(\s*(?:error,\s*|warning,\s*|note,\s*)?'([a-z\d-]+)'/g;
const codes = [...new Set(files.flatMap((file) => [...file.text.matchAll(MADE)].map((match) => match[1]!)))];

const found = await Promise.all(
  specs.map(async ({ file, source }) => ({ file, all: await findings(source) })),
);
const said = [...found, { file: 'by hand', all: BY_HAND }];

describe('every finding', () => {
  it('is made in one place', () => {
    expect(codes.length).toBeGreaterThan(150);
    const others = files.filter(({ text: own }) => /\blevel: '(error|warning|note)',/.test(own));
    expect(others.map(({ file }) => file)).toEqual([]);
  });

  it.each(codes)('%s is brought about by a spec', (code) => {
    expect(said.filter(({ all }) => all.some((one) => one.code === code)).length).toBeGreaterThan(0);
  });

  it.each(said)('$file: in whole sentences', ({ all }) => {
    for (const { message, why, hint } of all)
      for (const sentence of [message, why, hint]) expect(withoutQuotes(sentence)).toMatch(SENTENCES);
  });

  it.each(found)('$file: in the units of its spec', ({ all }) => {
    for (const one of all) expect(unitsOf(one).filter((unit) => unit !== ownUnits(one))).toEqual([]);
  });
});

/** The same gown in a spec of other units that stands on it; in its own they are those above. */
describe.each(UNITS)('under a spec in %s', (units) => {
  const others = specs.filter(({ source }) => unitsOfFile(source) !== units);
  it.each(others)('$file', async ({ source }) => {
    const wrapper = { name: 'wrapper.yaml', text: `based-on: ${source.name}\nunits: ${units}\n` };
    for (const one of await findings(wrapper, source)) {
      // Of what is faulty by itself, and where it is to be mended, the figures are those of its own file.
      const allowed = OF_ITS_FILE.has(one.code) ? [units, ownUnits(one)] : [units];
      expect([one.code, unitsOf(one).filter((unit) => !allowed.includes(unit))]).toEqual([one.code, []]);
    }
  });
});

const OF_ITS_FILE = new Set(['measure-out-of-bounds', 'negative-measure']);

/** A capital, a figure or a quoted word at the beginning, one stop at the end, and none twice. */
const SENTENCES = /^(?=[\p{Lu}\d`])(?!.*\.\.)(?!.* {2})(?!.*[.!?][.!?]$).*[^\s.!?][.!?]$/u;

const withoutQuotes = (sentence: string) => sentence.replace(/`[^`]*`/g, '``');

/** Units of the lengths in its words and its table; what is quoted is what she wrote, or is to write. */
function unitsOf({ code, message, why, hint, table = [] }: Diagnostic): string[] {
  // Bare numbers of `measured` are mm whatever the file is in.
  if (code === 'printer-off-scale') return [];
  const sentences = [message, why, hint, ...table.flat()].map(withoutQuotes);
  for (const sentence of sentences) expect(sentence).not.toMatch(/\d ?(deg|rad)\b|\d%/);
  return sentences.flatMap((sentence) =>
    [...sentence.matchAll(/\d ?(mm|cm|m|in|ft|yd)\b(?! (?:the|this|it|his|her|two)\b)/g)].map(
      (match) => match[1]!,
    ),
  );
}

/** A file whose units cannot be told is spoken of in cm. */
function ownUnits({ span }: Diagnostic): string {
  return unitsOfFile(span.source) ?? 'cm';
}

function unitsOfFile({ text }: Source): string | undefined {
  const base = /^based-on: plain\.yaml$/m.test(text) ? 'cm' : undefined;
  return /^units: (cm|mm|in)\b/m.exec(text)?.[1] ?? base;
}

/** All that is said of a spec: of its lays where it speaks of cloths, of its papers where letters are asked for. */
async function findings(source: Source, base?: Source): Promise<readonly Diagnostic[]> {
  const readBase = (path: string) => {
    const own = [base, PLAIN, ...specs.map((spec) => spec.source)].find((one) => one?.name === path);
    return own && { source: own, diagnostics: [] };
  };
  const { gown, diagnostics } = draft(source, readBase);
  if (gown === undefined) return diagnostics;
  const text = `${base?.text}${source.text}`;
  const laid = /^cloths:/m.test(text)
    ? planLays(gownToLay(gown), { say: (mm) => tapeText(mm, gown.gown.units), shouldStop: fewLooks() })
    : { lays: [], diagnostics: [] };
  const all = [...diagnostics, ...laid.diagnostics, ...workroom(gown, laid.lays).findings];
  if (!/^gown: テスト/m.test(text)) return all;
  return [...all, ...(await draftOutputs(gown, diagnostics, { paper: 'a4', font })).diagnostics];
}

/** What is said of a lay hangs on its cloth and its pieces, not on how short it was found: a search of a few looks does. */
function fewLooks(): () => boolean {
  let asked = 0;
  return () => ++asked > 20;
}
