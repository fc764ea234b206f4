import type { Units } from '../diagnostics/units.ts';
import type { StepWork } from '../making/order/step.ts';
import { amountText, exactAmountText, moneyText } from '../money/money.ts';
import { englishBasics } from './english-basics.ts';
import { STEP_CAUTIONS, WEARER_CAUTIONS } from './english-cautions.ts';
import { englishPages } from './english-pages.ts';
import { englishScreen } from './english-screen.ts';
import { stepText } from './english-steps.ts';

/**
 * All text of the papers, bound to the units of one spec. Another language is another file that gives the same; the
 * compiler tells what is missing.
 */
export function english(units: Units) {
  const basics = englishBasics(units);
  return {
    ...basics,
    ...englishPages(basics),
    screen: englishScreen(basics),
    step: (work: StepWork) => stepText(work, basics),
    stepCautions: STEP_CAUTIONS,
    wearer: WEARER_CAUTIONS,
    money: moneyText,
    amount: amountText,
    price: exactAmountText,
  };
}

export type Words = ReturnType<typeof english>;
