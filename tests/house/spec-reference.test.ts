import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { specSchema } from '../../src/gown-file/spec-schema.ts';

/** A part of a JSON Schema, as far as it says which keys there are. */
interface Node {
  readonly properties?: Readonly<Record<string, Node>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: Node | boolean;
  readonly items?: Node;
  readonly anyOf?: readonly Node[];
  /** The few words that a value can be. */
  readonly enum?: readonly string[];
}

interface Section {
  readonly keys: readonly string[];
  readonly needed: readonly string[];
}

/** A table, and each row's text by its key. */
interface Written extends Section {
  readonly rows: ReadonlyMap<string, string>;
}

interface Taken extends Section {
  readonly words: Readonly<Record<string, readonly string[]>>;
}

/** The page says what the reader takes, no more and no less. */
describe('the spec reference', () => {
  const written = sectionsOf(
    readFileSync(join(import.meta.dirname, '../../examples/spec-reference.md'), 'utf8'),
  );
  const taken = new Map<string, Taken[]>();
  // A spec that is based on another may leave anything out; the page speaks of a whole one.
  collect((specSchema() as Node).anyOf?.[0] ?? {}, 'the whole file', taken);

  it('has a table for each section', () =>
    expect([...written.keys()].sort()).toEqual([...taken.keys()].sort()));

  it.each([...taken.keys()])('%s', (name) => {
    for (const { keys, needed, words } of taken.get(name) ?? []) {
      const table = written.get(name);
      expect([...(table?.keys ?? [])].sort()).toEqual([...keys].sort());
      expect([...(table?.needed ?? [])].sort()).toEqual([...needed].sort());
      for (const [key, all] of Object.entries(words))
        for (const word of all) expect(`${key}: ${table?.rows.get(key)}`).toContain(`\`${word}\``);
    }
  });
});

/** Sections by the word that they stand under; `notes` is said once for all. */
function collect(node: Node, name: string, into: Map<string, Taken[]>): void {
  if (node.properties !== undefined) {
    const everywhere = name === 'the whole file' ? [] : ['notes'];
    const keys = Object.keys(node.properties).filter((key) => !everywhere.includes(key));
    into.set(name, [
      ...(into.get(name) ?? []),
      { keys, needed: node.required ?? [], words: wordsOf(node.properties) },
    ]);
    for (const [key, child] of Object.entries(node.properties)) collect(child, key, into);
  }
  if (typeof node.additionalProperties === 'object') collect(node.additionalProperties, name, into);
  if (node.items !== undefined) collect(node.items, name, into);
  for (const other of node.anyOf ?? []) collect(other, name, into);
}

/** Keys that are one of a few words, and these. */
function wordsOf(properties: NonNullable<Node['properties']>): Taken['words'] {
  const entries = Object.entries(properties).map(([key, node]) => [
    key,
    [node, ...(node.anyOf ?? [])].flatMap((form) => form.enum ?? []),
  ]);
  return Object.fromEntries(entries);
}

function sectionsOf(text: string): Map<string, Written> {
  const parts = text.split(/^### /m).slice(1);
  return new Map(
    parts.map((part) => {
      const name = (part.split('\n')[0] ?? '').replaceAll('`', '');
      const cells = [...part.matchAll(/^\| ([^|]+) \|/gm)].map((match) => match[1] ?? '').slice(1);
      const words = (found: string) => [...found.matchAll(/`([^`]+)`/g)].map((match) => match[1] ?? '');
      const needed = cells.filter((cell) => cell.startsWith('**'));
      const rows = [...part.matchAll(/^\| ([^|]+) \|(.*)$/gm)].flatMap(([, keys = '', rest = '']) =>
        words(keys).map((key) => [key, rest] as const),
      );
      return [name, { keys: cells.flatMap(words), needed: needed.flatMap(words), rows: new Map(rows) }];
    }),
  );
}
