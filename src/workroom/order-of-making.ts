import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { placeOf } from '../spec/spec.ts';
import type { BustleFacts } from './bustle-facts.ts';
import type { ClosureFacts } from './closure-facts.ts';
import type { EdgingFacts } from './edging-facts.ts';
import type { Bench, Found } from './findings.ts';
import type { HemFacts } from './hem-facts.ts';
import { prerequisiteOrder } from './prerequisite-order.ts';
import * as problems from './problems.ts';
import type { Step } from './step.ts';
import { hemSteps } from './steps-of-hems.ts';
import { clothSteps } from './steps-on-cloth.ts';
import { bodySteps } from './steps-to-waist.ts';
import type { StripFacts } from './strip-facts.ts';
import type { WaistFacts } from './waist-facts.ts';

/** All that the order of making is worked out from. */
export interface MakingFacts {
  readonly bench: Bench;
  readonly waist: WaistFacts;
  readonly hems: readonly HemFacts[];
  readonly strips: readonly StripFacts[];
  readonly closure: ClosureFacts | undefined;
  readonly edging: EdgingFacts | undefined;
  readonly bustle: BustleFacts | undefined;
  /** Grams with allowances, where every cloth's weight is given. */
  readonly grams: number | undefined;
}

export type UnplacedStep = Omit<Step, 'number'>;

/**
 * The order of making: every step of this gown with what it waits for, put in order. The rules that makers most often
 * break are prerequisites here: scraps are tested before cutting; the gown hangs, is levelled and trimmed before a hem
 * is closed; braid goes on before bagging; layers below the closure are seamed one by one; the lining is felled to the
 * closure last.
 */
export function orderOfMaking(facts: MakingFacts): Found<readonly Step[]> {
  const steps = [...clothSteps(facts), ...bodySteps(facts), ...hemSteps(facts)];
  const { order, stuck } = prerequisiteOrder(steps);
  const findings: Diagnostic[] =
    stuck.length === 0
      ? []
      : [
          problems.orderImpossible(
            placeOf(facts.bench.spec, 'layers'),
            stuck.map((step) => step.id).join(', '),
          ),
        ];
  return { facts: order.map((step, index) => ({ ...step, number: index + 1 })), findings };
}
