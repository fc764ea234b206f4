import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';
import type { GownMeasures, SeamMeasures } from './measure-gown.ts';

const mm = (length: number): string => `${length.toFixed(1)} mm`;
const inLayer = (layer: string | undefined): string => (layer === undefined ? '' : `in layer ${layer} `);
const degrees = (angle: number): string => `${((angle * 180) / Math.PI).toFixed(1)}°`;

/** @param layer where it is not cut as the gown itself */
export function seamsDiffer(span: Span, seam: SeamMeasures, layer?: string): Diagnostic {
  const [a, b] = seam.lengths;
  return {
    code: 'seams-differ',
    level: 'error',
    span,
    message: `${inLayer(layer)}the two sides of seam ${seam.name} differ: ${seam.gores[0]} ${mm(a)}, ${seam.gores[1]} ${mm(b)}`,
    why: 'The longer side would have to be eased in, which puckers all the way down the skirt.',
    hint: 'Check the lengths at this station and the widths of both gores.',
  };
}

export function anglesDoNotClose(
  span: Span,
  name: string,
  edge: 'hem' | 'waist',
  sum: number,
  layer?: string,
): Diagnostic {
  return {
    code: `${edge}-not-smooth`,
    level: 'error',
    span,
    message: `${inLayer(layer)}the ${edge} breaks at ${name}: the two angles add to ${degrees(sum)} instead of 180°`,
    why: `Sewn together the ${edge} would have a corner at the seam.`,
    hint: 'Check the lengths and drops at this station against those beside it.',
  };
}

export function layerMissesWaist(span: Span, layer: string, by: number): Diagnostic {
  return {
    code: 'layer-misses-waist-seam',
    level: 'error',
    span,
    message: `as drafted, layer ${layer} is ${mm(Math.abs(by))} ${by > 0 ? 'longer' : 'shorter'} than the waist seam all round`,
    why: 'It would have to be eased or stretched onto the bodice.',
    hint: 'Cut it less much smaller or less full, or soften the drop of the edge and the change from girth to girth.',
  };
}

/** A godet, a flounce or a strip that does not meet what it is sewn to. */
export function partMissesSeam(
  span: Span,
  name: string,
  layer: string,
  { difference, hemAngle }: { readonly difference: number; readonly hemAngle: number },
): Diagnostic {
  return {
    code: 'part-misses-seam',
    level: 'error',
    span,
    message: `${name} (layer ${layer}) does not meet what it is sewn to: a side is off by ${mm(difference)}, the angles at its hem add to ${degrees(hemAngle)}`,
    why: 'Its longer side would pucker, or the sewn hem have a corner.',
    hint: 'Make it less wide, or let its seam run more nearly square to the hem.',
  };
}

export function hemFarFromSquare(span: Span, seam: SeamMeasures): Diagnostic {
  return {
    code: 'hem-far-from-square',
    level: 'warning',
    span,
    message: `the hem meets seam ${seam.name} ${degrees(Math.abs(seam.offSquare))} off square`,
    why: 'A hem so steep is cut far off the grain there: it stretches, and a turned hem must be eased a great deal.',
    hint: 'Let the train begin earlier, make it shorter, or spread it over more gores.',
  };
}

export function outlineCrossesItself(span: Span, gore: string, line: string): Diagnostic {
  return {
    code: 'outline-crosses-itself',
    level: 'error',
    span,
    message: `the ${line} of gore ${gore} crosses itself`,
    why: 'Such a piece cannot be cut.',
    hint: 'Check the widths, lengths and drops of this gore; one of them does not fit the others.',
  };
}

export function topsMissBodice(span: Span, sewn: number, bodice: number, measures: GownMeasures): Diagnostic {
  return {
    code: 'tops-miss-waist-seam',
    level: 'error',
    span,
    message: `the gores' tops measure ${mm(sewn)} all round, but the waist seam measures ${mm(bodice)}`,
    why: 'The skirt would have to be eased or stretched onto the bodice.',
    hint: 'Make the tops add up to the waist seam, within 1.5 mm.',
    table: [['gore', 'top (mm)'], ...measures.gores.map((gore) => [gore.name, gore.top.toFixed(1)])],
  };
}
