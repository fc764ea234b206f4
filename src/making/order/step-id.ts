/**
 * What a step is called. Other steps wait for it by this name, so that a name which no step can have does not compile.
 * After a colon stands what the step is of: a layer, a cloth, a part.
 */
export type StepId =
  | 'toile'
  | 'test-scraps'
  | `shrink:${string}`
  | 'cut-own-edges'
  | `cut:${string}`
  | 'mark'
  | 'stay-edges'
  | 'bodice-seams'
  | 'casings'
  | 'bodice-layers'
  | 'bodice-close'
  | 'fit-bodice'
  | 'bones'
  | 'upper-facing'
  | 'upper-edge'
  | 'bodice-lining'
  | `beside:${string}`
  | `seams:${string}`
  | `godet:${string}`
  | `gather:${string}`
  | `pleat:${string}`
  | `press-pleats:${string}`
  | `tucks:${string}`
  | `darts:${string}`
  | `tiers:${string}`
  | `flounce:${string}`
  | `overskirt:${string}`
  | `facing:${string}`
  | `slit:${string}`
  | `pocket:${string}`
  | `loops:${string}`
  | `bias:${string}`
  | `stones:${string}`
  | 'wrap-edges'
  | 'wrap-ties'
  | 'fasten-wrap'
  | 'finish-opening'
  | `baste:${string}`
  | 'close'
  | `strip-along:${string}`
  | `waist:${string}`
  | 'waist-stay'
  | 'hang'
  | 'level'
  | 'trim'
  | `strip:${string}`
  | `hem:${string}`
  | `bag:${string}`
  | `turn:${string}`
  | `flounce-hem:${string}`
  | `overskirt-hem:${string}`
  | `edging:${string}`
  | 'level-scallops'
  | 'fit'
  | 'bustle'
  | 'fell-lining'
  | 'finish';

/** The one lay that a layer is cut from: its cloth's, unless that cloth's layers are kept apart. */
export function cutId({
  name,
  cloth,
}: {
  readonly name: string;
  readonly cloth: { readonly name: string; readonly apart?: boolean };
}): StepId {
  return cloth.apart === true ? `cut:${cloth.name}/${name}` : `cut:${cloth.name}`;
}

/** Layers sewn together in one go. */
export function togetherId<Kind extends 'baste' | 'waist' | 'bag' | 'turn'>(
  kind: Kind,
  layers: readonly string[],
): `${Kind}:${string}` {
  return `${kind}:${layers.join('+')}`;
}
