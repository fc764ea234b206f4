import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { allowanceAt } from '../../gown/layer.ts';
import { type ClothSpec, type HemFinish, placeOf } from '../../gown-file/spec.ts';
import { type Bench, type Found, percentText } from '../findings.ts';
import * as problems from '../problems.ts';
import { type HemSurplus, hemSurplus, MOST_SURPLUS, MOST_SURPLUS_ON_SATIN } from './hem-surplus.ts';

/** One layer's hem as it is finished. mm. */
export interface HemFacts {
  readonly layer: string;
  readonly finish: HemFinish;
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
  const { spec, skirt, say } = bench;
  const findings: Diagnostic[] = [];
  const facts = skirt.layers.map(({ spec: layer, layer: own, hem, flare, gores }, index): HemFacts => {
    const allowance = allowanceAt(own, 'hem');
    const surplus = layer.hem === 'turned' && allowance > 0 ? hemSurplus(hem, flare, allowance) : undefined;
    const satin = isSatin(layer.cloth, spec.cloths[layer.cloth]);
    const most = satin ? MOST_SURPLUS_ON_SATIN : MOST_SURPLUS;
    if (surplus !== undefined && surplus.share > most) {
      findings.push(
        problems.hemSurplusShows(placeOf(spec, 'layers', index, 'hem'), {
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
      length: hem,
      allowance,
      shorter: layer.shorter,
      surplus,
      partner: layer.hem === 'bagged' ? partnerOf(spec.layers, index) : undefined,
      roughCut: gores.flatMap((gore) => {
        const depth = spec.roughCut[gore] ?? 0;
        return depth > 0 ? [{ gore, depth }] : [];
      }),
    };
  });
  return { facts, findings: [...findings, ...baggedFindings(bench, facts)] };
}

/** Satin by its weave where the spec names it, else by the cloth's name. */
export function isSatin(name: string, cloth: ClothSpec | undefined): boolean {
  return /satin|charmeuse|duchess/i.test(cloth?.weave ?? name);
}

/** The nearest layer with a bagged hem, outwards first: a lining is bagged to what lies on it. */
function partnerOf(layers: Bench['spec']['layers'], index: number): string | undefined {
  const bagged = layers
    .map((layer, i) => ({ layer, i }))
    .filter(({ layer, i }) => layer.hem === 'bagged' && i !== index);
  const outward = bagged.find(({ i }) => i > index);
  return (outward ?? bagged.findLast(({ i }) => i < index))?.layer.name;
}

/** What the outer of two hems bagged together is rolled inside by, mm: 2 to 3 (common practice). */
const ROLLED = 2.5;

function baggedFindings(bench: Bench, facts: readonly HemFacts[]): Diagnostic[] {
  const { spec, say } = bench;
  const findings: Diagnostic[] = [];
  const bagged = spec.layers.filter((layer) => layer.hem === 'bagged');
  for (const [index, layer] of spec.layers.entries()) {
    if (layer.hem !== 'bagged') continue;
    if (facts[index]!.partner === undefined) {
      findings.push(problems.baggedAlone(placeOf(spec, 'layers', index, 'hem'), layer.name));
    }
  }
  const first = bagged[0];
  if (bagged.length < 2 || first === undefined) return findings;
  const place = placeOf(spec, 'layers', spec.layers.indexOf(first), 'hem');
  const names = bagged.map((layer) => layer.name);
  if (!bagged.some((layer) => layer.gap !== undefined))
    findings.push(problems.baggedWithoutGap(place, names));
  const shorter = bagged.map((layer) => layer.shorter);
  const difference = Math.max(...shorter) - Math.min(...shorter);
  if (difference > 0) findings.push(problems.baggedNotEqual(place, names, say(difference), say(ROLLED)));
  return [...findings, ...gapFindings(bench)];
}

function gapFindings({ spec, skirt, say }: Bench): Diagnostic[] {
  return spec.layers.flatMap((layer, index) => {
    const gap = layer.gap;
    if (gap === undefined) return [];
    // Of two that differ, the shorter one decides.
    const [seam] = (skirt.layers[index]?.seams ?? [])
      .filter((own) => own.name === gap.at)
      .sort((a, b) => a.length - b.length);
    const place = placeOf(spec, 'layers', index, 'gap');
    if (seam === undefined) {
      return [problems.gapDoesNotFit(place, say(gap.length), gap.at, `${layer.name} has no seam there`)];
    }
    const end = (gap.from ?? 0) + gap.length;
    if (end >= seam.length) {
      return [problems.gapDoesNotFit(place, say(gap.length), gap.at, `the seam is ${say(seam.length)} long`)];
    }
    return [];
  });
}
