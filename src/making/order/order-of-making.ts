import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Found } from '../findings.ts';
import type { MakingFacts } from '../making-facts.ts';
import * as problems from '../problems.ts';
import { prerequisiteOrder } from './prerequisite-order.ts';
import type { Step } from './step.ts';
import { hemSteps } from './steps-of-hems.ts';
import { clothSteps } from './steps-on-cloth.ts';
import { bodySteps } from './steps-to-waist.ts';

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
      : [problems.orderImpossible(facts.bench.gown.place('layers'), stuck.map((step) => step.id).join(', '))];
  return { facts: order.map((step, index) => ({ ...step, number: index + 1 })), findings };
}
