import { error } from '../diagnostics/finding.ts';

export const tooManySheets = error('too-many-sheets', (sheets: number, paper: string) => ({
  message: `The pattern would take about ${sheets} sheets of ${paper}.`,
  why: 'Nobody tapes a pattern of so many sheets, and errors add up along it; as a rule a measure is ten times too large.',
  hint: 'Look at the lengths, hems and layers in the table of `check`; if they are right, print on a roll: `paper: {size: roll:914}`.',
}));

export const tooManyPieces = error('too-many-pieces', (pieces: number, most: number) => ({
  message: `The gown has ${pieces} pieces, every gore in every layer; at most ${most} are drawn.`,
  why: 'Laying out so many takes hours, and no one cuts them; as a rule a list was copied once too often.',
  hint: 'Leave out layers or overskirts, or draft the gown as several specs.',
}));
