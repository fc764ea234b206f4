import type { CautionKind } from './caution-kind.ts';
import type { StepId } from './step-id.ts';
import type { FinishingWork } from './work-of-finishing.ts';
import type { FoldWork } from './work-of-folds.ts';
import type { WrapWork } from './work-of-wrap.ts';
import type { BodiceWork } from './work-on-bodice.ts';
import type { ClothWork } from './work-on-cloth.ts';
import type { HemWork } from './work-on-hems.ts';
import type { WaistWork } from './work-to-waist.ts';

/** One step of the making: what it is, of which layers, with the figures that its sentence needs. */
export type StepWork = BodiceWork | ClothWork | WaistWork | FoldWork | HemWork | FinishingWork | WrapWork;
/** A step as its construction asks for it: what has to be done before it, and what has to wait for it. */
export interface UnplacedStep {
  readonly id: StepId;
  readonly work: StepWork;
  readonly after: readonly StepId[];
  readonly before: readonly StepId[];
  /** Nothing goes on before this is seen to: a fitting, a hanging. */
  readonly hold: boolean;
}

/** A step in its place. */
export interface Step extends UnplacedStep {
  readonly number: number;
  readonly cautions: readonly CautionKind[];
}

/** What a step may also say of itself. */
type StepRest = Partial<Pick<UnplacedStep, 'before' | 'hold'>>;

export function step(
  id: StepId,
  after: readonly StepId[],
  work: StepWork,
  { before = [], hold = false }: StepRest = {},
): UnplacedStep {
  return { id, after, before, work, hold };
}
