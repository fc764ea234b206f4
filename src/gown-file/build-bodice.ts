import type { BodiceDraftSpec, BodySpec, CapeSpec, ClosingSpec, StrapSpec } from './bodice-spec.ts';
import { layerOf } from './build-gores.ts';
import type { ShapedSpec } from './shape/spec-shape.ts';
import type { BodiceSpec, Units } from './spec.ts';

/** Eyelets stand this far apart, and this far from the edge, where nothing is said (common practice). */
const USUAL_EYELETS = { pitch: 25, fromEdge: 15 };
/** Lace that hangs free for tying, both ends together (common practice). */
const USUAL_TAILS = 1000;
/** Bones keep clear of each sewn edge by half an inch, and are a quarter inch wide (common practice). */
const USUAL_BONES = { clear: 13, width: 7 };
/** Steels are sold in lengths a centimetre, or half an inch, apart (common practice). */
const USUAL_STEEL_STEP: Readonly<Record<Units, number>> = { mm: 10, cm: 10, in: 12.7 };

type Shaped<Key extends keyof ShapedSpec> = NonNullable<ShapedSpec[Key]>;
type ShapedDraft = NonNullable<ShapedSpec['bodice']['draft']>;

export function bodyOf(body: Shaped<'body'>): BodySpec {
  return { ...body, wearer: body.wearer ?? 'adult' };
}

export function bodiceOf({ draft, ...bodice }: ShapedSpec['bodice'], units: Units): BodiceSpec {
  const { bones } = draft ?? {};
  // Where the bones of a drafted bodice end is known.
  const end = bones === undefined ? bodice.bonesEnd : (bones.clear ?? USUAL_BONES.clear);
  return {
    ...bodice,
    waistSeam: bodice.waistSeam ?? 0,
    panels: bodice.panels ?? {},
    dropBelowWaist: bodice.dropBelowWaist ?? {},
    ...(end !== undefined && { bonesEnd: end }),
    ...(draft && bodice.plies === undefined && { plies: pliesOf(draft) }),
    ...(draft && { draft: draftOf(draft, units) }),
  };
}

/** Its layers in the waist seam: a lining is felled over it afterwards. */
function pliesOf({ layers }: ShapedDraft): number {
  return Math.max(1, layers.filter(({ name }) => !/lining/i.test(name)).length);
}

function draftOf(draft: ShapedDraft, units: Units): BodiceDraftSpec {
  const { panels, upperPoint, closing, bones, layers, ...given } = draft;
  return {
    ...given,
    reduce: draft.reduce ?? {},
    upperPoint: upperPoint === undefined ? [] : typeof upperPoint === 'string' ? [upperPoint] : upperPoint,
    upperFinish: draft.upperFinish ?? 'bound',
    allowances: draft.allowances ?? {},
    panels: panels.map((panel) => ({ ...panel, onFold: panel.onFold ?? false, widths: panel.widths ?? {} })),
    layers: layers.map((layer) => ({ ...layer, allowances: layer.allowances ?? {} })),
    ...(closing && { closing: closingOf(closing) }),
    ...(bones && { bones: bonesOf(bones, units) }),
  };
}

function closingOf(closing: NonNullable<ShapedDraft['closing']>): ClosingSpec {
  return {
    ...closing,
    eyelets: closing.eyelets ?? USUAL_EYELETS.pitch,
    fromEdge: closing.fromEdge ?? USUAL_EYELETS.fromEdge,
    doubled: closing.doubled ?? false,
    tails: closing.tails ?? USUAL_TAILS,
  };
}

function bonesOf(
  bones: NonNullable<ShapedDraft['bones']>,
  units: Units,
): NonNullable<BodiceDraftSpec['bones']> {
  return {
    ...bones,
    along: bones.along ?? 'seams',
    also: bones.also ?? [],
    kind: bones.kind ?? 'spiral-steel',
    width: bones.width ?? USUAL_BONES.width,
    clear: bones.clear ?? USUAL_BONES.clear,
    soldBy: bones.soldBy ?? USUAL_STEEL_STEP[units],
  };
}

/** Straps without a name are told apart by number; without a cloth they are cut from the skirt's outermost. */
export function strapsOf(straps: Shaped<'straps'>, layers: ShapedSpec['layers']): StrapSpec[] {
  const outermost = layers.at(-1)?.cloth ?? '';
  return straps.map((strap, i) => ({
    ...strap,
    name: strap.name ?? (straps.length === 1 ? 'strap' : `strap-${i + 1}`),
    cloth: strap.cloth ?? outermost,
  }));
}

export function capeOf(cape: Shaped<'capes'>[number]): CapeSpec {
  return {
    ...cape,
    overArm: cape.overArm ?? 0,
    onFold: cape.onFold ?? false,
    layers: cape.layers.map(layerOf),
  };
}
