import * as z from 'zod/mini';
import { LENGTH_IN_UNITS } from './shape/leaf.ts';
import { specShape } from './shape/spec-shape.ts';

/** JSON Schema (2020-12) of a spec, for an editor's completion; from the definition that the reader uses. */
export function specSchema(): object {
  const { $schema, ...whole } = z.toJSONSchema(specShape, { io: 'input' });
  // A spec that is based on another keeps only what differs: nothing but the names of its things is required.
  const partial = withoutRequired(whole) as object;
  const based = {
    type: 'object',
    properties: { 'based-on': { type: ['string', 'number'] } },
    required: ['based-on'],
  };
  return { $schema, title: 'Gown spec, format 1', ...partial, anyOf: [whole, based] };
}

/** The keys that a section may have, by its path; none where its names are free. */
export function keysAt(path: readonly (string | number)[]): readonly string[] {
  const node = nodeAt(path);
  return [node, ...(node?.anyOf ?? [])].flatMap((form) => Object.keys(form?.properties ?? {}));
}

/** Whether a bare number here is a length in the file's units. */
export function isLengthAt(path: readonly (string | number)[]): boolean {
  const node = nodeAt(path);
  return [node, ...(node?.anyOf ?? [])].some((form) => form?.$comment === LENGTH_IN_UNITS);
}

function nodeAt(path: readonly (string | number)[]): SchemaNode | undefined {
  schema ??= z.toJSONSchema(specShape, { io: 'input' }) as SchemaNode;
  let node: SchemaNode | undefined = schema;
  for (const step of path) {
    const forms: readonly (SchemaNode | undefined)[] = [node, ...(node?.anyOf ?? [])];
    node = forms.map((form) => childNode(form, step)).find((child) => child !== undefined);
  }
  return node;
}

function childNode(node: SchemaNode | undefined, step: string | number): SchemaNode | undefined {
  if (typeof step === 'number') return node?.prefixItems?.[step] ?? (node?.items || undefined);
  return node?.properties?.[step] ?? (node?.additionalProperties || undefined);
}

interface SchemaNode {
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly additionalProperties?: SchemaNode | false;
  readonly items?: SchemaNode | false;
  readonly prefixItems?: readonly SchemaNode[];
  readonly anyOf?: readonly SchemaNode[];
  readonly $comment?: string;
}

/** Made once, where a message needs it: thousands of unknown keys ask for the same few names. */
let schema: SchemaNode | undefined;

function withoutRequired(node: unknown): unknown {
  if (Array.isArray(node)) return node.map(withoutRequired);
  if (typeof node !== 'object' || node === null) return node;
  const entries = Object.entries(node).map(([key, value]) => {
    if (key === 'required' && Array.isArray(value)) return [key, value.filter((name) => name === 'name')];
    return [key, withoutRequired(value)];
  });
  return Object.fromEntries(entries);
}
