import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import type { Drawing, Mark } from '../../src/print/drawing.ts';
import { writePdf } from '../../src/print/pdf/write-pdf.ts';
import { readPdf } from './read-pdf.ts';

const font = () =>
  readFileSync(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'));

function page(marks: readonly Mark[], title?: string): Drawing {
  return { x: 0, y: 0, width: 210, height: 297, marks, ...(title === undefined ? {} : { title }) };
}

function text(content: string, y = 50): Mark {
  return { kind: 'text', text: content, at: { x: 20, y }, size: 5, anchor: 'start' };
}

const LINE: Mark = {
  kind: 'path',
  runs: [[{ kind: 'line', from: { x: 20, y: 20 }, to: { x: 120, y: 20 } }]],
  closed: false,
  line: { width: 0.35 },
};

test('a line of 100 mm is 100 mm, where it was drawn', async () => {
  const { bytes } = await writePdf([page([LINE])], { title: 'line' });
  const { lines } = (await readPdf(bytes)).pages[0]!;
  expect(lines).toHaveLength(1);
  expect(lines[0]!.from.x).toBeCloseTo(20, 3);
  expect(lines[0]!.to.x - lines[0]!.from.x).toBeCloseTo(100, 3);
  expect(lines[0]!.from.y).toBeCloseTo(277, 3);
  expect(lines[0]!.width).toBeCloseTo(0.35, 3);
});

test('an arc lies within 0.001 mm of the true circle', async () => {
  const arc = { kind: 'arc', centre: { x: 100, y: 150 }, radius: 90, start: 0.3, sweep: 5 } as const;
  const mark: Mark = { kind: 'path', runs: [[arc]], closed: false, line: { width: 0.3 } };
  const { bytes } = await writePdf([page([mark])], { title: 'arc' });
  const { lines } = (await readPdf(bytes)).pages[0]!;
  for (const { to } of lines) {
    expect(Math.abs(Math.hypot(to.x - 100, 297 - to.y - 150) - 90)).toBeLessThan(0.001);
  }
});

test('names in Latin, Greek and Cyrillic can be read back, and embed a font only where they need it', async () => {
  const plain = await writePdf([page([text('Lantern – “soirée” (½) \\')])], { title: 'plain', font });
  expect((await readPdf(plain.bytes)).pages[0]!.text).toBe('Lantern – “soirée” (½) \\');
  expect(plain.bytes.length).toBeLessThan(3000);
  const mixed = await writePdf([page([text('Ελένη'), text('Вечерняя', 60)])], { title: 'Ελένη', font });
  expect((await readPdf(mixed.bytes)).pages[0]!.text).toBe('Ελένη Вечерняя');
  expect(mixed.missingGlyphs).toEqual([]);
  expect(mixed.bytes.length).toBeLessThan(40_000);
});

test('characters that no font has are named, and drawn as a sign', async () => {
  const drawn = await writePdf([page([text('夜 gown')])], { title: 'night', font });
  expect(drawn.missingGlyphs).toEqual(['夜']);
  expect((await readPdf(drawn.bytes)).pages[0]!.text).toBe('\ufffd gown');
  const without = await writePdf([page([text('Ελένη')])], { title: 'no font' });
  expect(without.missingGlyphs).toEqual(['Ε', 'έ', 'η', 'λ', 'ν'].sort());
});

test('a hostile name does not break the file', async () => {
  const name = `)Tj ET Q (\\ ${'Лант '.repeat(60)}\u0000\u001b[31m\u202e שלום (7) ${'x'.repeat(300)}`;
  const { bytes } = await writePdf([page([text(name), LINE], name)], { title: name, subject: name, font });
  const read = await readPdf(bytes);
  expect(read.pages[0]!.lines).toHaveLength(1);
  expect(read.outline).toHaveLength(1);
});

test('a drawing that many pages use is written once', async () => {
  const inner: Drawing = {
    x: 0,
    y: 0,
    width: 100,
    height: 100,
    marks: Array.from(
      { length: 400 },
      (_, index): Mark => ({
        kind: 'path',
        runs: [
          [
            {
              kind: 'line',
              from: { x: (index * 7919) % 100, y: 0 },
              to: { x: (index * 104_729) % 97, y: 100 },
            },
          ],
        ],
        closed: false,
        line: { width: 0.2 },
      }),
    ),
  };
  const use: Mark = {
    kind: 'use',
    drawing: inner,
    offset: { x: 30, y: 40 },
    clip: { x: 30, y: 40, width: 50, height: 50 },
  };
  const one = await writePdf([page([use])], { title: 'one' });
  const many = await writePdf(
    Array.from({ length: 20 }, () => page([use])),
    { title: 'many' },
  );
  expect(many.bytes.length - one.bytes.length).toBeLessThan(19 * 300);
  const { lines } = (await readPdf(many.bytes)).pages[19]!;
  expect(lines).toHaveLength(400);
  expect(lines[0]!.clip).toMatchObject({ left: expect.closeTo(30, 2), right: expect.closeTo(80, 2) });
});

test('layers that a viewer can switch', async () => {
  const mark: Mark = { kind: 'group', switchedBy: ['front: crepe'], marks: [LINE] };
  const { bytes } = await writePdf([page([mark])], { title: 'layers' });
  expect((await readPdf(bytes)).layers).toEqual(['front: crepe']);
});

test('bookmarks make a tree', async () => {
  const bookmarks = [
    { title: 'front', page: 0, level: 1 },
    { title: 'A1', page: 0, level: 2 },
    { title: 'A2', page: 1, level: 2 },
    { title: 'back', page: 1, level: 1 },
  ];
  const { bytes } = await writePdf([page([LINE]), page([LINE])], { title: 'tree', bookmarks });
  const { outline } = await readPdf(bytes);
  expect(outline.map(({ title, items }) => [title, items.length])).toEqual([
    ['front', 2],
    ['back', 0],
  ]);
});

test('the same bytes in another process, another time zone and another language', async () => {
  const script = `
    import { writePdf } from './src/print/pdf/write-pdf.ts';
    const mark = { kind: 'text', text: 'Лантерна', at: { x: 20, y: 50 }, size: 5, anchor: 'start' };
    const { readFileSync } = await import('node:fs');
    const font = () => readFileSync('node_modules/dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
    const { bytes } = await writePdf([{ x: 0, y: 0, width: 210, height: 297, marks: [mark] }], { title: 't', font });
    process.stdout.write(Buffer.from(bytes).toString('base64'));`;
  const root = new URL('../..', import.meta.url).pathname;
  const { buildSync } = await import('esbuild');
  const built = buildSync({
    stdin: { contents: script, resolveDir: root, loader: 'ts' },
    bundle: true,
    write: false,
    platform: 'node',
    format: 'esm',
    banner: { js: "import { createRequire as r } from 'node:module'; const require = r(import.meta.url);" },
  });
  const run = (environment: NodeJS.ProcessEnv) =>
    execFileSync(process.execPath, ['--input-type=module', '-'], {
      cwd: root,
      input: built.outputFiles[0]!.text,
      env: { ...process.env, ...environment },
      maxBuffer: 1e7,
    }).toString();
  const first = run({ TZ: 'UTC', LANG: 'C' });
  const second = run({ TZ: 'Pacific/Auckland', LANG: 'tr_TR.UTF-8' });
  expect(first.length).toBeGreaterThan(1000);
  expect(first).toBe(second);
});
