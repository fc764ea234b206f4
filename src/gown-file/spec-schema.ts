import * as z from 'zod/mini';
import { jsonOf } from './shape/leaf.ts';
import { specShape } from './shape/spec-shape.ts';

/** JSON Schema (2020-12) of a spec, for an editor's completion; from the definition that the reader uses. */
export function specSchema(): object {
  const { $schema, ...whole } = z.toJSONSchema(specShape, {
    io: 'input',
    override: ({ zodSchema, jsonSchema }) => Object.assign(jsonSchema, jsonOf(zodSchema)),
  });
  // A spec that is based on another keeps only what differs: nothing but the names of its things is required.
  const partial = withoutRequired(whole) as object;
  const based = {
    type: 'object',
    properties: { 'based-on': { type: ['string', 'number'] } },
    required: ['based-on'],
  };
  return { $schema, title: 'Gown spec, format 1', ...partial, anyOf: [whole, based] };
}

function withoutRequired(node: unknown): unknown {
  if (Array.isArray(node)) return node.map(withoutRequired);
  if (typeof node !== 'object' || node === null) return node;
  const entries = Object.entries(node).map(([key, value]) => {
    if (key === 'required' && Array.isArray(value)) return [key, value.filter((name) => name === 'name')];
    return [key, withoutRequired(value)];
  });
  return Object.fromEntries(entries);
}
