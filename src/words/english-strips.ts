import type { StepStrip } from '../making/order/work-parts.ts';
import type { Basics } from './english-basics.ts';
import { type StepText, text } from './step-text.ts';

export function stripStep(strip: StepStrip, basics: Basics): StepText {
  const { length, edge, usual } = basics;
  const where = `the ${strip.layer}’s ${edge(strip.along)}`;
  if (strip.kind === 'horsehair') {
    return text(`Sew ${stripWords(strip, basics)}, to ${where}.`, [
      strip.drawnIn !== undefined &&
        strip.drawnIn > 0 &&
        `Draw its upper edge in by its own thread, ${length(strip.drawnIn)} in all.`,
      `Lap the ends ${usual.lap} and cover them: they scratch.`,
    ]);
  }
  if (strip.kind === 'binding') return text(`Bind ${where} with ${stripWords(strip, basics)}.`);
  return text(`Sew ${stripWords(strip, basics)}, along ${where}.`);
}

export function stripWords({ kind, width, length: long }: StepStrip, { length, stripName }: Basics): string {
  return `the ${stripName(kind)}, ${width === undefined ? '' : `${length(width)} wide and `}${length(long)} long`;
}
