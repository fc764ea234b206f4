import type * as z from 'zod/mini';
import { $constructor, $ZodType } from 'zod/v4/core';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { ValueKind } from '../../diagnostics/value-text.ts';
import type { WrittenScalar } from '../written.ts';

/**
 * How a scalar reaches the schema: wrapped in a function, so that no section or list can mistake it for one of its
 * own kind, and so that it brings its place, its digits as written and its file's units along.
 */
export type Given = () => WrittenScalar;

/** How the JSON Schema marks a length whose bare numbers are in the file's units. */
export const LENGTH_IN_UNITS = "a bare number is in the file's units";

/** What a schema says about a fault that has no place yet: the path tells which value it was. */
export interface FaultAtPath {
  readonly diagnostic?: Diagnostic;
  /** The value is missing, or is a section or a list; what should stand there, for the message. */
  readonly expected?: string;
}

/** One value of a spec. */
export type Leaf<T> = z.ZodMiniType<T, Given>;

type Read<T> = (written: WrittenScalar) => { readonly value: T } | Diagnostic;

/** What a leaf was made with, beside what the library keeps of any schema. */
interface LeafDefinition extends z.core.$ZodTypeDef {
  readonly type: 'unknown';
  readonly kind: ValueKind;
  readonly json: Readonly<Record<string, unknown>>;
  readonly expected: string;
  readonly read: Read<unknown>;
}

interface LeafSchema extends z.core.$ZodType<unknown, unknown> {
  readonly _zod: z.core.$ZodTypeInternals<unknown, unknown> & { def: LeafDefinition };
}

/**
 * A kind of schema of our own. There are some 430 leaves, made before the first line of a spec is read; put together
 * from the library's own kinds they were two schemas each, and a fifth of the time that a check takes beyond a bare start.
 */
const LeafOfSpec = $constructor<LeafSchema, LeafDefinition>('LeafOfSpec', (leaf, definition) => {
  $ZodType.init(leaf, definition);
  leaf._zod.parse = (payload) => readInto(payload, definition);
});

/** One value of a spec: its kind, what an editor is told about it, what a message calls it, and how it is read. */
export function leaf<T>(
  kind: ValueKind,
  json: Readonly<Record<string, unknown>>,
  expected: string,
  read: Read<T>,
): Leaf<T> {
  return new LeafOfSpec({ type: 'unknown', kind, json, expected, read }) as unknown as Leaf<T>;
}

function readInto(payload: z.core.ParsePayload, { expected, read }: LeafDefinition): z.core.ParsePayload {
  const { value } = payload;
  if (typeof value !== 'function') return withFault(payload, { expected });
  const written = (value as Given)();
  if (written.kind === 'nothing') return withFault(payload, { expected });
  const result = written.kind === 'left-out' ? { value: undefined } : read(written);
  if (!('value' in result)) return withFault(payload, { diagnostic: result });
  payload.value = result.value;
  return payload;
}

function withFault(payload: z.core.ParsePayload, params: FaultAtPath): z.core.ParsePayload {
  payload.issues.push({ code: 'custom', input: payload.value, params: { ...params } });
  return payload;
}

/** Nothing for what is no single value. */
export function kindOf(schema: z.core.$ZodType): ValueKind | undefined {
  return definitionOf(schema)?.kind;
}

/** What an editor is told about a single value. */
export function jsonOf(schema: z.core.$ZodType): Readonly<Record<string, unknown>> {
  return definitionOf(schema)?.json ?? {};
}

function definitionOf(schema: z.core.$ZodType): LeafDefinition | undefined {
  return schema instanceof LeafOfSpec ? schema._zod.def : undefined;
}
