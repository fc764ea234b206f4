import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';
import { lineAndColumn } from '../diagnostics/place.ts';

/** Where two lines of a spec speak against each other, the message names the other line and says what stands there. */
function otherLine(span: Span, own: Span): string {
  const { line } = lineAndColumn(span);
  const text = span.source.text.split('\n')[line - 1]?.trim() ?? '';
  const file = span.source === own.source ? '' : ` of ${span.source.name}`;
  return `line ${line}${file} (${text.length > 60 ? `${text.slice(0, 60)}…` : text})`;
}

export const fittingBelowHem = (
  span: Span,
  seam: string,
  to: string,
  length: string,
  other: Span,
): Diagnostic => ({
  ...error('fitting-below-hem', span),
  message: `seam ${seam} is altered down to ${to}, and it is ${length} long from waist seam to hem, by ${otherLine(other, span)}`,
  why: 'there is no cloth to alter below the hem',
  hint: 'measure from the waist seam again, or correct the length',
});

export const fittingTakesAll = (span: Span, gore: string, other: Span): Diagnostic => ({
  ...error('fitting-takes-all', span),
  message: `taken in so far, nothing is left of gore ${gore}, whose width is on ${otherLine(other, span)}`,
  why: 'its two seams would cross',
  hint: '`take-in` is what goes on each side of the seam; look at the decimal point and the unit',
});

export const fittingHemAboveWaist = (span: Span, gore: string, other: Span): Diagnostic => ({
  ...error('fitting-above-waist', span),
  message: `taken up so far, the hem of gore ${gore} lies above its waist seam; its length is on ${otherLine(other, span)}`,
  why: 'nothing would be left of the gore',
  hint: 'look at the decimal point and the unit',
});

export const fittingCannotBeDrawn = (span: Span, edge: 'hem' | 'waist', other: Span): Diagnostic => ({
  ...error('fitting-cannot-be-drawn', span),
  message: `no smooth ${edge} can be drawn as it was pinned, with the lengths on ${otherLine(other, span)}`,
  why: `the ${edge} must run straight through every seam`,
  hint: 'look at the figures beside each other: one of them jumps',
});

export const fittingDisagrees = (
  span: Span,
  place: string,
  own: string,
  others: string,
  other: Span,
): Diagnostic => ({
  ...error('fitting-disagrees', span),
  message: `the hem goes up ${own} ${place}, and ${others} by ${otherLine(other, span)}`,
  why: 'one place of the hem can be pinned at one height only',
  hint: 'keep the one that was pinned last',
});

export const fittingOverlaps = (span: Span, seam: string, other: Span): Diagnostic => ({
  ...error('fitting-overlaps', span),
  message: `seam ${seam} is altered twice over the same stretch in one fitting; the other is ${otherLine(other, span)}`,
  why: 'they would add up, and only one of them was pinned',
  hint: 'let the one begin where the other ends, or write the second under a date of its own',
});

export const fittingSteps = (
  span: Span,
  seam: string,
  by: string,
  at: string,
  beyond: 'above' | 'below',
): Diagnostic => ({
  ...error('fitting-steps', span),
  message: `seam ${seam} would step by ${by} at ${at} below the waist seam: it is altered by so much there, and not at all ${beyond} it`,
  why: 'a seam line with a step cannot be sewn',
  hint: `let the amount there be 0, carry it on to the ${beyond === 'above' ? 'waist' : 'hem'}, or let another stretch meet it there with the same amount`,
});

export const fittingDents = (
  span: Span,
  seam: string,
  by: string,
  within: string,
  from: string,
  to: string,
): Diagnostic => ({
  ...error('fitting-dents', span),
  level: 'warning',
  message: `seam ${seam} steps back by ${by} within ${within}, where its alteration from ${from} to ${to} runs out`,
  why: 'so fast a bend shows as a dent over the hip',
  hint: `write what was pinned at both ends, as \`take-in: [${by}, 0]\`, which is smooth all the way, or let the stretch be longer`,
});

export const centreOnOneSide = (span: Span, station: string, side: string, other: Span): Diagnostic => ({
  ...error('fitting-centre-on-one-side', span),
  message: `${station} is altered on the ${side} only, by ${otherLine(other, span)}`,
  why: 'the centre belongs to both sides: the edge would jump there',
  hint: `take ${station} out, or write it in an entry without \`side\``,
});

export const sideOfRing = (span: Span, side: string, other: Span): Diagnostic => ({
  ...error('fitting-side-of-ring', span),
  message: `the ${side} side is named, and the gores run all the way round by ${otherLine(other, span)}`,
  why: 'each side has gores and seams of its own there',
  hint: 'take `side` out and name the seams of that side',
});

export const levelledPastEnd = (
  span: Span,
  from: string,
  along: string,
  length: string,
  other: Span,
): Diagnostic => ({
  ...error('fitting-past-centre', span),
  message: `a pin stands ${along} along the hem from ${from}, and from there to the centre back it is ${length} long, by ${otherLine(other, span)}`,
  why: 'there is no hem at that place',
  hint: 'measure along the hem again, or from a station nearer to it',
});

export const letOutPastAllowance = (
  span: Span,
  seam: string,
  by: string,
  allowance: string,
  other: Span,
): Diagnostic => ({
  ...error('fitting-past-allowance', span),
  level: 'warning',
  message: `seam ${seam} is let out by ${by}, and its allowance is ${allowance}, by ${otherLine(other, span)}`,
  why: 'cloth that is cut already has no more to give; `compare` says what is left piece by piece',
  hint: 'cut the pieces again, or set a strip in',
});

export const waistEdgeMoved = (
  span: Span,
  by: string,
  words: 'longer' | 'shorter',
  below: string,
): Diagnostic => ({
  ...error('fitting-moves-waist', span),
  level: 'note',
  message: `as it was pinned, the skirt's waist edge is ${by} ${words} all round than the bodice's: its seams are ${words === 'longer' ? 'taken in' : 'let out'} by so much at the waist, beside where it moved, and run out ${below} below`,
  why: 'a skirt that flares is wider lower down and narrower higher up',
  hint: 'pin it so on her, or write what was pinned under `seams`; the bodice stays as it is',
});

export const bodiceTakenIn = (span: Span, by: string, words: 'in' | 'out'): Diagnostic => ({
  ...error('fitting-reaches-bodice', span),
  level: 'note',
  message: `from the waist down the skirt is ${words === 'in' ? 'taken in' : 'let out'} by ${by} all round`,
  why: `the seams run on into the bodice: its lower edge has to be ${words === 'in' ? 'taken in' : 'let out'} by as much`,
  hint: 'alter the bodice with it; the waist seam of the papers is reckoned so',
});

function error(code: string, span: Span): Pick<Diagnostic, 'code' | 'level' | 'span'> {
  return { code, level: 'error', span };
}
