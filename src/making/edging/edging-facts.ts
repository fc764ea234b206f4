import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Gown } from '../../gown/gown.ts';
import type { Edging } from '../../gown/sections.ts';
import type { Side } from '../../gown/station.ts';
import type { BoughtCloth } from '../../lay/plan/lay-facts.ts';
import type { Bench, Found } from '../findings.ts';
import * as problems from '../problems.ts';
import type { SkirtLayer } from '../skirt.ts';
import {
  clothForEdging,
  type EdgingPlan,
  edgingFromOwnEdges,
  edgingRound,
  type ScallopHang,
  scallopHang,
} from './edging.ts';

/** The edging of one gown: which hems it goes round and what to get. mm. */
export interface EdgingFacts {
  readonly name: string;
  readonly from: Edging['from'];
  readonly depth: number | undefined;
  readonly repeat: number | undefined;
  readonly start: string;
  /** Where both sides of her have a station of that name. */
  readonly side: Side | undefined;
  /** Seam that the start was taken from because the spec does not give it. */
  readonly startAssumed: boolean;
  readonly hems: readonly {
    readonly layer: string;
    readonly length: number;
    readonly plan: EdgingPlan | undefined;
    /** From the centre front round; without a depth nothing can be said of its inner edge. */
    readonly byGore: readonly EdgingOfGore[];
  }[];
  /** What goes round all of them, laid flat, and with one motif more for each join. */
  readonly need: number;
  readonly buy: number;
  /** Of an edging cut off a cloth's own edges. */
  readonly own: OwnEdges | undefined;
  readonly scallops: ScallopHang | undefined;
}

/** What the curve of one gore's hem asks of the edging, mm. */
export interface EdgingOfGore {
  readonly gore: string;
  readonly side?: 'left' | 'right';
  /** Of its hem. */
  readonly length: number;
  /** Where the hem bulges the inner edge is too long by this, and by how much at each motif. */
  readonly lap: number;
  readonly lapPerMotif: number | undefined;
  /** Where the hem is hollow the outer edge is too long by this, and is eased there. */
  readonly easeOuter: number;
}

export interface OwnEdges {
  readonly cloth: string;
  readonly bought: number | undefined;
  readonly supply: number | undefined;
  /** Length of cloth whose edges just reach. */
  readonly clothNeeded: number;
}

export function edgingFacts(
  { gown, skirt, say }: Bench,
  bought: readonly BoughtCloth[],
  capes: readonly CapeHem[] = [],
): Found<EdgingFacts | undefined> {
  const { edging } = gown;
  if (edging === undefined) return { facts: undefined, findings: [] };
  const findings: Diagnostic[] = [];
  const { repeat } = edging;
  const edged = skirt.layers.filter((layer) => layer.layer.edging === edging.name);
  if (repeat === undefined) findings.push(problems.edgingWithoutRepeat(edging.place(), edging.name));
  const hems = edged.map((layer) => ({
    layer: layer.layer.name,
    length: layer.hem,
    plan: repeat === undefined ? undefined : edgingRound(layer.hem, layer.flare, repeat, edging.depth),
    byGore: edging.depth === undefined ? [] : edgingByGore(layer, edging.depth, repeat),
  }));
  const all = [...hems, ...alongCapes(gown, edging.name, capes)];
  const need = all.reduce((sum, hem) => sum + (hem.plan?.length ?? hem.length), 0);
  const buy = need + all.length * (repeat ?? 0);
  const own = edging.from === 'own-edges' ? ownEdges(edging, buy, bought) : undefined;
  if (own?.supply !== undefined && own.supply < buy) {
    findings.push(
      problems.edgingShort(edging.place(), {
        name: edging.name,
        supply: say(own.supply),
        need: say(buy),
        buy: say(own.clothNeeded),
        cloth: own.cloth,
      }),
    );
  }
  const scallops =
    edging.scallop === undefined || skirt.offFloor === undefined
      ? undefined
      : scallopHang(skirt.offFloor, edging.scallop);
  if (scallops !== undefined && Math.abs(scallops.highPoints) > 1) {
    findings.push(
      problems.scallopsOffFloor(edging.place('scallop'), say(scallops.highPoints), say(scallops.lowPoints)),
    );
  }
  const facts: EdgingFacts = {
    name: edging.name,
    from: edging.from,
    depth: edging.depth,
    repeat,
    start: edging.start.name,
    side: edging.start.side,
    startAssumed: edging.startAssumed,
    hems: all,
    need,
    buy,
    own,
    scallops,
  };
  return { facts, findings };
}

/** The hem of a cape on one side of her, mm. */
export interface CapeHem {
  readonly name: string;
  readonly hem: number;
}

/** Along the hems of capes it lies once on each side of her; open at both ends, it needs no whole motifs. */
function alongCapes(
  { capes }: Pick<Gown, 'capes'>,
  edging: string,
  hems: readonly CapeHem[],
): EdgingFacts['hems'][number][] {
  return capes.flatMap(({ name, layers }) => {
    const own = hems.find((cape) => cape.name === name);
    if (own === undefined) return [];
    return layers
      .filter((layer) => layer.edging === edging)
      .map((layer) => ({ layer: layer.name, length: 2 * own.hem, plan: undefined, byGore: [] }));
  });
}

/** By gore: a hem that bulges here and is hollow there is told apart, as neither makes up for the other. */
function edgingByGore(
  { hemTurns, godets }: SkirtLayer,
  depth: number,
  repeat: number | undefined,
): EdgingOfGore[] {
  const wedges = godets.map(({ name, width, side }) => ({
    gore: name,
    length: width,
    outwards: width / side,
    inwards: 0,
  }));
  return [...hemTurns, ...wedges].map(({ outwards, inwards, ...gore }) => {
    const lap = outwards * depth;
    return {
      ...gore,
      lap,
      lapPerMotif: repeat === undefined ? undefined : (lap * repeat) / gore.length,
      easeOuter: inwards * depth,
    };
  });
}

function ownEdges(edging: Edging, need: number, bought: readonly BoughtCloth[]): OwnEdges | undefined {
  const cloth = edging.cloth?.name;
  if (cloth === undefined) return undefined;
  const lengths = bought.filter((one) => one.cloth === cloth);
  const length = lengths.length === 0 ? undefined : lengths.reduce((sum, one) => sum + one.buy, 0);
  return {
    cloth,
    bought: length,
    supply: length === undefined ? undefined : edgingFromOwnEdges(length),
    clothNeeded: clothForEdging(need),
  };
}
