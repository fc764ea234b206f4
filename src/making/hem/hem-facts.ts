import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Cloth, HemFinish } from '../../gown/cloth.ts';
import { allowanceAt, hangsShorter, type Layer } from '../../gown/layer.ts';
import { biasFindings } from '../bias/bias-findings.ts';
import { type Bench, type Found, percentText } from '../findings.ts';
import * as problems from '../problems.ts';
import { tuckFindings } from '../tucks/tuck-findings.ts';
import { type HemSurplus, hemSurplus, MOST_SURPLUS, MOST_SURPLUS_ON_SATIN } from './hem-surplus.ts';

/** One layer's hem as it is finished. mm. */
export interface HemFacts {
  readonly layer: string;
  readonly finish: HemFinish;
  /** All that is finished: sewn hem and, opened out, what its pleats add to it. */
  readonly length: number;
  readonly allowance: number;
  readonly shorter: number;
  /** Of a turned-up hem only. */
  readonly surplus: HemSurplus | undefined;
  /** For a bagged hem: the layer that it is sewn to. */
  readonly partner: string | undefined;
  readonly roughCut: readonly { readonly gore: string; readonly depth: number }[];
}

export function hemFacts(bench: Bench): Found<readonly HemFacts[]> {
  const { gown, skirt, say } = bench;
  const findings: Diagnostic[] = [];
  const facts = skirt.layers.map(({ layer, hem, flare, gores, pleats }): HemFacts => {
    const allowance = allowanceAt(layer, 'hem');
    const surplus = layer.hem === 'turned' && allowance > 0 ? hemSurplus(hem, flare, allowance) : undefined;
    const satin = isSatin(layer.cloth);
    const most = satin ? MOST_SURPLUS_ON_SATIN : MOST_SURPLUS;
    if (surplus !== undefined && surplus.share > most) {
      findings.push(
        problems.hemSurplusShows(layer.place('hem'), {
          layer: layer.name,
          surplus: say(surplus.toEase),
          share: percentText(surplus.share),
          most: percentText(most),
          satin,
          depth: say(allowance),
        }),
      );
    }
    return {
      layer: layer.name,
      finish: layer.hem,
      length: hem + pleats.reduce((sum, { atHem }) => sum + atHem, 0),
      allowance,
      shorter: hangsShorter(layer),
      surplus,
      partner: layer.hem === 'bagged' ? partnerOf(gown.layers, layer) : undefined,
      roughCut: gores.flatMap((gore) => {
        const depth = gown.gores.find(({ name }) => name === gore)?.roughCut ?? 0;
        return depth > 0 ? [{ gore, depth }] : [];
      }),
    };
  });
  return {
    facts,
    findings: [...findings, ...biasFindings(bench), ...tuckFindings(bench), ...baggedFindings(bench, facts)],
  };
}

/** Satin by its weave where the spec names it, else by the cloth's name. */
export function isSatin({ name, weave }: Pick<Cloth, 'name' | 'weave'>): boolean {
  return /satin|charmeuse|duchess/i.test(weave ?? name);
}

/** The nearest layer with a bagged hem, outwards first: a lining is bagged to what lies on it. */
function partnerOf(layers: readonly Layer[], own: Layer): string | undefined {
  const index = layers.indexOf(own);
  const isBagged = ({ hem }: Layer): boolean => hem === 'bagged';
  const partner = layers.slice(index + 1).find(isBagged) ?? layers.slice(0, index).findLast(isBagged);
  return partner?.name;
}

/** What the outer of two hems bagged together is rolled inside by, mm: 2 to 3 (common practice). */
const ROLLED = 2.5;

function baggedFindings(bench: Bench, facts: readonly HemFacts[]): Diagnostic[] {
  const { gown, say } = bench;
  const bagged = gown.layers.filter((layer) => layer.hem === 'bagged');
  const findings = bagged
    .filter(({ name }) => facts.find(({ layer }) => layer === name)!.partner === undefined)
    .map((layer) => problems.baggedAlone(layer.place('hem'), layer.name));
  const first = bagged[0];
  if (bagged.length < 2 || first === undefined) return findings;
  const place = first.place('hem');
  const names = bagged.map((layer) => layer.name);
  if (!bagged.some((layer) => layer.gap !== undefined))
    findings.push(problems.baggedWithoutGap(place, names));
  const shorter = bagged.map(hangsShorter);
  const difference = Math.max(...shorter) - Math.min(...shorter);
  if (difference > 0) findings.push(problems.baggedNotEqual(place, names, say(difference), say(ROLLED)));
  return [...findings, ...gapFindings(bench)];
}

function gapFindings({ skirt, say }: Bench): Diagnostic[] {
  return skirt.layers.flatMap(({ layer, seams }) => {
    const { gap } = layer;
    if (gap === undefined) return [];
    // Of two that differ, the shorter one decides.
    const [seam] = seams.filter((own) => own.name === gap.at).sort((a, b) => a.length - b.length);
    const place = layer.place('gap');
    if (seam === undefined) {
      return [problems.gapWithoutSeam(place, say(gap.length), gap.at, layer.name)];
    }
    const end = (gap.from ?? 0) + gap.length;
    if (end >= seam.length) {
      return [problems.gapTooLong(place, say(gap.length), gap.at, say(seam.length))];
    }
    return [];
  });
}
