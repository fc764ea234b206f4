import * as z from 'zod/mini';
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

/** One value of a spec: its kind, what an editor is told about it, what a message calls it, and how it is read. */
export function leaf<T>(
  kind: ValueKind,
  json: Readonly<Record<string, unknown>>,
  expected: string,
  read: (written: WrittenScalar) => { readonly value: T } | Diagnostic,
): Leaf<T> {
  const reading = z.transform((input: unknown, context): T => {
    if (typeof input !== 'function') return fault(context, { expected });
    const written = (input as Given)();
    if (written.kind === 'left-out') return undefined as T;
    if (written.kind === 'nothing') return fault(context, { expected });
    const result = read(written);
    return 'value' in result ? result.value : fault(context, { diagnostic: result });
  });
  // A transform by itself counts as a key that may be left out.
  const schema = z.pipe(ANYTHING, reading) as unknown as Leaf<T>;
  z.globalRegistry.add(schema, json);
  KINDS.set(schema, kind);
  return schema;
}

const ANYTHING = z.unknown();

/** Nothing for what is no single value. */
export function kindOf(schema: object): ValueKind | undefined {
  return KINDS.get(schema);
}

const KINDS = new WeakMap<object, ValueKind>();

function fault(context: z.core.ParsePayload, params: FaultAtPath): never {
  context.issues.push({ code: 'custom', input: context.value, params: { ...params } });
  return z.NEVER;
}
