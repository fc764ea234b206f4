import type { StepId } from './step-id.ts';
import type { FinishingWork } from './work-of-finishing.ts';
import type { FoldWork } from './work-of-folds.ts';
import type { BodiceWork } from './work-on-bodice.ts';
import type { ClothWork } from './work-on-cloth.ts';
import type { HemWork } from './work-on-hems.ts';
import type { WaistWork } from './work-to-waist.ts';

/** Cautions that a step can carry; their words are with the rest of the papers' text. */
export type CautionKind =
  | 'floor-cutting'
  | 'blades'
  | 'needle-zip'
  | 'needle-bone'
  | 'many-plies'
  | 'sequins'
  | 'braid-heat'
  | 'weight'
  | 'long-hem'
  | 'net-flame'
  | 'pins'
  | 'nickel'
  | 'tight-lacing';

/** One step of the making: what it is, of which layers, with the figures that its sentence needs. */
export type StepWork = BodiceWork | ClothWork | WaistWork | FoldWork | HemWork | FinishingWork;
export type StepKind = StepWork['kind'];

/** A step as its construction asks for it: what has to be done before it, and what has to wait for it. */
export interface UnplacedStep {
  readonly id: StepId;
  readonly work: StepWork;
  readonly after: readonly StepId[];
  readonly before: readonly StepId[];
  readonly cautions: readonly CautionKind[];
  /** Nothing goes on before this is seen to: a fitting, a hanging. */
  readonly hold: boolean;
}

/** A step in its place. */
export interface Step extends UnplacedStep {
  readonly number: number;
}

/** What a step may also say of itself. */
type StepRest = Partial<Pick<UnplacedStep, 'before' | 'cautions' | 'hold'>>;

export function step(
  id: StepId,
  after: readonly StepId[],
  work: StepWork,
  { before = [], cautions = [], hold = false }: StepRest = {},
): UnplacedStep {
  return { id, after, before, work, cautions, hold };
}
