import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readSpec } from '../../src/gown-file/read-spec.ts';

/** What says how a drafted bodice is made stands beside `draft`; it once stood in it, and means the same. */
const TEMPLATE = readFileSync(join(import.meta.dirname, '../../templates/boned-bodice.yaml'), 'utf8');
const MAKING = /^ {2}closing:[\s\S]*?(?=^ {2}drop-below-waist:)/m;
const WITHIN = TEMPLATE.replace(MAKING, (text) => text.replace(/^/gm, '  ').replace(/ +$/, ''));

function read(text: string) {
  const { spec, diagnostics } = readSpec({ name: 'gown.yaml', text });
  return { spec: spec && { ...spec, places: undefined }, codes: diagnostics.map(({ code }) => code) };
}

describe('how a drafted bodice is made', () => {
  it('is the same beside its draft and, as older specs have it, in it', () => {
    expect(WITHIN).toMatch(/^ {4}closing: .*\n {4}bones: .*\n {4}layers: /m);
    const [beside, within] = [read(TEMPLATE), read(WITHIN)];
    expect(beside.spec?.bodice.layers?.map(({ name }) => name)).toEqual([
      'strength',
      'bodice-shell',
      'bodice-lining',
    ]);
    expect(beside.spec?.bodice.closing).toMatchObject({ kind: 'zip', at: 'centre-back' });
    expect(within).toEqual(beside);
  });

  it('is told at its own line, wherever it stands', () => {
    const wrong = (text: string) => {
      const { diagnostics } = readSpec({ name: 'gown.yaml', text: text.replace('kind: zip', 'kind: glue') });
      return diagnostics
        .filter(({ level }) => level === 'error')
        .map(({ span }) => text.slice(0, span.start).split('\n').length);
    };
    const lineOf = (text: string) => text.split('\n').findIndex((line) => line.includes('kind: zip')) + 1;
    for (const text of [TEMPLATE, WITHIN]) expect(wrong(text)).toEqual([lineOf(text)]);
  });

  it('in both places is no key of the draft', () => {
    const both = TEMPLATE.replace('    upper-finish:', '    bones: {along: seams}\n    upper-finish:');
    expect(read(both).codes).toContain('unknown-key');
  });
});
