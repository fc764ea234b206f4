import { tuckHeights } from '../../allowances/tuck-lines.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { hangsShorter, tuckedUp } from '../../gown/layer.ts';
import { type Bench, percentText } from '../findings.ts';
import { MOST_SURPLUS } from '../hem/hem-surplus.ts';
import * as problems from '../problems.ts';

/** Growth tucks that find no room, lie over each other, or are longer below than above. */
export function tuckFindings({ skirt, say }: Bench): Diagnostic[] {
  return skirt.layers.flatMap(({ layer, hem, flare }) => {
    const { tucks, name } = layer;
    if (tucks === undefined) return [];
    const place = layer.place('growth-tucks');
    const highest = Math.max(...tuckHeights(layer).map(([, , upper]) => upper));
    const shortest =
      Math.min(...skirt.stations.map(({ finished }) => finished)) - hangsShorter(layer) + tuckedUp(layer);
    if (highest >= shortest) return [problems.tucksAboveWaist(place, name, say(highest), say(shortest))];
    if (tucks.count > 1 && tucks.apart < tucks.width)
      return [problems.tucksLieOver(place, name, say(tucks.width), say(tucks.apart))];
    const surplus = flare * 2 * tucks.width;
    const share = surplus / (hem - flare * highest);
    return share > MOST_SURPLUS
      ? [problems.tucksEased(place, name, say(surplus), percentText(share), percentText(MOST_SURPLUS))]
      : [];
  });
}
