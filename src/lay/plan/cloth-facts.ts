import type { Cloth } from '../../gown/cloth.ts';
import type { Edging } from '../../gown/sections.ts';
import type { ClothFacts } from './lay-plan.ts';

/** A layer's cloth as it lies on the table: what is left between the selvedges, and what edging is cut off first. */
export function clothFacts(cloth: Cloth, edging: Edging | undefined): ClothFacts {
  const cutOff = edging?.from === 'own-edges' && edging.cloth?.name === cloth.name;
  const edgingDepth = cutOff ? (edging.depth ?? 0) : 0;
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
