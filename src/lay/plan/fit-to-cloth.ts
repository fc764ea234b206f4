import type { Diagnostic, Span } from '../../diagnostics/diagnostic.ts';
import type { CutPiece } from '../../draft/piece.ts';
import { LAY_AGREES } from './check-lay.ts';
import { type LayItem, layItem, railroadedItem } from './lay-items.ts';
import type { ClothFacts } from './lay-plan.ts';
import * as problems from './lay-problems.ts';
import { piecedAlongGrain } from './piecing.ts';

/** A layer's pieces made to fit the width of its cloth. */
export interface Fitted {
  readonly items: readonly LayItem[];
  readonly joins: readonly { readonly gore: string; readonly parts: number }[];
  readonly railroaded: boolean;
  readonly diagnostics: readonly Diagnostic[];
}

export interface Fitting {
  readonly layer: string;
  readonly cloth: string;
  readonly facts: ClothFacts;
  /** Allowance of a join along the grain, mm. */
  readonly seam: number;
  readonly span: Span;
  readonly say: (mm: number) => string;
}

/**
 * Pieces wider than the cloth: laid across it, where it has no direction and all the layer's pieces are short enough;
 * else cut in parts along the grain. Undefined items where neither will do; the error then says the width needed.
 */
export function fitToCloth(
  pieces: readonly CutPiece[],
  fitting: Fitting,
): Fitted | { readonly diagnostics: readonly Diagnostic[] } {
  const { facts } = fitting;
  const items = pieces.map((piece) => layItem(piece));
  const wide = items.filter(({ whole }) => whole.width > facts.usable + LAY_AGREES / 2);
  if (wide.length === 0) return { items, joins: [], railroaded: false, diagnostics: [] };
  const directed = facts.oneWay || facts.repeatDown !== undefined || facts.repeatAcross !== undefined;
  if (!directed && items.every(({ whole }) => whole.height <= facts.usable)) {
    return {
      items: items.map(railroadedItem),
      joins: [],
      railroaded: true,
      diagnostics: [problems.railroadedToFit(fitting.span, wordsOf(widest(wide), fitting))],
    };
  }
  return pieced(items, wide, fitting);
}

function pieced(
  items: readonly LayItem[],
  wide: readonly LayItem[],
  fitting: Fitting,
): Fitted | { readonly diagnostics: readonly Diagnostic[] } {
  const diagnostics: Diagnostic[] = [];
  const joins: { gore: string; parts: number }[] = [];
  let failed = false;
  const fitted = items.flatMap((item) => {
    if (!wide.includes(item)) return [item];
    const words = wordsOf(item, fitting);
    const parts = piecedAlongGrain(item.cut, fitting.facts.usable, fitting.seam);
    if (parts === undefined) {
      failed = true;
      diagnostics.push(problems.widerThanCloth(fitting.span, words));
      return [];
    }
    joins.push({ gore: item.cut.gore, parts: parts.length });
    diagnostics.push(problems.piecedToFit(fitting.span, { ...words, parts: parts.length }));
    return parts.map((part, i) => layItem(part, `${i + 1} of ${parts.length}`));
  });
  return failed ? { diagnostics } : { items: fitted, joins, railroaded: false, diagnostics };
}

function widest(items: readonly LayItem[]): LayItem {
  return items.reduce((a, b) => (b.whole.width > a.whole.width ? b : a));
}

function wordsOf({ cut, whole }: LayItem, { layer, cloth, facts, seam, say }: Fitting) {
  return {
    gore: cut.gore,
    layer,
    cloth,
    width: say(whole.width),
    length: say(whole.height),
    usable: say(facts.usable),
    needed: say(whole.width + facts.width - facts.usable),
    seam: say(seam),
  };
}
