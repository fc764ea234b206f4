import { HARMS, type Harm } from '../harms.ts';
import type { MakingFacts } from '../making-facts.ts';
import type { CautionKind } from './caution-kind.ts';
import type { Step, UnplacedStep } from './step.ts';

/** Cautions that stand by themselves, not at a step. */
export interface PageCautions {
  /** At the head of the job sheet. */
  readonly jobSheet: readonly CautionKind[];
  /** On the client's pages. */
  readonly client: readonly CautionKind[];
}

/** Steps in their places, numbered, each with the cautions that stand there. */
export function cautioned(order: readonly UnplacedStep[], facts: MakingFacts): Step[] {
  const present = HARMS.filter(({ isIn }) => isIn(facts));
  return order.map((step, place) => ({
    ...step,
    number: place + 1,
    cautions: present
      .filter((harm) => standsAt(harm, step) && isFirst(harm, order, place))
      .map(({ kind }) => kind),
  }));
}

/** A harm that comes with some step is not there without it. */
export function pageCautions(order: readonly UnplacedStep[], facts: MakingFacts): PageCautions {
  const present = HARMS.filter(
    (harm) => harm.isIn(facts) && (harm.step === undefined || order.some((step) => standsAt(harm, step))),
  );
  return {
    jobSheet: present.filter((harm) => harm.jobSheet).map(({ kind }) => kind),
    client: present.filter((harm) => harm.client).map(({ kind }) => kind),
  };
}

function standsAt({ step }: Harm, { work }: UnplacedStep): boolean {
  return step?.at(work) ?? false;
}

function isFirst(harm: Harm, order: readonly UnplacedStep[], place: number): boolean {
  return !order.slice(0, place).some((step) => standsAt(harm, step));
}
