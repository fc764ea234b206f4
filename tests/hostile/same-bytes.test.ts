import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inflateSync } from 'node:zlib';
import { beforeAll, describe, expect, it } from 'vitest';
import { freshFolder, inShell, projectFile } from '../cli/gorewright.ts';

/** Two layers, so that several threads plan the cloth where there are several; invented. */
const SPEC = `format: 1
gown: Same
client: SAME-01
units: cm
bodice: {waist-seam: 70, panels: {front: 20, back: 25}}
gores: [{name: front, on-fold: true, half-hem: 30}, {name: back, hem: 55}]
lengths: {measured: to-floor, off-floor: 2, hem-width-at: 60, at: {centre-front: 62, centre-back: 64}}
allowances: {seam: 1.5, waist: 1.5, hem: 2}
layers: [{name: lining, cloth: lining, hem: turned}, {name: shell, cloth: crepe, hem: faced}]
sewn-as-one: {waist: [[lining], [shell]]}
cloths: {lining: {width: 140, selvedge: 1, price: 8}, crepe: {width: 150, selvedge: 1, one-way: true, weight: 210, price: 24.5, sold-by: 0.1m}}
labour: {rate: 20, hours: 12, deposit: 50%}
currency: EUR
dates: {event: 2027-06-12}
`;

/** Another day, another luck: what a program could ask for beside its input, answered otherwise. */
const OTHERWISE = `data:text/javascript,${encodeURIComponent(`
  const Real = Date;
  globalThis.Date = class extends Real {
    constructor(...given) { given.length === 0 ? super("2031-12-31T23:59:59Z") : super(...given); }
    static now() { return new Real("2031-12-31T23:59:59Z").getTime(); }
  };
  Math.random = () => 0.123456789;
`)}`;

const DRAFT = 'gorewright draft --projector --sheet A1 $1 > draft.txt';
const OTHERS = `
gorewright check --json $2 > check.json &&
gorewright lay --json $2 > lay.json &&
gorewright quote --json $2 > quote.json &&
gorewright compare --json --out old-and-new.svg $2 $2 > compare.json &&
gorewright measures $2 --out measures.pdf > measures.txt
`;

/** Every file that the commands leave, by name, with what they printed. */
function filesOf(folder: string, under: string, script: string): Map<string, Buffer> {
  const place = join(folder, under);
  mkdirSync(place);
  writeFileSync(join(place, 'same.yaml'), SPEC);
  const { status, stdout, stderr } = inShell(script, place);
  expect(status, stdout + stderr).toBe(0);
  return new Map(
    readdirSync(place, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => [entry.name, readFileSync(join(entry.parentPath, entry.name))]),
  );
}

describe('the same spec', () => {
  let folder: string;
  let plain: Map<string, Buffer>;
  const filled = (script: string, draft: string) =>
    script.replaceAll('$1', draft).replaceAll('$2', 'same.yaml');

  beforeAll(() => {
    folder = freshFolder();
    plain = filesOf(
      folder,
      'plain',
      `export TZ=UTC LC_ALL=C\n${filled(`${DRAFT} && ${OTHERS}`, 'same.yaml -o made')}`,
    );
  });

  it('leaves all its files', () => {
    expect([...plain.keys()].sort()).toEqual([
      '.gorewright-kept',
      'chalk-a4.pdf',
      'chalk.csv',
      'check.json',
      'client-a4.pdf',
      'compare.json',
      'draft.txt',
      'gown.html',
      'job-sheet-a4.pdf',
      'lay-crepe.svg',
      'lay-lining.svg',
      'lay.json',
      'measures.pdf',
      'measures.txt',
      'old-and-new.svg',
      'pattern-a4-again.pdf',
      'pattern-a4.pdf',
      'pattern-projector.pdf',
      'pattern.svg',
      'quote.json',
      'report.json',
      'same.yaml',
      'views.svg',
    ]);
  });

  it('gives the same bytes in another zone and language, on another day, in another folder, from an absolute path', () => {
    const folderName = "ein Ordner mit 'Ö'";
    const environment = `TZ=Pacific/Kiritimati LANG=tr_TR.UTF-8 LC_ALL=tr_TR.UTF-8 USER=other HOME=/nowhere NODE_OPTIONS='--import=${OTHERWISE}'`;
    const script = filled(`${DRAFT} && ${OTHERS}`, '"$PWD/same.yaml" --out="$PWD/made"');
    const made = filesOf(folder, folderName, `umask 077\nexport ${environment}\n${script}`);
    expect([...made.keys()].sort()).toEqual([...plain.keys()].sort());
    expectSame(made);
  });

  it('gives the same bytes on one processor as on several', () => {
    const script = `taskset -pc 0 $$ > /dev/null && ${filled(DRAFT, 'same.yaml -o made')}`;
    const made = filesOf(folder, 'one', script);
    expect(made.size).toBeGreaterThan(10);
    expectSame(made);
  });

  it.skipIf(process.env.OTHER_NODE === undefined)(
    'gives the same bytes under another version of Node',
    () => {
      const script = `gorewright() { "$OTHER_NODE" '${projectFile('bin/gorewright.js')}' "$@"; }\n${filled(`${DRAFT} && ${OTHERS}`, 'same.yaml -o made')}`;
      expectSame(filesOf(folder, 'other', script));
    },
  );

  /** What is printed names the files as they were asked for, so it is left out. */
  function expectSame(made: Map<string, Buffer>): void {
    for (const [name, bytes] of made)
      if (name !== 'draft.txt') expect(bytes.equals(plain.get(name)!), name).toBe(true);
  }

  it('says nowhere where it lies, or where the tool does', () => {
    for (const [name, bytes] of plain) {
      for (const path of [folder, projectFile(''), '/tmp', 'node_modules', process.env.HOME ?? '/root']) {
        expect(
          textsOf(bytes).some((text) => text.includes(path)),
          `${path} in ${name}`,
        ).toBe(false);
      }
    }
  });
});

/** A file as text, and each of its compressed streams. */
function textsOf(bytes: Buffer): string[] {
  const file = bytes.toString('latin1');
  if (!file.startsWith('%PDF')) return [bytes.toString()];
  const streams = [...file.matchAll(/\/Length (\d+)[^>]*>>\s*stream\r?\n/g)].map(
    ({ index, 0: head, 1: length }) =>
      bytes.subarray(index + head.length, index + head.length + Number(length)),
  );
  const plain = streams.map((stream) =>
    (stream[0] === 0x78 ? inflateSync(stream) : stream).toString('latin1'),
  );
  return [file, ...plain];
}
