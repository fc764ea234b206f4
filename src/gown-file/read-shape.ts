import * as z from 'zod/mini';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Given } from './shape/leaf.ts';
import { type ShapedSpec, specShape } from './shape/spec-shape.ts';
import { problemsOfIssue } from './shape-problems.ts';
import type { SketchedSpec } from './spec.ts';
import { isScalar, type Written, type WrittenScalar } from './written.ts';

/**
 * A tree of written values against the shape of a spec. `spec` only where nothing was wrong; `sketch` always, with
 * what was wrong left out, so that the checks can still speak of everything else in the same run.
 */
export function readShape(root: Written): {
  readonly spec?: ShapedSpec;
  readonly sketch: SketchedSpec;
  readonly diagnostics: readonly Diagnostic[];
} {
  const plain = plainOf(root);
  const first = z.safeParse(specShape, plain, { jitless: true });
  if (first.success) return { spec: first.data, sketch: first.data, diagnostics: [] };
  const diagnostics = first.error.issues.flatMap((issue) => problemsOfIssue(issue, root));
  return { sketch: sketchOf(plain, first.error.issues), diagnostics };
}

type Plain = Given | Plain[] | { [key: string]: Plain };

/** Maps have no prototype, so that no key can reach behind them. */
function plainOf(written: Written): Plain {
  if (isScalar(written)) return () => written;
  if (written.kind === 'list') return written.items.map(plainOf);
  const map: { [key: string]: Plain } = Object.create(null);
  for (const [key, value] of written.entries) map[key] = plainOf(value);
  return map;
}

/** Rounds of mending: each can uncover the required values of a section that the one before put in. */
const ROUNDS = 8;

function sketchOf(plain: Plain, issues: readonly z.core.$ZodIssue[]): SketchedSpec {
  let faults = issues;
  for (let round = 0; round < ROUNDS; round++) {
    for (const issue of faults) mend(plain, issue);
    const result = z.safeParse(specShape, plain, { jitless: true });
    if (result.success) return result.data;
    faults = result.error.issues;
  }
  return {};
}

/** Items of the only list whose length is fixed; a third item makes it faulty as a whole. */
const PAIR = 2;

/**
 * Takes a faulty value out of the way: an unknown key goes, a list that is too long ends sooner, a section or list of
 * another kind becomes empty, a leaf is left out.
 */
function mend(plain: Plain, issue: z.core.$ZodIssue): void {
  const path = issue.path.map(String);
  if (issue.code === 'unrecognized_keys') {
    const section = at(plain, path);
    if (section !== undefined && !isLeaf(section))
      for (const key of issue.keys) delete (section as { [key: string]: Plain })[key];
    return;
  }
  if (issue.code === 'too_big' && Number(issue.maximum) > PAIR) {
    const list = at(plain, path);
    if (Array.isArray(list)) list.length = Number(issue.maximum);
    return;
  }
  const parent = at(plain, path.slice(0, -1));
  const key = path.at(-1);
  if (parent === undefined || key === undefined || isLeaf(parent)) return;
  const expected = issue.code === 'invalid_type' ? issue.expected : '';
  (parent as { [key: string]: Plain })[key] =
    expected === 'array'
      ? []
      : expected === 'object' || expected === 'record'
        ? Object.create(null)
        : leftOut;
}

function at(plain: Plain, path: readonly string[]): Plain | undefined {
  return path.reduce<Plain | undefined>(
    (value, step) =>
      value === undefined || isLeaf(value) ? undefined : (value as { [key: string]: Plain })[step],
    plain,
  );
}

const isLeaf = (plain: Plain): plain is Given => typeof plain === 'function';

/** A leaf knows this value and reads it as nothing. */
const leftOut: Given = () => LEFT_OUT;
const LEFT_OUT: WrittenScalar = {
  kind: 'left-out',
  text: '',
  label: '',
  file: { source: { name: '', text: '' } },
  span: { source: { name: '', text: '' }, start: 0, end: 0 },
};
