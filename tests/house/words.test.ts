import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { parseAst } from 'rolldown/parseAst';
import { describe, expect, it } from 'vitest';

/**
 * Papers in another language are one room away: no stage has words of its own. What counts as words is two of them in
 * lower case behind one another, in a text that can reach a reader.
 */
const SOURCE = join(import.meta.dirname, '../../src');

/**
 * Rooms of words: the papers'; what findings share; keys with their descriptions; help and messages of the command line.
 */
const OF_WORDS = ['words', 'diagnostics', 'gown-file', 'cli'];

/** The command line's tables are papers too. */
const TABLES = ['cli/check-table.ts', 'cli/lay-table.ts', 'cli/text-table.ts'];

/** Files whose names end so say what is found, and nothing else. */
const FINDINGS = /(^|[-/])(problems|findings|faults?)\.ts$/;

const files = readdirSync(SOURCE, { recursive: true, encoding: 'utf8' })
  .map((path) => path.replaceAll(sep, '/'))
  .filter((path) => /(?<!\.d)\.ts$/.test(path))
  .filter((path) => TABLES.includes(path) || !OF_WORDS.some((room) => path.startsWith(`${room}/`)))
  .filter((path) => !FINDINGS.test(path));

interface Node {
  readonly type?: string;
  readonly value?: unknown;
  readonly quasis?: readonly { readonly value: { readonly cooked: string } }[];
}

/** Every text of a file but what it imports, types, and what an error of the program's own says. */
function textsIn(code: string): string[] {
  const texts: string[] = [];
  const walk = (node: unknown): void => {
    if (Array.isArray(node)) {
      node.forEach(walk);
      return;
    }
    if (typeof node !== 'object' || node === null) return;
    const { type, value, quasis } = node as Node;
    if (type === 'ImportDeclaration' || type === 'TSLiteralType' || type === 'NewExpression') return;
    if (type === 'Literal' && typeof value === 'string') texts.push(value);
    if (quasis !== undefined) texts.push(quasis.map((part) => part.value.cooked).join('…'));
    Object.values(node).forEach(walk);
  };
  walk(parseAst(code, { lang: 'ts' }));
  return texts;
}

/** Apart from markup: `<path class="old sew">`, and lists of its classes. */
function hasWords(text: string): boolean {
  const plain = text.replace(/<[^<>]*>?/g, '').replace(/^(old|new) (cut|sew)$/, '');
  return /(^|[^\w.-])[a-z]{2,}[,;:]? [a-z]{2,}\b/.test(plain);
}

/** Whether any quotation mark is followed by words: only such files are read whole, which takes long. */
function mayHaveWords(code: string): boolean {
  const plain = code.replace(/\/\*[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$/gm, '');
  return /['"`][^'"`]*[a-z]{2,}[,;:]? [a-z]{2,}/.test(plain.replace(/^import .*$/gm, ''));
}

describe('only rooms of words have words', () => {
  it('in every other file there are none', () => {
    const found = files
      .map((path) => ({ path, code: readFileSync(join(SOURCE, path), 'utf8') }))
      .filter(({ code }) => mayHaveWords(code))
      .flatMap(({ path, code }) =>
        textsIn(code)
          .filter(hasWords)
          .map((text) => `${path}: ${text}`),
      );
    expect(found).toEqual([]);
    expect(files.length).toBeGreaterThan(300);
  });

  it.each([
    ['a remark', "const a = 'faces the hem';", 1],
    ['a template', 'const a = `side: takes in 3`;', 1],
    ['a key', "const a = { 'toile and fittings': 7 };", 1],
    ['text between markup', "const a = '<p>of the hem</p>';", 1],
    ['a name', "const a = 'centre-front'; const b = 'waist';", 0],
    ['markup', 'const a = `<p class="soft" id="b">c</p>`;', 0],
    ['an error of the program', "throw new RangeError('an empty run has no point');", 0],
    ['what is imported, and a type', "import x from 'of the'; let a: 'of the';", 0],
  ])('%s', (_what, code, count) => expect(textsIn(code).filter(hasWords)).toHaveLength(count));
});
