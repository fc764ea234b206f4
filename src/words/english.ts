import type { Units } from '../diagnostics/units.ts';
import type { PieceRemark } from '../draft/piece-remark.ts';
import type { CautionKind } from '../making/order/caution-kind.ts';
import type { StepWork } from '../making/order/step.ts';
import { amountText, exactAmountText, moneyText } from '../money/money.ts';
import { type Basics, englishBasics } from './english-basics.ts';
import { type CautionText, JOB_CAUTIONS, WEARER_CAUTIONS } from './english-cautions.ts';
import { englishPages } from './english-pages.ts';
import { listedRemark } from './english-remarks.ts';
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
    /** For whoever makes it. */
    caution: (kind: CautionKind, grams: number | undefined) => cautionText(JOB_CAUTIONS[kind], basics, grams),
    /** For whoever wears it. */
    wearerCaution: (kind: CautionKind, grams: number | undefined) =>
      cautionText(WEARER_CAUTIONS[kind], basics, grams),
    remark: (remark: PieceRemark) => listedRemark(remark, basics.length),
    money: moneyText,
    amount: amountText,
    price: exactAmountText,
  };
}

function cautionText(text: CautionText | undefined, { weight }: Basics, grams: number | undefined): string {
  if (typeof text !== 'function') return text ?? '';
  return text(grams === undefined ? undefined : weight(grams));
}

export type Words = ReturnType<typeof english>;
