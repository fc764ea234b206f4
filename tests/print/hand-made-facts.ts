import type { Units } from '../../src/diagnostics/units.ts';
import type { Block, TableBlock } from '../../src/print/page/page-blocks.ts';
import type { PaperInput } from '../../src/print/papers/paper-input.ts';
import { english } from '../../src/words/english.ts';

/**
 * What a paper is made from, by hand: only what it asks for, and every figure another, so that one in its neighbour's
 * column shows. Nothing is drafted for it.
 */
export function handMade(
  units: Units,
  { workroom = {}, gown = {}, ...rest }: { workroom?: object; gown?: object } & Record<string, unknown>,
): PaperInput {
  return {
    words: english(units),
    paper: { width: 210, height: 297 },
    lays: [],
    cutPieces: [],
    diagnostics: [],
    chalk: [],
    cutShort: false,
    measures: { gores: [] },
    ...rest,
    workroom: { stones: [], strips: [], hems: [], notions: [], ...workroom },
    gown: {
      units,
      gores: [],
      layers: [],
      cloths: [],
      flounces: [],
      tiers: [],
      overskirts: [],
      straps: [],
      capes: [],
      trims: [],
      ...gown,
    },
  } as unknown as PaperInput;
}

/** Tables among the blocks, those within columns too, in their order. */
export function tablesOf(blocks: readonly Block[]): TableBlock[] {
  return blocks.flatMap((block) => {
    if (block.kind === 'table') return [block];
    return block.kind === 'columns' ? block.columns.flatMap(tablesOf) : [];
  });
}

/** How a table stands on the page: its heads, its rows, and which columns are flush right, `<` and `>`. */
export function asPrinted({ heads, rows, align = [] }: TableBlock): string[][] {
  const flush = heads.map((_, i) => (align[i] === 'end' ? '>' : '<')).join('');
  return [[flush], [...heads], ...rows.map((row) => [...row])];
}
