import * as z from 'zod/mini';
import { BOUNDS, MOST } from './bounds.ts';
import { described, list, named, optional, section } from './section.ts';
import { USUAL_CLEARANCE, USUAL_PAPER_MARGIN, USUAL_START } from './usual.ts';
import { count, hours, length, money, share } from './values.ts';
import { date, flag, matching, name, notes, oneOf, station } from './words.ts';

/** Closing, bustling, fitting, charging, printing. */

export const closure = section(
  () => ({
    kind: oneOf('zip', 'lacing', 'hooks'),
    at: station(),
    starts: optional(length(BOUNDS.down), 'Below the waist seam'),
    opening: optional(length(BOUNDS.opening)),
    hip: optional(length(BOUNDS.bodyGirth)),
    shoulders: optional(length(BOUNDS.bodyGirth), 'Girth over the shoulders'),
    entry: optional(oneOf('steps-in', 'over-the-head')),
    side: optional(oneOf('left', 'right')),
    beside: optional(oneOf('sewn', 'finished', 'laced'), 'What the bodice does above the opening'),
    finish: optional(oneOf('placket', 'guard', 'facing', 'hook')),
    cloth: optional(
      name(),
      'What its placket, guard or facing is cut from; the outermost layer that it takes when absent',
    ),
    width: optional(length(BOUNDS.trimWidth), 'Of that piece, as sewn'),
    notes: optional(notes()),
  }),
  ({ kind }) => ({ starts: USUAL_START[kind] }),
);

const bustlePoint = section(() => ({
  seam: optional(station(), 'Or `gore` with `across`'),
  gore: optional(name()),
  across: optional(
    share(BOUNDS.percentage),
    'Of the width of the gore, or of its half, from its front edge to its back edge at that level',
  ),
  anchor: length(BOUNDS.down),
}));

export const bustle = section(
  () => ({
    kind: oneOf('over', 'under'),
    points: optional(list(bustlePoint, MOST.bustlePoints)),
    clearance: optional(length(BOUNDS.offFloor), 'Height of the bustled hem off the floor'),
    loop: optional(length(BOUNDS.trimWidth)),
    heavy: optional(flag()),
    notes: optional(notes()),
  }),
  { clearance: USUAL_CLEARANCE },
);

const alterations = () =>
  optional(
    named(length(BOUNDS.alter)),
    'By station, or all-round: how far the edge goes up; negative is down',
  );

const takeIn = () =>
  described(
    z.union([length(BOUNDS.alter), z.tuple([length(BOUNDS.alter), length(BOUNDS.alter)])]),
    'On each side of the seam, or two amounts: at `from` and at `to`, smooth between; negative lets out',
  );

/** Pinned in the bodice, toile or cloth: its lower edge, and with it the tops of the gores, follow. */
const pinnedBodice = section(() => ({
  'upper-edge': alterations(),
  seams: optional(
    list(
      section(() => ({
        seam: station(),
        from: described(length(BOUNDS.upperEdge), 'Above the level waist; negative below it'),
        to: described(length(BOUNDS.upperEdge), 'Further up than `from`'),
        'take-in': takeIn(),
        side: optional(oneOf('left', 'right', 'both')),
      })),
      MOST.pinned,
    ),
  ),
  notes: optional(notes()),
}));

export const fitting = section(() => ({
  date: date(),
  layer: optional(name()),
  side: optional(oneOf('left', 'right'), 'Pinned on this side only'),
  hem: alterations(),
  waist: alterations(),
  seams: optional(
    list(
      section(() => ({
        seam: station(),
        from: length(BOUNDS.down),
        to: length(BOUNDS.down),
        'take-in': takeIn(),
        side: optional(oneOf('left', 'right', 'both')),
      })),
      MOST.pinned,
    ),
  ),
  bodice: optional(pinnedBodice, 'Of a bodice that is drafted'),
  levelled: optional(
    list(
      section(() => ({ from: station(), along: length(BOUNDS.down), up: length(BOUNDS.alter) })),
      MOST.levelled,
    ),
    'The hem as it was levelled: distances along it, every 7.5 cm',
  ),
  notes: optional(notes()),
}));

export const labour = section(
  () => ({
    rate: optional(money()),
    hours: optional(hours()),
    tasks: optional(named(hours())),
    'per-metre': optional(
      section(() => ({
        seams: optional(hours()),
        waist: optional(hours()),
        hems: optional(hours()),
        edging: optional(hours()),
      })),
    ),
    overhead: optional(share(BOUNDS.overhead)),
    margin: optional(share(BOUNDS.overhead)),
    tax: optional(share(BOUNDS.percentage)),
    rounding: optional(money()),
    deposit: optional(share(BOUNDS.percentage)),
    stages: optional(named(share(BOUNDS.percentage))),
    'fittings-included': optional(count(0, 50)),
    expires: optional(date()),
    actual: optional(section(() => ({ hours: optional(hours()), spent: optional(money()) }))),
    paid: optional(money()),
    notes: optional(notes()),
  }),
  { overhead: 0, margin: 0, tax: 0, deposit: 0 },
);

export const dates = section(() => ({
  event: optional(date()),
  before: optional(named(count(0, 2000)), 'Days before the event, by milestone'),
  notes: optional(notes()),
}));

const edge = () => length(BOUNDS.paperEdge);
const allEdges = (mm: number) => ({ left: mm, right: mm, top: mm, bottom: mm });
const USUAL_MARGINS = allEdges(USUAL_PAPER_MARGIN);

export const paper = section(
  () => ({
    size: optional(
      matching(
        /^(a4|a3|letter|legal|tabloid|roll:[1-9]\d{2,3})$/i,
        'a size of paper: a4, a3, letter, legal, tabloid, or a roll such as roll:914 (mm wide)',
      ),
    ),
    measured: optional(
      section(() => ({ across: length(BOUNDS.testSquare, 'mm'), down: length(BOUNDS.testSquare, 'mm') })),
      'What the 10 cm test square measures as printed; bare numbers in mm',
    ),
    margin: optional(
      z.pipe(
        z.union([
          edge(),
          section(
            () => ({
              left: optional(edge()),
              right: optional(edge()),
              top: optional(edge()),
              bottom: optional(edge()),
            }),
            USUAL_MARGINS,
          ),
        ]),
        z.transform((given) => (typeof given === 'number' ? allEdges(given) : given)),
      ),
      'What the printer leaves white: one width, or by edge',
    ),
    lap: optional(edge()),
    notes: optional(notes()),
  }),
  { margin: USUAL_MARGINS, lap: 0 },
);

export const cut = described(
  named(matching(/^[0-9a-f]{6,64}$/i, 'the short hash printed on the pieces')),
  'Layers that are cut, each with the hash printed on its pieces',
);
