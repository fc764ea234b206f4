import type { CutPiece } from '../draft/piece.ts';
import type { Units } from '../gown-file/spec.ts';
import type { ChalkTable } from './chalk.ts';
import { chalkStep, chalkTable } from './chalk-table.ts';

/** Between two levels where nothing else is asked for: 10 cm, or 4 in. */
const USUAL_LEVELS = { mm: 100, cm: 100, in: 101.6 } as const;

/** The chalk tables of all pieces. @param every between their levels, mm */
export function chalkTables(cutPieces: readonly CutPiece[], units: Units, every?: number): ChalkTable[] {
  const options = { step: chalkStep(units), every: every ?? USUAL_LEVELS[units] };
  return cutPieces.map((piece) => chalkTable(piece, options));
}
