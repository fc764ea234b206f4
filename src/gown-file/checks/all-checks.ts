import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { checkAboveWaist } from './above-waist.ts';
import { checkAssumed } from './assumed.ts';
import { checkCloths } from './cloths.ts';
import { checkDarts } from './darts.ts';
import { checkFinishing } from './finishing.ts';
import { checkFittedTo } from './fitted-to.ts';
import { checkFullness } from './fullness.ts';
import { checkGores } from './gores.ts';
import { checkJoins } from './joins.ts';
import { checkLengths } from './lengths.ts';
import { checkMoney } from './money.ts';
import { checkNames } from './names.ts';
import type { Page } from './page.ts';
import { checkParts } from './parts.ts';
import { checkPetticoats } from './petticoats.ts';
import { checkPleats } from './pleats.ts';
import { checkReferences } from './references.ts';
import { checkShares } from './shares.ts';
import { checkStations } from './stations.ts';
import { checkStones } from './stones.ts';
import { checkTops } from './tops.ts';
import { checkWorkroom } from './workroom.ts';
import { checkWrap } from './wrap.ts';

/** Everything that can be judged from the spec alone, whether or not all of it could be read. */
export function allChecks(page: Page): Diagnostic[] {
  return [
    checkNames,
    checkGores,
    checkStations,
    checkTops,
    checkAboveWaist,
    checkLengths,
    checkReferences,
    checkJoins,
    checkParts,
    checkPetticoats,
    checkFittedTo,
    checkCloths,
    checkFinishing,
    checkWrap,
    checkShares,
    checkFullness,
    checkPleats,
    checkStones,
    checkDarts,
    checkWorkroom,
    checkMoney,
    checkAssumed,
  ].flatMap((check) => check(page));
}
