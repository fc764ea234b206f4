import type { StepWork } from '../making/order/step.ts';
import type { Basics } from './english-basics.ts';
import { BODICE_WRITERS } from './english-bodice.ts';
import { CLOTH_WRITERS } from './english-cloth-steps.ts';
import { FINISHING_WRITERS } from './english-finishing-steps.ts';
import { FOLD_WRITERS } from './english-fold-steps.ts';
import { HEM_WRITERS } from './english-hem-steps.ts';
import { WAIST_WRITERS } from './english-waist-steps.ts';
import { WRAP_WRITERS } from './english-wrap-steps.ts';
import type { StepText, StepWriters } from './step-text.ts';

const WRITERS: StepWriters<StepWork> = {
  ...BODICE_WRITERS,
  ...CLOTH_WRITERS,
  ...WAIST_WRITERS,
  ...FOLD_WRITERS,
  ...HEM_WRITERS,
  ...FINISHING_WRITERS,
  ...WRAP_WRITERS,
};

export function stepText(work: StepWork, basics: Basics): StepText {
  const write = WRITERS[work.kind] as (work: StepWork, basics: Basics) => StepText;
  return write(work, basics);
}
