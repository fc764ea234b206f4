import type { Units } from '../diagnostics/units.ts';
import type { CutPiece } from '../draft/piece.ts';
import type { ChalkTable } from './chalk.ts';
import { chalkStep, chalkTable, grainOf } from './chalk-table.ts';

/** Between two levels where nothing else is asked for: 10 cm, or 4 in. */
const USUAL_LEVELS = { mm: 100, cm: 100, in: 101.6 } as const;

/**
 * The chalk tables of all pieces. Pieces of one gore are measured from one grain line, so that their layers can share a
 * table.
 * @param every between their levels, mm
 */
export function chalkTables(cutPieces: readonly CutPiece[], units: Units, every?: number): ChalkTable[] {
  const options = { step: chalkStep(units), every: every ?? USUAL_LEVELS[units] };
  return cutPieces.map((piece) => {
    const first = cutPieces.find(
      (other) => other.gore === piece.gore && other.piece.side === piece.piece.side,
    );
    return chalkTable(piece, { ...options, grain: grainOf(first ?? piece) });
  });
}
