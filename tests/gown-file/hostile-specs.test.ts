import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDiagnostics } from '../../src/diagnostics/format-diagnostic.ts';
import { decodeSpec, LARGEST_SPEC } from '../../src/gown-file/decode-spec.ts';
import { readSpec } from '../../src/gown-file/read-spec.ts';
import { PLAIN } from './plain-spec.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const decode = (given: Uint8Array) => decodeSpec(given, 'gown.yaml');
const codesOf = (text: string) => readSpec({ name: 'gown.yaml', text }).diagnostics.map(({ code }) => code);

describe('bytes that are no spec', () => {
  it.each([
    ['UTF-8', bytes(PLAIN), []],
    ['UTF-8 with a byte order mark', bytes(`\ufeff${PLAIN}`), []],
    ['UTF-16, little end first', new Uint8Array([0xff, 0xfe, 0x66, 0, 0x6f, 0]), ['not-utf8']],
    ['UTF-16, big end first', new Uint8Array([0xfe, 0xff, 0, 0x66, 0, 0x6f]), ['not-utf8']],
    ['UTF-16 without a mark', new Uint8Array([0x66, 0, 0x6f, 0, 0x72, 0]), ['not-utf8']],
    ['Latin-1', new Uint8Array([...bytes('format: 1\ngown: Caf'), 0xe9, 10]), ['not-utf8']],
    ['a PDF', new Uint8Array([...bytes('%PDF-1.7\n'), 0, 1, 2, 255, 254]), ['control-character']],
    ['zeros', new Uint8Array(64), ['control-character']],
    ['50 MB', new Uint8Array(50_000_000).fill(0x61), ['spec-too-large']],
    ['one byte too many', new Uint8Array(LARGEST_SPEC + 1).fill(0x20), ['spec-too-large']],
  ] as const)('%s', (_, given, codes) => {
    expect(decode(given).diagnostics.map(({ code }) => code)).toEqual(codes);
    expect(decode(given).source === undefined).toBe(codes.length > 0);
  });

  it('point at the first byte that is not UTF-8', () => {
    const { diagnostics } = decode(new Uint8Array([...bytes('format: 1\ngown: Caf'), 0xe9, 10]));
    expect(formatDiagnostics(diagnostics, { colour: false })).toContain('gown.yaml:2:10: error[not-utf8]');
  });

  it('a byte order mark moves no place', () => {
    const { source } = decode(bytes(`\ufeff${PLAIN.replace('crepe, hem', 'crape, hem')}`));
    const said = formatDiagnostics(readSpec(source!).diagnostics, { colour: false });
    expect(said).toContain('gown.yaml:10:31: error[unknown-cloth]');
  });
});

describe('text that grows or loops', () => {
  const bomb = [
    'a: &a [x, x, x, x, x, x, x, x, x]',
    ...[...'bcdefghi'].map(
      (letter, i) => `${letter}: &${letter} [${Array(9).fill(`*${'abcdefgh'[i]}`).join(', ')}]`,
    ),
  ];

  it.each([
    ['an alias bomb', bomb.join('\n'), 'too-many-values'],
    [
      'an alias bomb of sections',
      `${PLAIN}notes: &a {x: &b {y: 1}}\n${Array.from(
        { length: 30 },
        (_, i) =>
          `k${i}: &k${i} [${Array(40)
            .fill(i === 0 ? '*b' : `*k${i - 1}`)
            .join(', ')}]`,
      ).join('\n')}`,
      'too-many-values',
    ],
    ['a section that holds itself', `${PLAIN}notes: &n [*n]`, 'nested-too-deep'],
    ['brackets without end', '['.repeat(LARGEST_SPEC - 10), 'nested-too-deep'],
    ['braces without end', '{a: '.repeat(20_000), 'nested-too-deep'],
    ['dashes without end', '- '.repeat(50_000), 'nested-too-deep'],
    [
      'steps without end',
      Array.from({ length: 400 }, (_, i) => `${' '.repeat(i)}a:`).join('\n'),
      'nested-too-deep',
    ],
    ['question marks without end', '? '.repeat(20_000), 'key-is-no-text'],
  ])('%s', (_, text, code) => expect(codesOf(text)).toEqual([code]));

  it.each([
    ['one key many times', 'a: 1\n'.repeat(20_000)],
    ['many unknown keys', Array.from({ length: 15_000 }, (_, i) => `gor${i}: 1`).join('\n')],
    ['long unknown keys', Array.from({ length: 20 }, (_, i) => `${'k'.repeat(900)}${i}: 1`).join('\n')],
    ['many anchors', Array.from({ length: 6000 }, (_, i) => `a${i}: &a${i} *a${i - 1}`).join('\n')],
    ['many aliases', `a: &a 1\n${Array.from({ length: 12_000 }, (_, i) => `b${i}: *a`).join('\n')}`],
    [
      'many gores',
      PLAIN.replace(
        'gores:\n',
        `gores:\n${Array.from({ length: 3000 }, (_, i) => `  - {name: g${i}, hem: 1}\n`).join('')}`,
      ),
    ],
    ['one long line', `gown: ${'x'.repeat(190_000)}`],
    ['one long number', `format: ${'9'.repeat(190_000)}`],
    ['many quotes', `gown: ${"'".repeat(100_001)}`],
    ['many comments', '# x\n'.repeat(49_000)],
    ['many commas', `gores: [${','.repeat(30_000)}]`],
  ])('%s: an end, and no more than 101 messages', (_, text) => {
    const { spec, diagnostics } = readSpec({ name: 'gown.yaml', text });
    expect(spec).toBeUndefined();
    expect(diagnostics.length).toBeGreaterThan(0);
    expect(diagnostics.length).toBeLessThanOrEqual(101);
    expect(formatDiagnostics(diagnostics, { colour: false }).length).toBeLessThan(100_000);
  });

  it('says how many problems are left', () => {
    const { diagnostics } = readSpec({ name: 'g', text: `${PLAIN}${'x: 1\n'.repeat(200)}` });
    expect(diagnostics.at(-1)!.code).toBe('many-problems');
    expect(diagnostics.at(-1)!.message).toMatch(/^\d+ more problems/);
  });
});

describe('names that reach behind records', () => {
  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'valueOf'])('%s', (name) => {
    expect(codesOf(`${PLAIN}${name}: 1\n`)).toEqual(['unsafe-name']);
    expect(codesOf(PLAIN.replaceAll('crepe', name))).toContain('unsafe-name');
    expect(codesOf(PLAIN.replaceAll(/\bback\b(?=[:,])/g, name))).toContain('unsafe-name');
    expect(codesOf(PLAIN.replaceAll('shell', name))).toEqual([
      name === '__proto__' ? 'bad-name' : 'reserved-name',
    ]);
    expect(Object.keys(Object.prototype)).toEqual([]);
  });
});

describe('any text at all', () => {
  const escapes = /(?!\n)[\p{Cc}\u202a-\u202e\u2066-\u2069]/u;
  const mutated = fc.tuple(
    fc.nat(PLAIN.length),
    fc.nat(12),
    fc.oneof(
      fc.string({ maxLength: 12 }),
      fc.constantFrom(
        '{',
        '}',
        ': ',
        '- ',
        '\n',
        '&a ',
        '*a',
        '!x ',
        '"',
        "'",
        '|',
        '\t',
        '1e999',
        '-1',
        '\u001b[2J',
        '\u202e',
      ),
    ),
  );

  it('is read or refused, and nothing of it reaches a terminal unescaped', () => {
    fc.assert(
      fc.property(mutated, ([at, cut, text]) => {
        const source = { name: 'gown.yaml', text: PLAIN.slice(0, at) + text + PLAIN.slice(at + cut) };
        const { spec, diagnostics } = readSpec(source);
        expect(spec === undefined).toBe(diagnostics.some(({ level }) => level === 'error'));
        expect(formatDiagnostics(diagnostics, { colour: false })).not.toMatch(escapes);
      }),
      { numRuns: 400 },
    );
  });
});
