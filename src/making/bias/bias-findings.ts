import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Bench } from '../findings.ts';
import { biasWithoutRoughCut } from '../problems.ts';

/** Left below the hem of what is cut on the bias, mm: 3 to 5 cm (common practice). */
const LEAST_LEFT = 30;

/** Layers on the bias whose hem has too little below it to be levelled. */
export function biasFindings({ gown, skirt, say }: Bench): Diagnostic[] {
  return skirt.layers.flatMap(({ layer, gores, bias }) => {
    if (bias === undefined) return [];
    const own = gown.gores.filter(({ name }) => gores.includes(name)).map(({ roughCut }) => roughCut);
    const left = Math.min(...own);
    if (left >= LEAST_LEFT && left >= (bias.drop ?? 0)) return [];
    return [
      biasWithoutRoughCut(layer.place('grain'), {
        layer: layer.name,
        drop: bias.drop === undefined ? undefined : say(bias.drop),
        byRule: !bias.measured,
        left: left > 0 ? say(left) : undefined,
        least: say(Math.max(LEAST_LEFT, 2 * (bias.drop ?? 0))),
      }),
    ];
  });
}
