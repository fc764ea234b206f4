import * as problems from '../diagnostics/based-on-problems.ts';
import type { Diagnostic, Source } from '../diagnostics/diagnostic.ts';
import {
  mergeWritten,
  pricedAsWritten,
  standsAt,
  without,
  withoutInStacks,
  withoutRecords,
} from './merge-written.ts';
import {
  childOf,
  isScalar,
  placeOfWritten,
  type Written,
  type WrittenMap,
  type WrittenScalar,
} from './written.ts';

/** A file beside the spec, by its path from the spec's folder with `/` between; nothing where there is none. */
export type ReadBase = (
  path: string,
) => { readonly source?: Source; readonly diagnostics: readonly Diagnostic[] } | undefined;

export interface Tree {
  readonly root?: Written;
  readonly diagnostics: readonly Diagnostic[];
}

/** Specs that may stand one on the other. A gown of the third season has two below it; more is a tangle. */
const LONGEST_CHAIN = 8;

/** A spec's tree over all that it is based on. `path` is the spec's own, from its folder. */
export function readChain(
  tree: Tree,
  path: string,
  readBase: ReadBase | undefined,
  readTree: (source: Source) => Tree,
): Tree {
  return resolve(tree, [path], readBase, readTree);
}

function resolve(
  tree: Tree,
  chain: readonly string[],
  readBase: ReadBase | undefined,
  readTree: (source: Source) => Tree,
): Tree {
  const { root } = tree;
  if (root?.kind !== 'map') return tree;
  const named = childOf(root, 'based-on');
  if (named === undefined) return faultOfWithout(tree, root);
  const failed = (fault: Diagnostic): Tree => ({ diagnostics: [...tree.diagnostics, fault] });
  if (!isScalar(named) || named.text.trim() === '')
    return failed(problems.basedOnNoFile(placeOfWritten(named)));
  if (readBase === undefined) return failed(problems.baseNotReadHere(named.span));
  const path = pathFrom(chain.at(-1)!, named.text.trim());
  const fault =
    path === undefined ? problems.outsideFolder(named.span, named.text) : faultOfChain(named, chain, path);
  if (fault !== undefined) return failed(fault);
  const read = readBase(path!);
  if (read === undefined) return failed(problems.baseMissing(named.span, path!));
  if (read.source === undefined) return { diagnostics: [...tree.diagnostics, ...read.diagnostics] };
  const base = resolve(readTree(read.source), [...chain, path!], readBase, readTree);
  const diagnostics = [...tree.diagnostics, ...read.diagnostics, ...base.diagnostics];
  if (base.root?.kind !== 'map') return { diagnostics };
  return over(base.root, root, named, diagnostics);
}

function over(base: WrittenMap, own: WrittenMap, named: WrittenScalar, found: readonly Diagnostic[]): Tree {
  // Bare numbers of a spec that says no units are in those of the one below it.
  if (childOf(own, 'units') === undefined && base.file.units !== undefined) own.file.units = base.file.units;
  const diagnostics = [...found];
  const same = base.file.units === own.file.units;
  let below = withoutRecords(same ? base : pricedAsWritten(base));
  for (const { path, span } of leftOut(own, diagnostics)) {
    if (!standsAt(below, path)) diagnostics.push(problems.nothingToLeaveOut(span, path.join('.')));
    below = without(below, path);
    if (path.length === 2 && path[0] === 'layers') below = withoutInStacks(below, path[1]!);
  }
  if (below.entries.has('fittings') && !own.entries.has('fittings'))
    diagnostics.push(problems.fittingsInherited(named.span));
  const rest = without(without(own, ['based-on']), ['without']);
  return { root: mergeWritten(below, rest), diagnostics };
}

function leftOut(own: WrittenMap, diagnostics: Diagnostic[]): { path: string[]; span: Diagnostic['span'] }[] {
  const list = childOf(own, 'without');
  if (list === undefined) return [];
  const items = list.kind === 'list' ? list.items.filter(isScalar) : [];
  if (list.kind !== 'list' || items.length < list.items.length)
    diagnostics.push(problems.withoutWhat(placeOfWritten(list)));
  return items.map((item) => ({ path: item.text.split('.'), span: item.span }));
}

function faultOfWithout(tree: Tree, root: WrittenMap): Tree {
  const list = childOf(root, 'without');
  if (list === undefined) return tree;
  return {
    root: without(root, ['without']),
    diagnostics: [...tree.diagnostics, problems.withoutBase(placeOfWritten(list))],
  };
}

function faultOfChain(named: WrittenScalar, chain: readonly string[], path: string): Diagnostic | undefined {
  if (chain.includes(path)) return problems.basedOnItself(named.span, [...chain, path]);
  return chain.length >= LONGEST_CHAIN ? problems.chainTooLong(named.span, LONGEST_CHAIN) : undefined;
}

/** The path of a file named in another, from the first spec's folder; nothing where it would leave that folder. */
function pathFrom(file: string, name: string): string | undefined {
  if (/^[/\\~]|^[a-z][a-z\d+.-]*:|\\|[\p{Cc}]/iu.test(name)) return undefined;
  const steps = file.split('/').slice(0, -1);
  for (const step of name.split('/')) {
    if (step === '..') {
      if (steps.pop() === undefined) return undefined;
    } else if (step !== '.' && step !== '') steps.push(step);
  }
  return steps.length === 0 ? undefined : steps.join('/');
}
