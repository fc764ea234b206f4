import { parse, stringify } from 'yaml';
import { measuresChanged } from './measures-changed.ts';
import { textChanged } from './mutate-text.ts';
import { type Tree, treeChanged } from './mutate-tree.ts';
import { Random } from './random.ts';
import { STARTING_SPECS } from './starting-specs.ts';

/** A spec that something has happened to; the seed alone makes it again. */
export interface Mutant {
  readonly seed: number;
  readonly from: string;
  readonly text: string;
}

export function mutantOf(seed: number): Mutant {
  const random = new Random(seed);
  const { name, text } = random.pick(STARTING_SPECS);
  const other = random.pick(STARTING_SPECS).text;
  const kind = random.pick(['text', 'tree', 'tree', 'measures', 'measures'] as const);
  return { seed, from: name, text: CHANGED[kind](text, other, random) };
}

type Changed = (text: string, other: string, random: Random) => string;

const CHANGED: Readonly<Record<'text' | 'tree' | 'measures', Changed>> = {
  text: (text, _, random) => {
    const times = random.pick(TIMES);
    let changed = text;
    for (let i = 0; i < times; i++) changed = textChanged(changed, random);
    return changed;
  },
  tree: (text, other, random) => {
    const tree = parse(text) as Tree;
    const times = random.pick(TIMES);
    for (let i = 0; i < times; i++) treeChanged(tree, parse(other) as Tree, random);
    const changed = written(tree);
    return random.chance(0.1) ? textChanged(changed, random) : changed;
  },
  measures: (text, other, random) => {
    const tree = parse(text) as Tree;
    measuresChanged(tree, random);
    if (random.chance(0.2)) treeChanged(tree, parse(other) as Tree, random);
    return written(tree);
  },
};

/** Mostly one change: more of them hide behind the first. */
const TIMES = [1, 1, 1, 2, 3, 5];

function written(tree: Tree): string {
  return stringify(tree, { aliasDuplicateObjects: false });
}
