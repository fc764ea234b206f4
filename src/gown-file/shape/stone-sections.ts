import * as z from 'zod/mini';
import { BOUNDS, MOST } from './bounds.ts';
import { described, list, optional, section } from './section.ts';
import { diameterOf, gramsOf, SOLD_AS } from './stone-sizes.ts';
import { USUAL_CLEAR_OF_SEAMS } from './usual.ts';
import { count, length, money, times } from './values.ts';
import { name, notes, oneOf } from './words.ts';

/** Beads, stones and sequins that are set by hand. */
const set = section(
  {
    name: name(),
    layer: described(name(), 'The layer that they are set on'),
    size: optional(length(BOUNDS.stone), 'Across; by `sold-as` when absent'),
    'sold-as': optional(oneOf(...SOLD_AS), 'A size of the trade: seed beads, or flat-backed stones'),
    'per-dm2': described(
      z.union([times(BOUNDS.perDm2), z.tuple([times(BOUNDS.perDm2), times(BOUNDS.perDm2)])]),
      'On a square decimetre; two figures: from the first to the second over that span',
    ),
    over: optional(
      z.tuple([length(BOUNDS.down), length(BOUNDS.down)]),
      'From how far to how far off the edge that `from` names; all of the layer when absent',
    ),
    from: optional(oneOf('waist', 'hem')),
    clear: optional(length(BOUNDS.allowance), 'Clear of seams and edges by this'),
    'off-seat': optional(
      z.tuple([length(BOUNDS.down), length(BOUNDS.down)]),
      'Behind her, none from so far below the waist seam to so far: where she sits',
    ),
    'grams-per-1000': optional(times(BOUNDS.stoneGrams)),
    'price-per': optional(money(), 'One of them'),
    'per-hour': optional(count(1, 10_000), 'Set in an hour'),
    notes: optional(notes()),
  },
  { from: 'waist', clear: USUAL_CLEAR_OF_SEAMS },
);

export const stones = z.pipe(
  list(set, MOST.parts),
  z.transform((given) =>
    given.map(({ soldAs, perDm2, size, gramsPer1000, ...rest }) => {
      const diameter = size ?? (soldAs && diameterOf(soldAs));
      const grams = gramsPer1000 ?? (soldAs && size === undefined ? gramsOf(soldAs) : undefined);
      return {
        ...rest,
        ...(soldAs === undefined ? {} : { soldAs }),
        ...(diameter === undefined ? {} : { size: diameter }),
        ...(grams === undefined ? {} : { gramsPer1000: grams }),
        perDm2: typeof perDm2 === 'number' ? ([perDm2, perDm2] as const) : perDm2,
      };
    }),
  ),
);
