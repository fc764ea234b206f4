import type { DraftedBodice } from '../bodice/draft-asked.ts';
import type { StoneFacts } from '../stones/stone-facts.ts';
import type { BustleFacts } from './bustle/bustle-facts.ts';
import type { ClosureFacts } from './closure/closure-facts.ts';
import type { EdgingFacts } from './edging/edging-facts.ts';
import type { Bench } from './findings.ts';
import type { HemFacts } from './hem/hem-facts.ts';
import type { StripFacts } from './supplies/strip-facts.ts';
import type { WaistFacts } from './waist/waist-facts.ts';

/** All that the order of making is worked out from. */
export interface MakingFacts {
  readonly bench: Bench;
  readonly waist: WaistFacts;
  readonly hems: readonly HemFacts[];
  readonly strips: readonly StripFacts[];
  readonly closure: ClosureFacts | undefined;
  readonly edging: EdgingFacts | undefined;
  readonly bustle: BustleFacts | undefined;
  /** Where it is drafted and made here. */
  readonly bodice: DraftedBodice | undefined;
  readonly stones: readonly StoneFacts[];
  /** Grams with allowances, where every cloth's weight is given. */
  readonly grams: number | undefined;
}
