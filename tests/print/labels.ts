import type { PieceLabels } from '../../src/print/pattern/piece-text.ts';
import { ENGLISH_PATTERN } from '../../src/words/english-pattern.ts';

/** What stands on the pieces of an invented gown, in cm. */
export const LABELS: PieceLabels = {
  gown: 'Lantern',
  client: 'LAN-07',
  trace: 'spec format 1, content 3f9a12c4',
  length: (mm) => `${(mm / 10).toFixed(1)} cm`,
  words: ENGLISH_PATTERN,
};
