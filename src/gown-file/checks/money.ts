import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { valueText } from '../../diagnostics/value-text.ts';
import * as problems from '../../diagnostics/workroom-section-problems.ts';
import type { Page } from './page.ts';

/** Prices without a currency, stages that do not make a whole, and a client who can be told by name. */
export function checkMoney(page: Page): Diagnostic[] {
  return [...checkCurrency(page), ...checkStages(page), ...checkClient(page)];
}

function checkCurrency(page: Page): Diagnostic[] {
  if (page.has('currency')) return [];
  const first = page.placeOfKind('money');
  return first === undefined ? [] : [problems.noCurrency(first)];
}

function checkStages(page: Page): Diagnostic[] {
  const { deposit = 0, stages } = page.sketch.labour ?? {};
  const parts = Object.values(stages ?? {});
  if (parts.length === 0 || parts.some((part) => part === undefined)) return [];
  const whole = parts.reduce<number>((sum, part) => sum + (part ?? 0), deposit);
  return Math.abs(whole - 1) > 1e-9
    ? [problems.stagesNotWhole(page.keyAt('labour', 'stages'), valueText('share', whole, undefined))]
    : [];
}

function checkClient(page: Page): Diagnostic[] {
  const client = page.sketch.client;
  return client !== undefined && looksLikeAName(client)
    ? [problems.clientByName(page.at('client'), client)]
    : [];
}

/** A code has a digit or is all capitals: `LAN-07`, `LAN`. Words, and addresses of mail, are people. */
function looksLikeAName(client: string): boolean {
  if (client.includes('@')) return true;
  const words = client.split(/[\s,]+/).filter((word) => /\p{L}{2,}/u.test(word));
  const digits = /\p{N}/u.test(client);
  return !digits && (words.length > 1 || words.some((word) => /\p{Ll}/u.test(word) || word.length > 6));
}
