import * as z from 'zod';
import { BOUNDS } from './bounds.ts';
import { named, section } from './section.ts';
import {
  count,
  date,
  flag,
  hours,
  length,
  matching,
  money,
  name,
  notes,
  oneOf,
  share,
  station,
} from './values.ts';

/** Closing, bustling, fitting, charging, printing. */

export const closure = section({
  kind: oneOf('zip', 'lacing', 'hooks'),
  at: station(),
  starts: length(BOUNDS.down).exactOptional().meta({ description: 'Below the waist seam' }),
  opening: length(BOUNDS.opening).exactOptional(),
  hip: length(BOUNDS.bodyGirth).exactOptional(),
  shoulders: length(BOUNDS.bodyGirth).exactOptional().meta({ description: 'Girth over the shoulders' }),
  entry: oneOf('steps-in', 'over-the-head').exactOptional(),
  side: oneOf('left', 'right').exactOptional(),
  beside: oneOf('sewn', 'finished', 'laced')
    .exactOptional()
    .meta({ description: 'What the bodice does above the opening' }),
  finish: oneOf('placket', 'facing', 'hook').exactOptional(),
  notes: notes().exactOptional(),
});

export const bustle = section({
  kind: oneOf('over', 'under'),
  points: z.array(section({ seam: station(), anchor: length(BOUNDS.down) })).exactOptional(),
  clearance: length(BOUNDS.offFloor)
    .exactOptional()
    .meta({ description: 'Height of the bustled hem off the floor' }),
  loop: length(BOUNDS.trimWidth).exactOptional(),
  heavy: flag().exactOptional(),
  notes: notes().exactOptional(),
});

const alterations = () => named(length(BOUNDS.alter)).exactOptional();

export const fitting = section({
  date: date(),
  layer: name().exactOptional(),
  hem: alterations(),
  waist: alterations(),
  seams: z
    .array(
      section({
        seam: station(),
        from: length(BOUNDS.down),
        to: length(BOUNDS.down),
        'take-in': length(BOUNDS.alter),
        side: oneOf('left', 'right', 'both').exactOptional(),
      }),
    )
    .exactOptional(),
  levelled: z
    .array(section({ from: station(), along: length(BOUNDS.down), up: length(BOUNDS.alter) }))
    .exactOptional()
    .meta({ description: 'The hem as it was levelled: distances along it, every 7.5 cm' }),
  notes: notes().exactOptional(),
});

export const labour = section({
  rate: money().exactOptional(),
  hours: hours().exactOptional(),
  tasks: named(hours()).exactOptional(),
  'per-metre': section({
    seams: hours().exactOptional(),
    waist: hours().exactOptional(),
    hems: hours().exactOptional(),
    edging: hours().exactOptional(),
  }).exactOptional(),
  overhead: share(BOUNDS.overhead).exactOptional(),
  margin: share(BOUNDS.overhead).exactOptional(),
  tax: share(BOUNDS.percentage).exactOptional(),
  rounding: money().exactOptional(),
  deposit: share(BOUNDS.percentage).exactOptional(),
  stages: named(share(BOUNDS.percentage)).exactOptional(),
  'fittings-included': count(0, 50).exactOptional(),
  expires: date().exactOptional(),
  actual: section({ hours: hours().exactOptional(), spent: money().exactOptional() }).exactOptional(),
  paid: money().exactOptional(),
  notes: notes().exactOptional(),
});

export const dates = section({
  event: date().exactOptional(),
  before: named(count(0, 2000)).exactOptional().meta({ description: 'Days before the event, by milestone' }),
  notes: notes().exactOptional(),
});

export const paper = section({
  size: matching(
    /^(a4|a3|letter|legal|tabloid|roll:[1-9]\d{2,3})$/i,
    'a size of paper: a4, a3, letter, legal, tabloid, or a roll such as roll:914 (mm wide)',
  ).exactOptional(),
  measured: section({ across: length(BOUNDS.testSquare, 'mm'), down: length(BOUNDS.testSquare, 'mm') })
    .exactOptional()
    .meta({ description: 'What the 10 cm test square measures as printed; bare numbers in mm' }),
  margin: length(BOUNDS.paperEdge).exactOptional(),
  lap: length(BOUNDS.paperEdge).exactOptional(),
  notes: notes().exactOptional(),
});

export const cut = named(matching(/^[0-9a-f]{6,64}$/i, 'the short hash printed on the pieces')).meta({
  description: 'Layers that are cut, each with the hash printed on its pieces',
});
