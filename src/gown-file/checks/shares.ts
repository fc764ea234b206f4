import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/shaping-problems.ts';
import { valueText } from '../../diagnostics/value-text.ts';
import type { Page } from './page.ts';

/** Shares of the petticoat's girths: all gores or none, and a whole at every level below the waist. */
export function checkShares(page: Page): Diagnostic[] {
  const gores = page.sketch.gores ?? [];
  const keys = gores.map((gore) => (gore.onFold === true ? 'half-share' : 'share'));
  const shares = gores.map((gore, i) => (page.has('gores', i, keys[i]!) ? gore.share : undefined));
  const index = shares.findIndex((share) => share !== undefined);
  if (index === -1) return [];
  const span = page.keyAt('gores', index, keys[index]!);
  if (!page.has('petticoat', 'girths')) return [problems.shareWithoutGirths(span)];
  const left = gores.flatMap((gore, i) => (shares[i] === undefined ? (gore.name ?? []) : []));
  if (left.length > 0) return [problems.sharesNotAll(span, left)];
  const levels = (page.sketch.petticoat?.girths ?? []).filter((level) => (level.down ?? 0) > 0).length;
  for (const [i, share] of shares.entries()) {
    const place = page.keyAt('gores', i, keys[i]!);
    if (Array.isArray(share) && share.length !== levels)
      return [problems.sharesOfOtherLevels(place, share.length, levels)];
  }
  return wholeAtEachLevel(page, shares, levels, span);
}

function wholeAtEachLevel(
  page: Page,
  shares: readonly (number | readonly (number | undefined)[] | undefined)[],
  levels: number,
  span: Diagnostic['span'],
): Diagnostic[] {
  for (let level = 0; level < levels; level++) {
    const parts = shares.map((share) => (typeof share === 'object' ? share[level] : share));
    if (parts.some((part) => part === undefined)) return [];
    const whole = parts.reduce<number>((sum, part) => sum + (part ?? 0), 0) * (page.mirrored ? 2 : 1);
    if (Math.abs(whole - 1) > SHARES_AGREE)
      return [problems.sharesNotWhole(span, valueText('share', whole, undefined))];
  }
  return [];
}

/** Shares may miss a whole by this: a third is written 33.33%. Larger would show at a hem of 5 m; smaller refuses rounding. */
const SHARES_AGREE = 0.0005;
