import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';

/**
 * Which folder of `src` may import which: earlier products, never later ones. A folder that is not named here is a
 * new room of the house: add it to this table and to DEVELOPERS.md.
 */
const BEFORE_DRAFT = ['gown', 'diagnostics', 'geometry'];
const BEFORE_LAYS = ['allowances', 'draft', ...BEFORE_DRAFT];
const BEFORE_PAPERS = ['stones', 'lay', 'truing', 'fittings', 'bodice', ...BEFORE_LAYS];

const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  geometry: [],
  diagnostics: [],
  'gown-file': ['dates', 'diagnostics', 'geometry'],
  gown: ['gown-file', 'diagnostics', 'geometry'],
  draft: BEFORE_DRAFT,
  bodice: ['fittings', 'draft', ...BEFORE_DRAFT],
  finishing: ['bodice', 'fittings', 'draft', ...BEFORE_DRAFT],
  fittings: ['draft', ...BEFORE_DRAFT],
  truing: ['draft', ...BEFORE_DRAFT],
  allowances: ['draft', ...BEFORE_DRAFT],
  kept: [],
  lay: ['kept', ...BEFORE_LAYS],
  chalk: BEFORE_LAYS,
  stones: BEFORE_LAYS,
  dates: [],
  estimate: [],
  hanging: ['making', ...BEFORE_PAPERS],
  making: BEFORE_PAPERS,
  money: ['making', ...BEFORE_PAPERS],
  workroom: ['making', 'money', 'dates', ...BEFORE_PAPERS],
  words: ['money', 'diagnostics'],
  compare: ['gown-file', 'money', ...BEFORE_PAPERS],
  print: ['kept', 'geometry', 'diagnostics'],
  sheets: ['kept', 'geometry', 'diagnostics'],
  audit: ['geometry', 'diagnostics'],
  report: ['hanging', 'workroom', 'money', ...BEFORE_PAPERS],
};

/** From a drafted gown to files: it calls the stages that are left and the drawing of each. */
const OUTPUTS = 'publish';

/** These say or draw what the stages made, or read it back: they may name its types, and never call a stage. */
const ONLY_TYPES_OF_STAGES = ['words', 'print', 'sheets', 'audit'];

const SOURCE = join(import.meta.dirname, '../../src');
const files = sourceFiles(SOURCE).map((path) => ({
  path: relative(SOURCE, path),
  folder: relative(SOURCE, path).split('/')[0] ?? '',
  text: readFileSync(path, 'utf8'),
}));
const stages = files.filter(({ folder }) => folder !== 'cli');

describe('each folder imports only what comes before it', () => {
  it.each([...new Set(files.filter(({ path }) => path.includes('/')).map(({ folder }) => folder))])(
    '%s',
    (folder) => {
      if (folder === 'cli' || folder === OUTPUTS) return;
      const allowed = MAY_IMPORT[folder];
      expect(allowed, `${folder} is not in the table`).toBeDefined();
      const wrong = files
        .filter((file) => file.folder === folder)
        .flatMap((file) => imports(file.text).map((one) => ({ ...one, file: file.path })))
        .filter(({ from }) => from.startsWith('.'))
        .map((one) => ({ ...one, to: relative('.', join(dirname(one.file), one.from)).split('/')[0] ?? '' }))
        .filter(({ to, onlyTypes }) => {
          if (to === folder || allowed?.includes(to)) return false;
          return !(onlyTypes && ONLY_TYPES_OF_STAGES.includes(folder) && to in MAY_IMPORT);
        })
        .map(({ file, from }) => `${file} imports ${from}`);
      expect(wrong).toEqual([]);
    },
  );

  it("past the gown only `compare`, and what reads a file, know the file's form", () => {
    const readers = files.filter(({ text }) =>
      imports(text).some(({ from }) => from.includes('/gown-file/')),
    );
    const folders = new Set(readers.map(({ folder }) => folder));
    expect([...folders].sort()).toEqual(['cli', 'compare', 'gown', 'pipeline.ts']);
  });

  it('nothing imports the command line', () => {
    const wrong = stages.filter(({ text }) => imports(text).some(({ from }) => /(^|\/)cli\//.test(from)));
    expect(wrong.map(({ path }) => path)).toEqual([]);
  });
});

describe('there are no circles, types counted', () => {
  it('of files', () => {
    const needs = new Map(files.map(({ path, text }) => [path, localImports(path, text)]));
    expect(circlesIn(needs)).toEqual([]);
  });

  it('of rooms', () => {
    const needs = new Map<string, string[]>();
    for (const { path, folder, text } of files) {
      const others = localImports(path, text).map((to) => to.split('/')[0]!);
      needs.set(folder, [...(needs.get(folder) ?? []), ...others.filter((to) => to !== folder)]);
    }
    expect(circlesIn(needs)).toEqual([]);
  });
});

describe('the machine is touched in one place', () => {
  it.each([
    [
      'files, processes and the network',
      /from 'node:(fs|fs\/promises|process|child_process|os|net|http|https)'/,
    ],
    ['the process and the console', /\b(process|console)\.\w/],
    ['the clock', /\bDate\.now\(|\bnew Date\(\)|\bperformance\.now\(/],
    ['a random source', /\bMath\.random\(|\brandom(Bytes|UUID)\(/],
    ["the machine's language", /\.toLocale\w*\(|\bIntl\.|\.localeCompare\(/],
  ])('stages do not use %s', (_what, pattern) => {
    const wrong = stages.filter(({ text }) => pattern.test(withoutComments(text)));
    expect(wrong.map(({ path }) => path)).toEqual([]);
  });

  it.each(['yaml', 'pdf-lib'])('one file imports %s', (library) => {
    const users = files.filter(({ text }) =>
      imports(text).some(({ from, onlyTypes }) => from === library && !onlyTypes),
    );
    expect(users.map(({ path }) => path)).toHaveLength(1);
  });
});

it('nothing is installed beside the tool: all that it uses is in its bundle', () => {
  const description = JSON.parse(readFileSync(join(SOURCE, '../package.json'), 'utf8'));
  expect(description.dependencies).toBeUndefined();
});

describe('names and sizes', () => {
  it('no drawer for odds and ends', () => {
    const drawers = files.filter(({ path }) =>
      /(^|\/)(utils?|helpers?|common|managers?|misc)(\/|\.|-)/i.test(path),
    );
    expect(drawers.map(({ path }) => path)).toEqual([]);
  });

  it('no way round the types', () => {
    const wrong = files.filter(({ text }) =>
      /@ts-(ignore|nocheck|expect-error)|:\s*any\b|\bas any\b|<any>/.test(text),
    );
    expect(wrong.map(({ path }) => path)).toEqual([]);
  });
});

function sourceFiles(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? sourceFiles(path) : path.endsWith('.ts') ? [path] : [];
  });
}

/** Every module that a file imports or passes on, at the top or by `import()`. */
function imports(text: string): { from: string; onlyTypes: boolean }[] {
  const plain = [...text.matchAll(/^(?:import|export)\s+(type\s)?[^;'"]*?from\s+'([^']+)'/gm)];
  const bare = [...text.matchAll(/^import\s+'([^']+)'/gm)];
  const late = [...text.matchAll(/\bimport\('([^']+)'\)/g)];
  return [
    ...plain.map((match) => ({ from: match[2] ?? '', onlyTypes: match[1] !== undefined })),
    ...[...bare, ...late].map((match) => ({ from: match[1] ?? '', onlyTypes: false })),
  ];
}

/** Files of ours that this one imports. */
function localImports(path: string, text: string): string[] {
  return imports(text)
    .filter(({ from }) => from.startsWith('.'))
    .map(({ from }) => join(dirname(path), from));
}

function circlesIn(needs: ReadonlyMap<string, readonly string[]>): string[][] {
  const done = new Set<string>();
  const walk = (own: string, trail: readonly string[]): string[] => {
    if (trail.includes(own)) return [...trail.slice(trail.indexOf(own)), own];
    if (done.has(own)) return [];
    done.add(own);
    return (
      (needs.get(own) ?? []).map((next) => walk(next, [...trail, own])).find((found) => found.length > 0) ??
      []
    );
  };
  return [...needs.keys()].map((own) => walk(own, [])).filter((found) => found.length > 0);
}

function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/\/\/.*$/gm, '');
}
