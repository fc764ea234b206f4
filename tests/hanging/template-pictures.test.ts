import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { templates } from '../../src/cli/package-files.ts';
import { drawnFrom, templatePicture, templateSheet } from './template-pictures.ts';

const ROOT = join(import.meta.dirname, '../..');
const SHEET = join(ROOT, 'examples/templates.svg');

/** To make it anew, which takes ten seconds: `DRAW=templates npx vitest run tests/hanging/template-pictures`; then look at it. */
if (process.env.DRAW === 'templates') writeFileSync(SHEET, templateSheet(templates()));

describe('the pictures of the templates are those of today', () => {
  const sheet = readFileSync(SHEET, 'utf8');

  it('every template is there, by its name and its first line, drawn from the text that it has', () => {
    const shown = [...sheet.matchAll(/data-template="([^"]+)" data-drawn-from="([^"]+)"/g)];
    expect(shown.map(([, name, from]) => [name, from])).toEqual(
      templates().map((template) => [template.name, drawnFrom(template)]),
    );
    const words = sheet
      .replace(/<[^>]*>/g, ' ')
      .replace(/\s+/g, ' ')
      .replaceAll('&#39;', "'");
    for (const { name, about } of templates()) expect(words, name).toContain(about);
  });

  // All of them again would take as long as a tenth of the other tests: one with folds stands for how they are drawn.
  it('a full circle is drawn as it is drawn now', () => {
    const template = templates().find(({ name }) => name === 'full-circle')!;
    const body = (svg: string) => svg.slice(svg.indexOf('<title>'));
    expect(sheet.includes(body(templatePicture(template)))).toBe(true);
  });
});
