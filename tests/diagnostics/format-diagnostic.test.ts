import { describe, expect, it } from 'vitest';
import type { Diagnostic, Level } from '../../src/diagnostics/diagnostic.ts';
import { formatDiagnostic } from '../../src/diagnostics/format-diagnostic.ts';
import { lineAndColumn, sortDiagnostics } from '../../src/diagnostics/place.ts';
import { quoted, safeText } from '../../src/diagnostics/safe-text.ts';

const diagnostic = (text: string, marked: string, more: Partial<Diagnostic> = {}): Diagnostic => {
  const start = text.indexOf(marked);
  return {
    code: 'top-misses-panel',
    level: 'error',
    span: { source: { name: 'gown.yaml', text }, start, end: start + marked.length },
    message: 'the top is too wide',
    why: 'it does not meet the bodice',
    hint: 'measure again',
    ...more,
  };
};
const plain = (given: Diagnostic) => formatDiagnostic(given, { colour: false });

describe('a diagnostic as a person reads it', () => {
  it('place, what, the line with carets, why, what to do', () => {
    expect(plain(diagnostic('gores:\n  - {name: side, top: 8.9}\n', '8.9'))).toBe(
      [
        'gown.yaml:2:23: error[top-misses-panel]: the top is too wide',
        '    2 |   - {name: side, top: 8.9}',
        '      |                       ^^^',
        '  why: it does not meet the bodice',
        '  do:  measure again',
      ].join('\n'),
    );
  });

  it('a table with its columns in line', () => {
    const table = [
      ['gore', 'top', 'panel'],
      ['front', '11.2 cm', '11.2 cm'],
      ['side-front', '8.25 cm', '8 cm'],
    ];
    expect(
      plain(diagnostic('top: 8', '8', { table }))
        .split('\n')
        .slice(-3),
    ).toEqual([
      '       gore             top     panel',
      '       front        11.2 cm   11.2 cm',
      '       side-front   8.25 cm      8 cm',
    ]);
  });

  it('colour only where asked', () => {
    const given = diagnostic('top: 8', '8');
    expect(formatDiagnostic(given, { colour: true })).toContain('\u001b[1;31m');
    expect(plain(given)).not.toContain('\u001b');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: the colours are what is taken out.
    expect(formatDiagnostic(given, { colour: true }).replace(/\u001b\[[\d;]*m/g, '')).toBe(plain(given));
  });

  it('carets under the value when tabs, wide lines and line ends of other systems stand before it', () => {
    for (const line of [
      '\ttop: 8.9',
      `${'x'.repeat(400)} 8.9 ${'y'.repeat(400)}`,
      'top: 8.9\r',
      'é😀 top: 8.9',
    ]) {
      const [, shown, carets] = plain(diagnostic(`a\n${line}\nb`, '8.9')).split('\n') as [
        string,
        string,
        string,
      ];
      expect([...shown].slice(carets.indexOf('^'), carets.lastIndexOf('^') + 1).join('')).toBe('8.9');
      expect([...shown].length).toBeLessThan(130);
    }
  });

  it('no caret beyond the line of a section that goes on below', () => {
    const [, shown, carets] = plain(
      diagnostic('gores:\n  - name: side\n    top: 8\n', 'name: side\n    top: 8'),
    ).split('\n');
    expect(carets!.trimEnd().length).toBe(shown!.length);
  });

  it('no line where there is no text', () => {
    expect(plain(diagnostic('', '')).split('\n')).toHaveLength(3);
  });

  it('text from the spec cannot move the cursor or forge a line', () => {
    const evil = 'x\u001b[2J\u0007\u202egnp\u2028';
    const said = plain(
      diagnostic(`gown: ${evil}`, evil, { message: `${evil}\nfake:1:1: error`, hint: evil, table: [[evil]] }),
    );
    expect(said).not.toMatch(/(?!\n)[\p{Cc}\u2028\u202a-\u202e]/u);
    expect(said.split('\n')).toHaveLength(6);
    expect(said).toContain('\\u{1b}[2J');
  });
});

describe('places', () => {
  const source = { name: 'a', text: 'ab\ncdé😀f\n\nz' };
  it.each([
    [0, 1, 1],
    [2, 1, 3],
    [3, 2, 1],
    [6, 2, 4],
    [8, 2, 5],
    [10, 3, 1],
    [11, 4, 1],
    [12, 4, 2],
    [99, 4, 2],
    [-5, 1, 1],
  ])('offset %d is line %d, column %d', (start, line, column) => {
    expect(lineAndColumn({ source, start, end: start })).toEqual({ line, column });
  });

  it('in the order of the file, one file after the other, errors first at one place', () => {
    const at = (name: string, start: number, level: Level) => ({
      ...diagnostic('', ''),
      level,
      code: `${name}${start}${level}`,
      span: { source: { name, text: '' }, start, end: start },
    });
    const sorted = sortDiagnostics([
      at('b', 9, 'error'),
      at('a', 5, 'note'),
      at('b', 2, 'warning'),
      at('a', 5, 'error'),
      at('b', 2, 'error'),
    ]);
    expect(sorted.map(({ code }) => code)).toEqual(['b2error', 'b2warning', 'b9error', 'a5error', 'a5note']);
  });
});

describe('values in messages', () => {
  it('are cut where they would drown the message', () => {
    expect(quoted('side')).toBe('`side`');
    expect(quoted('x'.repeat(200))).toBe(`\`${'x'.repeat(48)}…\``);
    expect(quoted('😀'.repeat(40))).toBe(`\`${'😀'.repeat(40)}\``);
  });

  it('show what cannot be seen', () => {
    expect(safeText('a\u0000b\u200fc\ufeffd\ud800e')).toBe('a\\u{0}b\\u{200f}c\\u{feff}d\\u{d800}e');
    expect(safeText('Ελλάδα, Россия, naïve, 😀')).toBe('Ελλάδα, Россия, naïve, 😀');
  });
});
