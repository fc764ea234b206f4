import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { forgetting } from '../../kept/kept.ts';
import { buyLength } from './buy-length.ts';
import { chooseWay, type TriedWay } from './choose-way.ts';
import { finishedLay } from './finished-lay.ts';
import { fitLayers } from './fit-layers.ts';
import type { LayItem } from './lay-items.ts';
import type { Fold, LaidApart, LayPlan } from './lay-plan.ts';
import { layCutShort } from './lay-problems.ts';
import type { LayToPlan } from './lay-to-plan.ts';
import { type PackingEffort, SectionPacker } from './pack-section.ts';
import { shapesOf } from './section-strip.ts';
import { lengthOf, tryWays } from './try-ways.ts';

export interface LayPlanned {
  /** Absent where a piece cannot be cut from the cloth. */
  readonly plan?: LayPlan;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Plans every way to lay what is cut from one cloth, takes the shortest of those that the cloth's `fold` allows, and
 * checks it afresh. Of several layers each is laid by itself first: end to end they are one of the ways, so that the lay
 * is never longer than they are.
 */
export function planLay(
  toLay: LayToPlan,
  effort: PackingEffort,
  onBetter: (length: number) => void = () => {},
): LayPlanned {
  try {
    return planned(toLay, effort, onBetter);
  } catch (error) {
    // Strips that were kept may be such that the lay does not pass its check: then nothing that was kept is used.
    const { kept } = effort;
    if (kept === undefined) throw error;
    return planned(toLay, { ...effort, kept: forgetting(kept) }, onBetter);
  }
}

function planned(toLay: LayToPlan, effort: PackingEffort, onBetter: (length: number) => void): LayPlanned {
  const fitted = fitLayers(toLay);
  if (fitted.items === undefined) return { diagnostics: fitted.diagnostics };
  const { items, joins, railroaded } = fitted;
  let cutShort = false;
  const stopped = () => {
    const stops = effort.stopped();
    cutShort ||= stops;
    return stops;
  };
  const packer = new SectionPacker(items, toLay.facts, { ...effort, stopped });
  const layers = toLay.layers
    .map(({ name }) => ({ name, items: items.filter(({ layer }) => layer === name) }))
    .filter((layer) => layer.items.length > 0);
  const apart =
    layers.length < 2 ? undefined : layers.map((layer) => laidByItself(layer, railroaded, packer, toLay));
  const known = apart === undefined ? undefined : endToEnd(apart.map(({ taken }) => taken));
  const asked = { items, singleOnly: railroaded.length > 0, onBetter };
  const tried =
    known === undefined
      ? tryWays(asked, packer, toLay)
      : shapesOf(items).length > MOST_TOGETHER
        ? [known]
        : tryWays({ ...asked, known }, packer, toLay);
  const { taken, diagnostics } = chooseWay(tried, toLay, known?.length);
  const plan = finishedLay(taken, tried, items, toLay, {
    joins,
    railroaded,
    cutShort,
    ...(apart === undefined ? {} : { apart: boughtApart(apart, toLay) }),
  });
  const short = cutShort ? [layCutShort(toLay.span, plan.layers)] : [];
  return { plan, diagnostics: [...fitted.diagnostics, ...diagnostics, ...short] };
}

/**
 * Shapes that are laid together: each is fitted to every other one, and with a thousand that took 2.5 GB and found no
 * end in two minutes. More lie layer by layer, end to end.
 */
const MOST_TOGETHER = 200;

interface LayerLaid {
  readonly name: string;
  readonly taken: TriedWay;
}

/** The lay that a layer would have if nothing else were cut from its cloth. */
function laidByItself(
  { name, items }: { readonly name: string; readonly items: readonly LayItem[] },
  railroaded: readonly string[],
  packer: SectionPacker,
  toLay: LayToPlan,
): LayerLaid {
  const tried = tryWays({ items, singleOnly: railroaded.includes(name) }, packer, toLay);
  return { name, taken: chooseWay(tried, toLay).taken };
}

/** One layer's lay after the other's, as a way to lay them all. */
function endToEnd(laid: readonly TriedWay[]): TriedWay {
  const packed = laid.flatMap((one) => one.packed!);
  const folds = new Set<Fold>(packed.map(({ section }) => section.fold));
  const [fold] = folds;
  return {
    way: {
      folds: 'layers-end-to-end',
      fold: folds.size === 1 ? fold! : 'sections',
      sections: packed.map(({ section }) => section),
    },
    packed,
    length: lengthOf(packed),
    tooWide: undefined,
  };
}

function boughtApart(apart: readonly LayerLaid[], { spec }: LayToPlan): LaidApart {
  const layers = apart.map(({ name, taken: { length } }) => ({
    layer: name,
    length,
    buy: buyLength(length, spec),
  }));
  return {
    layers,
    length: layers.reduce((sum, { length }) => sum + length, 0),
    buy: layers.reduce((sum, { buy }) => sum + buy, 0),
  };
}
