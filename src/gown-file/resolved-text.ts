import { isLengthInUnits } from './shape/form.ts';
import type { Written } from './written.ts';
import { writeYaml } from './yaml-text.ts';

/**
 * The whole spec as text, with everything that it keeps of others written out. A bare number from a file in other units
 * carries its unit; comments stay in the files that they are in.
 */
export function resolvedText(tree: Written): string {
  const own = tree.file.units;
  return writeYaml(tree, (path, { kind, file, text }) => {
    const bare = kind === 'number' || (kind === 'text' && /^[\d\s/.½¼¾⅐-⅞-]+$/.test(text));
    return bare && file.units !== undefined && file.units !== own && isLengthInUnits(path) ? file.units : '';
  });
}
