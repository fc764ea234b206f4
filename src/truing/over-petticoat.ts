import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { GownDraft } from '../draft/draft-gown.ts';
import type { GoreFrame } from '../draft/gore-frame.ts';
import { distance } from '../geometry/point.ts';
import { PETTICOAT_AGREES } from '../geometry/tolerances.ts';
import type { Gown } from '../gown/gown.ts';
import { halves } from '../gown/lines.ts';
import { girthThrough, slantLevels } from '../gown/slant-levels.ts';
import { puckers, tighterThanPetticoat } from './petticoat-problems.ts';

/** Holds a drafted skirt against the petticoat that it goes over. */
export function trueOverPetticoat(gown: Gown, draft: GownDraft): Diagnostic[] {
  return [...tightness(gown, draft), ...puckering(gown, draft)];
}

/** Places between two levels at which the skirt is held against the petticoat. */
const BETWEEN = 8;

function tightness(gown: Gown, draft: GownDraft): Diagnostic[] {
  const { petticoat, units } = gown;
  if (petticoat === undefined || petticoat.girths.length < 2) return [];
  const levels = slantLevels(petticoat);
  const needed = girthThrough(levels);
  const hem = Math.min(...draft.gown.stations.map(({ drop }, i) => drop + draft.lengths[i]!));
  const edge = Math.max(...draft.gown.stations.map(({ drop }) => drop));
  const places = levels.flatMap(({ down }, i) => {
    const below = levels[i + 1]?.down ?? hem;
    return Array.from({ length: BETWEEN }, (_, k) => down + ((below - down) * k) / BETWEEN);
  });
  const rows = [...places, hem]
    .filter((down) => down > edge && down <= hem)
    .map((down) => ({ down, needed: needed.valueAt(down), skirt: roundAt(draft, down) }))
    .filter((row) => row.needed - row.skirt > row.needed * PETTICOAT_AGREES);
  if (rows.length === 0) return [];
  const say = (length: number): string => tapeText(length, units);
  const worst = rows.reduce((most, row) => (row.needed - row.skirt > most.needed - most.skirt ? row : most));
  return [
    tighterThanPetticoat(
      petticoat.place('girths'),
      { down: say(worst.down), skirt: say(worst.skirt), needed: say(worst.needed) },
      rows.map((row) => [say(row.down), say(row.needed), say(row.skirt), say(row.skirt - row.needed)]),
    ),
  ];
}

/** Round the whole skirt at one level, mm. */
export function roundAt(draft: GownDraft, down: number): number {
  const widths = draft.frames.reduce((sum, frame) => sum + frame.widthAt(down), 0);
  return halves(draft.gown) * widths;
}

/** Length of cloth over which a surplus is spread by steam and fingers, mm: from the waist to the hip (common practice). */
const WORKED_OVER = 200;
/** Between two stretches that are looked at, mm. */
const STEP = 25;
/** Lines down a gore that are held against its seams: parts of its width. */
const LINES = [0.1, 0.25, 0.4, 0.5, 0.6, 0.75, 0.9];
/** Share of its length that cloth can be eased or stretched by; satin shows sooner. Common practice. */
const EASED = 0.05;
const EASED_ON_SATIN = 0.02;

/**
 * Over a body that is no cone a flat gore keeps its seams, and what lies between is longer or shorter than the body
 * there: past what cloth can be eased by, it puckers or pulls.
 */
function puckering({ layers, units }: Gown, draft: GownDraft): Diagnostic[] {
  const satin = layers.some(({ cloth }) => /satin/i.test(cloth.weave ?? ''));
  const most = satin ? EASED_ON_SATIN : EASED;
  return draft.frames.flatMap((frame, i) => {
    const gore = draft.gown.gores[i]!;
    if (gore.width.kind !== 'girths' || gore.fullness !== undefined) return [];
    const from = Math.max(draft.gown.stations[i]!.drop, draft.gown.stations[i + 1]!.drop);
    const worst = mostStrained(frame, from, from + Math.min(draft.lengths[i]!, draft.lengths[i + 1]!));
    if (Math.abs(worst.strain) <= most) return [];
    return [
      puckers(gore.place(), {
        gore: gore.name,
        down: tapeText(worst.down, units),
        by: `${(Math.abs(worst.strain) * 100).toFixed(1)} %`,
        most: `${most * 100} %`,
        longer: worst.strain > 0,
        satin,
      }),
    ];
  });
}

/** Where cloth is longest (+) or shortest (−) against the body, as a share of its length. */
function mostStrained(frame: GoreFrame, from: number, to: number): { strain: number; down: number } {
  let worst = { strain: 0, down: from };
  for (let down = from; down + WORKED_OVER <= to; down += STEP) {
    for (const line of LINES) {
      const length = distance(frame.pointAt(down, line), frame.pointAt(down + WORKED_OVER, line));
      const strain = length / WORKED_OVER - 1;
      if (Math.abs(strain) > Math.abs(worst.strain)) worst = { strain, down: down + WORKED_OVER / 2 };
    }
  }
  return worst;
}
