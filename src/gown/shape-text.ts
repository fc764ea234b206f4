import type { Span } from '../diagnostics/diagnostic.ts';
import type { Gown } from './gown.ts';

/** What a section says that changes neither a cut nor how cloth falls. */
export const TELLS_NO_SHAPE: ReadonlySet<string> = new Set([
  'content',
  'client',
  'notes',
  'labour',
  'notions',
  'currency',
  'dates',
  'paper',
  'price',
  'pricedPer',
  'soldBy',
  'supplier',
  'colour',
  'dyeLot',
]);

/** All that decides how a gown is cut and hangs, as text: what was asked for, since all else is worked out from that. */
export function shapeText(asked: Gown): string {
  return JSON.stringify(asked, shapeAlone);
}

/** Only of sections of the file, which know their place there: a gore may be called `notes`. */
function shapeAlone(this: { readonly place?: unknown }, key: string, value: unknown): unknown {
  if (TELLS_NO_SHAPE.has(key) && typeof this.place === 'function') return undefined;
  if (isSpan(value)) return undefined;
  return Object.is(value, -0) ? '-0' : value;
}

/** Where something stands in the file, with the whole file. */
function isSpan(value: unknown): value is Span {
  return typeof value === 'object' && value !== null && 'source' in value && 'start' in value;
}
