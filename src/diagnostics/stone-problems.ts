import { error } from './finding.ts';
import { quoted } from './safe-text.ts';

/** Problems of stones and beads that are set by hand. */

export const stonesWithoutSize = error('stones-without-size', (name: string) => ({
  message: `The stones ${quoted(name)} have neither \`size\` nor \`sold-as\`.`,
  why: 'Without a size they cannot be kept clear of seams and edges.',
  hint: 'Write how wide one is, such as `size: 4mm`, or a size of the trade, such as `sold-as: 11/0`.',
}));

export const stonesOverNothing = error('stones-over-nothing', (name: string, from: string, to: string) => ({
  message: `The stones ${quoted(name)} go from ${from} to ${to}, which is no way.`,
  why: 'None would be set.',
  hint: 'Write the nearer end of the span first, then the farther one.',
}));
