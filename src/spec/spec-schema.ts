import * as z from 'zod';
import { specShape } from './shape/spec-shape.ts';

/** JSON Schema (2020-12) of a spec, for an editor's completion; from the definition that the reader uses. */
export function specSchema(): object {
  const schema = z.toJSONSchema(specShape, { io: 'input' });
  return { ...schema, title: 'Gown spec, format 1' };
}

/** The keys that a section may have, by its path; none where its names are free. */
export function keysAt(path: readonly (string | number)[]): readonly string[] {
  schema ??= specSchema();
  let node: SchemaNode | undefined = schema;
  for (const step of path) {
    node = typeof step === 'number' ? node?.items : (node?.properties?.[step] ?? node?.additionalProperties);
  }
  return Object.keys(node?.properties ?? {});
}

/** Made once, where a message needs it: thousands of unknown keys ask for the same few names. */
let schema: SchemaNode | undefined;

interface SchemaNode {
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly additionalProperties?: SchemaNode;
  readonly items?: SchemaNode;
}
