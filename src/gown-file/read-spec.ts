import type { Diagnostic, Source, Span } from '../diagnostics/diagnostic.ts';
import { sortDiagnostics } from '../diagnostics/place.ts';
import { notASpec } from '../diagnostics/text-problems.ts';
import { manyProblems } from '../diagnostics/value-problems.ts';
import { type ReadBase, readChain } from './based-on.ts';
import { allChecks } from './checks/all-checks.ts';
import { Page } from './checks/page.ts';
import { faultOfText } from './decode-spec.ts';
import { withMakingOfBodice } from './making-of-bodice.ts';
import { readShape } from './read-shape.ts';
import { allSlips } from './slips/all-slips.ts';
import type { Spec } from './spec.ts';
import { childOf, isScalar, placesOf, type Written } from './written.ts';
import { readYaml } from './yaml-text.ts';

/** `spec` only where there are no errors; diagnostics sorted by place, warnings among them. */
export interface SpecReading {
  readonly spec?: Spec;
  /** A spec whose only errors are measures that contradict each other: good for further findings, not for a draft. */
  readonly contradicted?: Spec;
  /** The spec as written, over what it is based on; for `resolvedText`. */
  readonly tree?: Written;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Text to spec: the tree as written, over what it is based on, its shape, then whether its values make a gown together.
 * `readBase` gives the files that it may be based on; without it such a spec is an error. `path` is the spec's own file
 * name, by which a circle is told.
 */
export function readSpec(source: Source, readBase?: ReadBase, path = fileName(source.name)): SpecReading {
  const { root, diagnostics } = readChain(readTree(source), path, readBase, readTree);
  return root === undefined
    ? { diagnostics: atMost(MOST_PROBLEMS, diagnostics) }
    : readWritten(root, diagnostics);
}

/** The tree of one file, its units set, or what is wrong with its text. */
export function readTree(source: Source): ReturnType<typeof readYaml> {
  const fault = faultOfText(source);
  if (fault !== undefined) return { diagnostics: [fault] };
  const { root, diagnostics } = readYaml(source);
  if (root === undefined) return { diagnostics };
  if (root.kind !== 'map') return { diagnostics: [notASpec(firstLine(root), inWords(root))] };
  const units = childOf(root, 'units');
  if (units !== undefined && isScalar(units) && UNITS.includes(units.text.trim()))
    root.file.units = units.text.trim();
  return { root: withMakingOfBodice(root), diagnostics };
}

/** Where the file's units are none of these, that is said once and its bare numbers are not judged. */
const UNITS = ['mm', 'cm', 'in'];

/** A tree, alone or merged with what it is based on. `found` are the problems of its text. */
export function readWritten(root: Written, found: readonly Diagnostic[]): SpecReading {
  const { spec, sketch, diagnostics } = readShape(root);
  const page = new Page(sketch, root);
  const wrong = [...found, ...diagnostics, ...allChecks(page)];
  const all = sortDiagnostics([...wrong, ...allSlips(page).filter(({ span }) => !isSpokenOf(span, wrong))]);
  const errors = all.filter((diagnostic) => diagnostic.level === 'error');
  const built =
    spec !== undefined && errors.every(({ code }) => CONTRADICTIONS.has(code))
      ? { ...spec, places: placesOf(root) }
      : undefined;
  return {
    ...(built === undefined ? {} : errors.length === 0 ? { spec: built } : { contradicted: built }),
    tree: root,
    diagnostics: atMost(MOST_PROBLEMS, all),
  };
}

/** A figure that is wrong outright needs no doubt beside it. */
function isSpokenOf({ source, start, end }: Span, wrong: readonly Diagnostic[]): boolean {
  return wrong.some(({ span }) => span.source === source && span.start <= end && start <= span.end);
}

/** Errors with which a gown can still be drawn, so that what else is wrong with it is found in the same run. */
const CONTRADICTIONS: ReadonlySet<string> = new Set(['top-misses-panel', 'tops-miss-waist']);

/** Problems shown of one file. More bury the first; fewer would hide some of a bad day's work. */
const MOST_PROBLEMS = 100;

function atMost(most: number, all: readonly Diagnostic[]): readonly Diagnostic[] {
  if (all.length <= most) return all;
  return [...all.slice(0, most), manyProblems(all[most]!.span, all.length - most)];
}

const fileName = (path: string) => path.replaceAll('\\', '/').split('/').at(-1)!;

function firstLine(root: Written) {
  const { source, start, end } = root.span;
  const newline = source.text.indexOf('\n', start);
  return { source, start, end: newline === -1 ? end : Math.min(end, newline) };
}

function inWords(root: Written): string {
  return root.kind === 'list' ? 'a list' : 'one value';
}
