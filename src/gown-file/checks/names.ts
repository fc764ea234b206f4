import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/gore-problems.ts';
import type { Page } from './page.ts';

/** Names of gores, layers and cloths: their letters, words that mean something else, and no name twice. */
export function checkNames(page: Page): Diagnostic[] {
  const { gores = [], layers = [], cloths = {} } = page.sketch;
  return [
    ...namesOfList(
      page,
      'gores',
      'gore',
      gores.map((gore) => gore.name),
    ),
    ...namesOfList(
      page,
      'layers',
      'layer',
      layers.map((layer) => layer.name),
    ),
    ...Object.keys(cloths).flatMap((name) => faultOfName(page.keyAt('cloths', name), 'cloth', name)),
  ];
}

function namesOfList(
  page: Page,
  list: 'gores' | 'layers',
  kind: string,
  names: readonly (string | undefined)[],
): Diagnostic[] {
  const seen = new Map<string, number>();
  return names.flatMap((name, index) => {
    if (name === undefined) return [];
    const span = page.at(list, index, 'name');
    const faults = faultOfName(span, kind, name);
    // File systems that take `Shell` and `shell` for one would overwrite a lay.
    const folded = name.normalize('NFC').toLowerCase();
    const earlier = seen.get(folded);
    if (earlier !== undefined)
      faults.push(problems.duplicateName(span, kind, name, page.at(list, earlier, 'name')));
    else seen.set(folded, index);
    return faults;
  });
}

function faultOfName(span: Diagnostic['span'], kind: string, name: string): Diagnostic[] {
  if (!NAME.test(name)) return [problems.badName(span, kind, name)];
  if (name in Object.prototype) return [problems.reservedName(span, kind, name)];
  return kind === 'gore' && RESERVED.has(name.toLowerCase()) ? [problems.reservedName(span, kind, name)] : [];
}

const NAME = /^[\p{L}\p{N}][\p{L}\p{M}\p{N}-]*$/u;
/** Edges and stations have these names. */
const RESERVED = new Set(['waist', 'hem', 'fold', 'seam', 'centre-front', 'centre-back']);
