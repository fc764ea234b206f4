import type { DraftedBodice } from '../../bodice/draft-asked.ts';
import type * as sections from '../../gown/sections.ts';
import type { BustleFacts } from '../bustle/bustle-facts.ts';
import type { ClosureFacts } from '../closure/closure-facts.ts';
import type { Bench } from '../findings.ts';
import { type BodiceNotion, bodiceNotions, isOneZip } from './bodice-notions.ts';
import type { StripFacts } from './strip-facts.ts';
import type { LayerThread } from './thread-facts.ts';

/** One thing to have at hand before sewing. Lengths mm. */
export type Notion =
  | { readonly kind: 'given'; readonly notion: sections.Notion }
  | BodiceNotion
  | { readonly kind: 'zip'; readonly stock: number; readonly shortenTo: number }
  | { readonly kind: 'hook-above-zip' }
  | { readonly kind: 'hooks'; readonly opening: number }
  | { readonly kind: 'wrap'; readonly fastened: 'ties' | 'buttons' | 'hooks' | 'snaps' }
  | { readonly kind: 'petersham'; readonly length: number }
  | { readonly kind: 'strip'; readonly strip: StripFacts }
  | { readonly kind: 'bustle-points'; readonly over: boolean; readonly number: number; readonly tape: number }
  | { readonly kind: 'thread'; readonly cloth: string; readonly length: number };

/** What a petersham waist stay needs beyond the waist, to turn its ends and to fasten, mm. From memory. */
const STAY_ENDS = 60;

/**
 * What the spec lists, and what the gown's own figures ask for. A thing that the spec's list already names is not
 * listed again.
 */
export function notionsFor(
  { gown, skirt }: Bench,
  parts: {
    readonly closure: ClosureFacts | undefined;
    readonly bustle: BustleFacts | undefined;
    readonly strips: readonly StripFacts[];
    readonly thread: readonly LayerThread[];
    readonly bodice: DraftedBodice | undefined;
  },
): Notion[] {
  const given = gown.notions;
  const listed = (words: RegExp): boolean => given.some(({ name }) => words.test(name));
  const { closure, bustle } = parts;
  const derived: Notion[] = [];
  const through = parts.bodice !== undefined && closure !== undefined && isOneZip(parts.bodice, closure);
  if (closure?.zip !== undefined && closure.opening !== undefined && !through && !listed(/\bzip/i)) {
    derived.push({ kind: 'zip', stock: closure.zip.stock, shortenTo: closure.opening });
  }
  if (closure?.kind === 'zip' && closure.starts > 0 && !listed(/\bhooks? and (bar|eye)|\bhook-and-/i)) {
    derived.push({ kind: 'hook-above-zip' });
  }
  if (closure?.kind === 'hooks' && closure.opening !== undefined && !closesWithHooks(given))
    derived.push({ kind: 'hooks', opening: closure.opening });
  const isStayed = gown.waist === undefined || gown.waist.finish === 'stay';
  if (isStayed && !listed(/petersham|waist ?(stay|tape)/i))
    derived.push({ kind: 'petersham', length: skirt.waist + (gown.wrap?.overlap ?? 0) + STAY_ENDS });
  derived.push(...wrapNotions(gown, listed));
  if (parts.bodice !== undefined) derived.push(...bodiceNotions(parts.bodice, closure, listed));
  for (const strip of parts.strips) if (!strip.isCut) derived.push({ kind: 'strip', strip });
  if (bustle !== undefined && bustle.number > 0 && !listed(/bustle/i)) {
    const tape = bustle.points.reduce((sum, point) => sum + 2 * bustle.loop * point.copies, 0);
    derived.push({ kind: 'bustle-points', over: bustle.kind === 'over', number: bustle.number, tape });
  }
  derived.push(...threadNotions(parts.thread));
  return [...given.map((notion): Notion => ({ kind: 'given', notion })), ...derived];
}

/** What holds a wrap, where it is not cut and the list does not name it. */
function wrapNotions({ wrap }: Bench['gown'], listed: (words: RegExp) => boolean): Notion[] {
  if (wrap === undefined || wrap.ties !== undefined) return [];
  const words = { ties: /\btie|ribbon/i, buttons: /button/i, hooks: /\bhook/i, snaps: /\bsnap|press-stud/i };
  return listed(words[wrap.fastened]) ? [] : [{ kind: 'wrap', fastened: wrap.fastened }];
}

/** Hooks for a bustle are other hooks. */
function closesWithHooks(given: readonly sections.Notion[]): boolean {
  return given.some(({ name }) => /\bhook|\bsnap|\bpress-stud/i.test(name) && !/bustle/i.test(name));
}

/** Thread by cloth: whatever is cut from it is sewn with one. */
function threadNotions(thread: readonly LayerThread[]): Notion[] {
  const lines = new Map<string, number>();
  for (const { cloth, need } of thread) lines.set(cloth, (lines.get(cloth) ?? 0) + need.toBuy);
  return [...lines].map(([cloth, length]): Notion => ({ kind: 'thread', cloth, length }));
}
