import type { Diagnostic, Span } from '../../diagnostics/diagnostic.ts';
import { LAY_AGREES } from './lay-faults.ts';
import { type LayItem, layItem, railroadedItem } from './lay-items.ts';
import type { ClothFacts, LayJoin } from './lay-plan.ts';
import * as problems from './lay-problems.ts';
import { piecedAlongGrain } from './piecing.ts';

/** A layer's pieces made to fit the width of its cloth. */
export interface Fitted {
  readonly items: readonly LayItem[];
  readonly joins: readonly LayJoin[];
  readonly railroaded: boolean;
  readonly diagnostics: readonly Diagnostic[];
}

/** A piece is too wide for the cloth however it is cut. */
export interface Unfitted {
  readonly items: undefined;
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
export function fitToCloth(items: readonly LayItem[], fitting: Fitting): Fitted | Unfitted {
  const { facts } = fitting;
  const wide = items.filter(({ whole }) => whole.width > facts.usable + LAY_AGREES / 2);
  if (wide.length === 0) return { items, joins: [], railroaded: false, diagnostics: [] };
  const directed = facts.oneWay || facts.repeatDown !== undefined || facts.repeatAcross !== undefined;
  const onBias = items.some(({ tilt }) => tilt !== undefined);
  if (!directed && !onBias && items.every(({ whole }) => whole.height <= facts.usable)) {
    return {
      items: items.map(railroadedItem),
      joins: [],
      railroaded: true,
      diagnostics: [problems.railroadedToFit(fitting.span, wordsOf(widest(wide), fitting))],
    };
  }
  return pieced(items, wide, fitting);
}

function pieced(items: readonly LayItem[], wide: readonly LayItem[], fitting: Fitting): Fitted | Unfitted {
  const diagnostics: Diagnostic[] = [];
  const joins: LayJoin[] = [];
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
    joins.push({ gore: item.cut.gore, layer: item.layer, parts: parts.length });
    diagnostics.push(problems.piecedToFit(fitting.span, { ...words, parts: parts.length }));
    return parts.map((part, i) => layItem(part, item.layer, `${i + 1} of ${parts.length}`));
  });
  return failed
    ? { items: undefined, diagnostics }
    : { items: fitted, joins, railroaded: false, diagnostics };
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
