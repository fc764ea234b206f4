import { error } from '../diagnostics/finding.ts';
import { quoted } from '../diagnostics/safe-text.ts';

export const capeCannotBeLaid = error('cape-cannot-be-laid', (cape: string) => ({
  message: `The lengths of the cape ${quoted(cape)} cannot be laid over it.`,
  why: 'Its hem would have to turn back on itself.',
  hint: 'Look for a length that is far from its neighbours, or one length for all.',
}));

export const capeLengthMissing = error(
  'cape-length-missing',
  (cape: string, from: string | undefined, to: string | undefined) => ({
    message: `The cape ${quoted(cape)} has lengths by station, and not at both of its ends.`,
    why: 'Lengths between are filled in from them.',
    hint:
      from === undefined || to === undefined
        ? 'Give one length for all, or `from` and `to` with a length at each.'
        : `Add ${quoted(`${from}:`)} and ${quoted(`${to}:`)} with their lengths.`,
  }),
);

export const strapGoesNowhere = error(
  'strap-goes-nowhere',
  (strap: string, length: string, across: string) => ({
    message: `The strap ${quoted(strap)} begins and ends at ${quoted(across)}.`,
    why: `A strip of ${length} would be a loop on the upper edge.`,
    hint: 'Name a station in front and one behind.',
  }),
);
