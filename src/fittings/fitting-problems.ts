import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';
import { error, note, type Words, warning } from '../diagnostics/finding.ts';
import { lineAndColumn } from '../diagnostics/place.ts';
import { quoted } from '../diagnostics/safe-text.ts';

/**
 * Where two lines of a spec speak against each other, the message names the other line, whose place comes last, and
 * says what stands there.
 */
function against<Figures extends readonly string[]>(
  made: typeof error,
  code: string,
  words: (line: string, ...figures: Figures) => Words,
) {
  const make = made(code, words);
  return (span: Span, ...given: [...Figures, Span]): Diagnostic => {
    const other = given.at(-1) as Span;
    return make(span, otherLine(other, span), ...(given.slice(0, -1) as unknown as Figures));
  };
}

function otherLine(span: Span, own: Span): string {
  const { line } = lineAndColumn(span);
  const text = span.source.text.split('\n')[line - 1]?.trim() ?? '';
  const file = span.source === own.source ? '' : ` of ${span.source.name}`;
  return `line ${line}${file} (${quoted(text)})`;
}

/** What a seam that was pinned runs to. */
export type FittedEdge = 'waist' | 'hem' | 'waist-seam' | 'upper-edge';

function plain(edge: FittedEdge): string {
  return edge.replace('-', ' ');
}

/** A distance along a seam of the skirt. */
export const belowWaistSeam = (length: string): string => `${length} below the waist seam`;

/** A height on a seam of the bodice, mm. */
export function besideWaist(height: number, say: (mm: number) => string): string {
  return `${say(Math.abs(height))} ${height < 0 ? 'below' : 'above'} the waist`;
}

export const fittingBelowHem = against(
  error,
  'fitting-below-hem',
  (line: string, seam: string, to: string, length: string) => ({
    message: `Seam ${quoted(seam)} is altered down to ${to}, and it is ${length} long from waist seam to hem, by ${line}.`,
    why: 'There is no cloth to alter below the hem.',
    hint: 'Measure from the waist seam again, or correct the length.',
  }),
);

export const fittingTakesAll = against(error, 'fitting-takes-all', (line: string, gore: string) => ({
  message: `Taken in so far, nothing is left of gore ${quoted(gore)}, whose width is on ${line}.`,
  why: 'Its two seams would cross.',
  hint: '`take-in` is what goes on each side of the seam; look at the decimal point and the unit.',
}));

export const fittingHemAboveWaist = against(error, 'fitting-above-waist', (line: string, gore: string) => ({
  message: `Taken up so far, the hem of gore ${quoted(gore)} lies above its waist seam; its length is on ${line}.`,
  why: 'Nothing would be left of the gore.',
  hint: 'Look at the decimal point and the unit.',
}));

export const fittingCannotBeDrawn = against(
  error,
  'fitting-cannot-be-drawn',
  (line: string, edge: 'hem' | 'waist') => ({
    message: `No smooth ${edge} can be drawn as it was pinned, with the lengths on ${line}.`,
    why: `The ${edge} must run straight through every seam.`,
    hint: 'Look at the figures beside each other: one of them jumps.',
  }),
);

export const bodiceFittingPastEdge = error(
  'bodice-fitting-past-edge',
  (seam: string, at: string, edge: FittedEdge, reaches: string) => ({
    message: `Seam ${quoted(seam)} of the bodice is altered as far as ${at}, and its ${plain(edge)} lies ${reaches}.`,
    why: 'There is no cloth to alter beyond it.',
    hint: 'Measure from the waist again, along the seam; or correct the edge.',
  }),
);

export const bodiceTakesAll = error('bodice-fitting-takes-all', (panel: string) => ({
  message: `Taken in so far, nothing is left of the panel ${quoted(panel)}.`,
  why: 'Its two seams would cross.',
  hint: '`take-in` is what goes on each side of the seam; look at the decimal point and the unit.',
}));

export const bodiceEdgesCross = error('bodice-fitting-below-waist', (station: string) => ({
  message: `Taken down so far, the upper edge lies below the waist seam at ${quoted(station)}.`,
  why: 'Nothing would be left of the panels there.',
  hint: 'Look at the decimal point and the unit; negative is down.',
}));

export const bodiceEdgeDoesNotSettle = error('bodice-fitting-cannot-be-drawn', () => ({
  message: 'No smooth edge of the bodice can be drawn as it was pinned.',
  why: 'Its edges must run straight through every seam.',
  hint: 'Look at the figures beside each other: one of them jumps.',
}));

export const fittingDisagrees = against(
  error,
  'fitting-disagrees',
  (line: string, place: string, own: string, others: string) => ({
    message: `The hem goes up ${own} ${place}, and ${others} by ${line}.`,
    why: 'One place of the hem can be pinned at one height only.',
    hint: 'Keep the one that was pinned last.',
  }),
);

export const fittingOverlaps = against(error, 'fitting-overlaps', (line: string, seam: string) => ({
  message: `Seam ${quoted(seam)} is altered twice over the same stretch in one fitting; the other is ${line}.`,
  why: 'They would add up, and only one of them was pinned.',
  hint: 'Let the one begin where the other ends, or write the second under a date of its own.',
}));

export const fittingSteps = error(
  'fitting-steps',
  (seam: string, by: string, at: string, beyond: 'above' | 'below', edge: FittedEdge) => ({
    message: `Seam ${quoted(seam)} would step by ${by} at ${at}: it is altered by so much there, and not at all ${beyond} it.`,
    why: 'A seam line with a step cannot be sewn.',
    hint: `Let the amount there be 0, carry it on to the ${plain(edge)}, or let another stretch meet it there with the same amount.`,
  }),
);

export const fittingDents = warning(
  'fitting-dents',
  (seam: string, by: string, within: string, from: string, to: string) => ({
    message: `Seam ${quoted(seam)} steps back by ${by} within ${within}, where its alteration from ${from} to ${to} runs out.`,
    why: 'So fast a bend shows as a dent over the hip.',
    hint: 'Write two amounts, such as `take-in: [0.8, 0]`: what was pinned at each end, smooth all the way between. Or let the stretch be longer.',
  }),
);

export const centreOnOneSide = against(
  error,
  'fitting-centre-on-one-side',
  (line: string, station: string, side: string) => ({
    message: `${quoted(station)} is altered on the ${side} only, by ${line}.`,
    why: 'The centre belongs to both sides: the edge would jump there.',
    hint: `Take ${quoted(station)} out, or write it in an entry without \`side\`.`,
  }),
);

export const sideOfRing = against(error, 'fitting-side-of-ring', (line: string, side: string) => ({
  message: `The ${side} side is named, and the gores run all the way round by ${line}.`,
  why: 'Each side has gores and seams of its own there.',
  hint: 'Take `side` out and name the seams of that side.',
}));

export const levelledPastEnd = against(
  error,
  'fitting-past-centre',
  (line: string, from: string, along: string, length: string) => ({
    message: `A pin stands ${along} along the hem from ${quoted(from)}, and from there to the centre back it is ${length} long, by ${line}.`,
    why: 'There is no hem at that place.',
    hint: 'Measure along the hem again, or from a station nearer to it.',
  }),
);

export const letOutPastAllowance = against(
  warning,
  'fitting-past-allowance',
  (line: string, seam: string, layer: string, by: string, allowance: string) => ({
    message: `Seam ${quoted(seam)}${layer === '' ? '' : ` of layer ${quoted(layer)}`} is let out by ${by}, and its allowance is ${allowance}, by ${line}.`,
    why: 'Cloth that is cut already has no more to give; `compare` says what is left piece by piece.',
    hint: 'Cut the pieces again, or set a strip in.',
  }),
);

export const waistEdgeMoved = note(
  'fitting-moves-waist',
  (by: string, words: 'longer' | 'shorter', below: string) => ({
    message: `As it was pinned, the skirt's waist edge is ${by} ${words} all round than the bodice's: its seams are ${words === 'longer' ? 'taken in' : 'let out'} by so much at the waist, beside where it moved, and run out ${below} below.`,
    why: 'A skirt that flares is wider lower down and narrower higher up.',
    hint: 'Pin it so on her, or write what was pinned under `seams`; the bodice stays as it is.',
  }),
);

export const bodiceTakenIn = note('fitting-reaches-bodice', (by: string, words: 'in' | 'out') => ({
  message: `From the waist down the skirt is ${words === 'in' ? 'taken in' : 'let out'} by ${by} all round.`,
  why: `The seams run on into the bodice: its lower edge has to be ${words === 'in' ? 'taken in' : 'let out'} by as much.`,
  hint: 'Alter the bodice with it; the waist seam of the papers is reckoned so.',
}));
