import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Found } from '../findings.ts';
import type { MakingFacts } from '../making-facts.ts';
import * as problems from '../problems.ts';
import { cautioned, type PageCautions, pageCautions } from './cautioned.ts';
import { prerequisiteOrder } from './prerequisite-order.ts';
import type { Step, UnplacedStep } from './step.ts';
import { bodiceSteps } from './steps-of-bodice.ts';
import { finishingSteps } from './steps-of-finishing.ts';
import { foldSteps } from './steps-of-folds.ts';
import { hemSteps } from './steps-of-hems.ts';
import { partSteps } from './steps-of-parts.ts';
import { layerSteps } from './steps-of-seams.ts';
import { wrapSteps } from './steps-of-wrap.ts';
import { clothSteps } from './steps-on-cloth.ts';
import { waistSteps } from './steps-to-waist.ts';

/**
 * Every construction lists its own steps, and says of each what comes before it and what has to wait for it. Where the
 * construction leaves it open, the order is that of this list.
 */
const CONSTRUCTIONS: readonly ((facts: MakingFacts) => readonly UnplacedStep[])[] = [
  bodiceSteps,
  clothSteps,
  layerSteps,
  foldSteps,
  partSteps,
  finishingSteps,
  wrapSteps,
  waistSteps,
  hemSteps,
];

/** The steps, and the cautions that stand beside them and apart. */
export interface Making {
  readonly order: readonly Step[];
  readonly cautions: PageCautions;
}

/**
 * The order of making: every step of this gown with what it waits for, put in order. The rules that makers most often
 * break are prerequisites here: scraps are tested before cutting; the gown hangs, with all that is sewn to it, and is
 * levelled and trimmed before a hem is closed; braid goes on before bagging; layers below the closure are seamed one by
 * one; the lining is felled to the closure last.
 */
export function orderOfMaking(facts: MakingFacts): Found<Making> {
  const steps = CONSTRUCTIONS.flatMap((stepsOf) => stepsOf(facts));
  const { order, stuck } = prerequisiteOrder(steps);
  const findings: Diagnostic[] =
    stuck.length === 0
      ? []
      : [problems.orderImpossible(facts.bench.gown.place('layers'), stuck.map((one) => one.id).join(', '))];
  return { facts: { order: cautioned(order, facts), cautions: pageCautions(order, facts) }, findings };
}
