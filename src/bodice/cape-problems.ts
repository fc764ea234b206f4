import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';
import { quoted } from '../diagnostics/plain-text.ts';

export const capeCannotBeLaid = (span: Span, cape: string): Diagnostic => ({
  code: 'cape-cannot-be-laid',
  level: 'error',
  span,
  message: `the lengths of the cape ${quoted(cape)} cannot be laid over it`,
  why: 'its hem would have to turn back on itself',
  hint: 'look for a length that is far from its neighbours, or one length for all',
});

export const capeLengthMissing = (
  span: Span,
  cape: string,
  from: string | undefined,
  to: string | undefined,
): Diagnostic => ({
  code: 'cape-length-missing',
  level: 'error',
  span,
  message: `the cape ${quoted(cape)} has lengths by station, and not at both of its ends`,
  why: 'lengths between are filled in from them',
  hint:
    from === undefined || to === undefined
      ? 'give one length for all, or `from` and `to` with a length at each'
      : `add ${quoted(`${from}:`)} and ${quoted(`${to}:`)} with their lengths`,
});

export const strapGoesNowhere = (span: Span, strap: string, length: string, across: string): Diagnostic => ({
  code: 'strap-goes-nowhere',
  level: 'error',
  span,
  message: `the strap ${quoted(strap)} begins and ends at ${quoted(across)}`,
  why: `a strip of ${length} would be a loop on the upper edge`,
  hint: 'name a station in front and one behind',
});
