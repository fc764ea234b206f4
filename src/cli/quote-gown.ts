import { sortDiagnostics } from '../diagnostics/place.ts';
import type { Amount } from '../workroom/money.ts';
import { amountText } from '../workroom/money.ts';
import type { Pricing } from '../workroom/pricing.ts';
import { notInPrice, quoteText } from '../workroom/quote-text.ts';
import { english, type Words } from '../workroom/words/english.ts';
import { workroom } from '../workroom/workroom.ts';
import { ExitStatus } from './exit-status.ts';
import { findingsJson } from './findings-json.ts';
import type { Machine } from './machine.ts';
import { planGownLays } from './plan-gown-lays.ts';
import { hasErrors, printFindings } from './print-findings.ts';
import { readGown } from './read-gown.ts';

export interface QuoteFlags {
  readonly json?: boolean;
}

/** `quote`: what the client pays, from the lays, the notions and the hours. */
export async function quoteGown(file: string, flags: QuoteFlags, machine: Machine): Promise<ExitStatus> {
  const { gown, diagnostics: found } = readGown(file, machine);
  if (gown === undefined || hasErrors(found)) {
    if (flags.json) machine.out(`${JSON.stringify({ findings: findingsJson(found) }, null, 2)}\n`);
    else printFindings(found, machine);
    return ExitStatus.specWrong;
  }
  const { lays, diagnostics: laid } = await planGownLays(gown, 'quick', machine);
  const { facts } = workroom(gown, lays);
  const diagnostics = sortDiagnostics([...found, ...laid]);
  const words = english(gown.spec.units);
  if (flags.json) {
    const quote = quoteJson(facts.pricing, words);
    machine.out(
      `${JSON.stringify({ gown: gown.spec.gown, ...quote, findings: findingsJson(diagnostics) }, null, 2)}\n`,
    );
  } else {
    printFindings(diagnostics, machine);
    machine.out(quoteText(gown.spec, facts.pricing, words));
  }
  return hasErrors(diagnostics) ? ExitStatus.specWrong : ExitStatus.done;
}

/** Amounts are text with their decimals, so that no script reads them as binary fractions. */
function quoteJson(pricing: Pricing, words: Words): object {
  const { quote } = pricing;
  if (quote === undefined) return { quote: null };
  const amounts = { net: quote.net, tax: quote.tax, total: quote.total };
  return {
    quote: {
      currency: quote.currency ?? null,
      ...Object.fromEntries(Object.entries(amounts).map(([name, amount]) => [name, amountText(amount)])),
      stages: quote.stages.map(({ name, amount }: { name: string; amount: Amount }) => ({
        name,
        amount: amountText(amount),
      })),
      notInPrice: notInPrice(pricing, words),
    },
  };
}
