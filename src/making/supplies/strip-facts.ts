import type { Gown } from '../../gown/gown.ts';
import type { Trim } from '../../gown/sections.ts';
import { WRAP_EDGE } from '../../gown/wrap.ts';
import type { Bench } from '../findings.ts';
import { type StripLength, stripLength } from '../hem/hem-strip.ts';
import type { SkirtLayer } from '../skirt.ts';

/** One strip: where it goes, how long, what to buy. mm. */
export interface StripFacts {
  readonly kind: Trim['kind'];
  readonly layer: string;
  readonly along: string;
  readonly width: number | undefined;
  readonly length: StripLength;
  /** Seams of that name that have it; 1 at the hem and the waist. */
  readonly copies: number;
  /** Cut from a cloth of the gown on the bias, and not bought. */
  readonly isCut: boolean;
  /** In the shop's steps where the spec gives them. */
  readonly buy: number;
  readonly trim: Pick<Trim, 'price' | 'pricedPer' | 'supplier' | 'colour' | 'dyeLot'>;
}

type StripAsked = Omit<Trim, 'place' | 'stations'>;

/** The spec's trims, and the horsehair braid that an edging names. */
export function stripFacts({ gown, skirt }: Bench): StripFacts[] {
  return [...gown.trims, ...braidOfEdging(gown)].flatMap((trim) => {
    const { name } = trim.layer;
    const layer = skirt.layers.find((own) => own.layer.name === name);
    const edge = layer === undefined ? undefined : edgeOf(layer, trim.along);
    if (layer === undefined || edge === undefined) return [];
    const length = stripLength(trim.kind, edge.length, {
      flare: trim.along === 'hem' ? layer.flare : 0,
      ...(trim.width === undefined ? {} : { width: trim.width }),
      closed: trim.along === 'hem' && layer.wrapEdge === undefined,
    });
    const whole = length.length * edge.copies;
    const buy = trim.soldBy === undefined ? whole : Math.ceil(whole / trim.soldBy - 1e-9) * trim.soldBy;
    const { kind, along, width } = trim;
    return [
      {
        kind,
        layer: name,
        along,
        width,
        length,
        copies: edge.copies,
        buy,
        isCut: trim.bias !== undefined,
        trim,
      },
    ];
  });
}

function edgeOf(layer: SkirtLayer, along: string): { length: number; copies: number } | undefined {
  if (along === 'hem') return { length: layer.hem, copies: 1 };
  if (along === 'waist') return { length: layer.waist, copies: 1 };
  if (along === WRAP_EDGE && layer.wrapEdge !== undefined) return { length: layer.wrapEdge, copies: 2 };
  // Where her two sides differ there is a seam of that name on each; the strips are cut to the longer one.
  const seams = layer.seams.filter((seam) => seam.name === along);
  if (seams.length === 0) return undefined;
  return {
    length: Math.max(...seams.map(({ length }) => length)),
    copies: seams.reduce((sum, { copies }) => sum + copies, 0),
  };
}

/** `edging.braid` is the width of a braid in the outermost hem that is faced or bagged, else in the edged layer's. */
function braidOfEdging({ edging, layers }: Gown): StripAsked[] {
  if (edging?.braid === undefined) return [];
  const layer =
    layers.findLast(({ hem }) => hem === 'faced' || hem === 'bagged') ??
    layers.find((own) => own.edging === edging.name);
  return layer === undefined ? [] : [{ kind: 'horsehair', layer, along: 'hem', width: edging.braid }];
}
