import type { CutPiece } from '../draft/piece.ts';
import type { Units } from '../spec/spec.ts';
import type { ChalkTable } from './chalk.ts';
import { chalkStep, chalkTable } from './chalk-table.ts';

/** The chalk tables of all pieces. @param every between their levels, mm */
export function chalkTables(cutPieces: readonly CutPiece[], units: Units, every?: number): ChalkTable[] {
  const options = { step: chalkStep(units), ...(every === undefined ? {} : { every }) };
  return cutPieces.map((piece) => chalkTable(piece, options));
}
