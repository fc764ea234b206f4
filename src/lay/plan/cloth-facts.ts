import type { Spec } from '../../gown-file/spec.ts';
import type { ClothFacts } from './lay-plan.ts';

/** A layer's cloth as it lies on the table: what is left between the selvedges, and what edging is cut off first. */
export function clothFacts(spec: Spec, name: string): ClothFacts {
  const cloth = spec.cloths[name];
  if (cloth === undefined) throw new Error(`no cloth is named ${name}`);
  const edgingDepth = clothOfOwnEdging(spec) === name ? (spec.edging?.depth ?? 0) : 0;
  return {
    width: cloth.width,
    selvedge: cloth.selvedge,
    edgingDepth,
    usable: cloth.width - 2 * cloth.selvedge - 2 * edgingDepth,
    oneWay: cloth.oneWay,
    repeatDown: cloth.repeatDown,
    repeatAcross: cloth.repeatAcross,
  };
}

/** The cloth whose own edges are cut off as edging; undefined where edging is bought in. */
function clothOfOwnEdging(spec: Spec): string | undefined {
  if (spec.edging?.from !== 'own-edges') return undefined;
  const { name, cloth } = spec.edging;
  return cloth ?? spec.layers.find((layer) => layer.edging === name)?.cloth;
}
