import * as z from 'zod/mini';
import { BOUNDS, MOST } from './bounds.ts';
import { described, list, optional, section } from './section.ts';
import { diameterOf, gramsOf, SOLD_AS } from './stone-sizes.ts';
import { USUAL_CLEAR_OF_SEAMS } from './usual.ts';
import { count, length, money, share, times } from './values.ts';
import { flag, name, notes, oneOf } from './words.ts';

/** One that is set by itself: so far down, or up from the hem, on the line down its gore that lies so far across. */
const place = section(() => ({
  gore: name(),
  across: described(
    share(BOUNDS.percentage),
    'Of the width of the gore, or of its half, from its front edge to its back edge at that level',
  ),
  'below-waist': optional(length(BOUNDS.down), 'Or `above-hem`'),
  'above-hem': optional(length(BOUNDS.down)),
}));

const across = () => length(BOUNDS.stone);

/** Beads, stones, sequins and motifs that are set by hand. */
const set = section(
  () => ({
    name: name(),
    layer: described(name(), 'The layer that they are set on'),
    size: optional(
      z.union([across(), z.tuple([across(), across()])]),
      'Across; `[width, height]` of a motif; by `sold-as` when absent',
    ),
    'sold-as': optional(oneOf(...SOLD_AS), 'A size of the trade: seed beads, or flat-backed stones'),
    'per-dm2': optional(
      z.union([times(BOUNDS.perDm2), z.tuple([times(BOUNDS.perDm2), times(BOUNDS.perDm2)])]),
      'On a square decimetre; two figures: from the first to the second over that span. Or `places`',
    ),
    places: optional(list(place, MOST.places), 'Where each is set, one by one, on both sides of her'),
    apart: optional(length(BOUNDS.down), 'At least so much cloth between one and the next'),
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
    'on-pattern': optional(flag(), 'Each is marked on the printed pattern too'),
    notes: optional(notes()),
  }),
  { from: 'waist', clear: USUAL_CLEAR_OF_SEAMS },
);

export const stones = z.pipe(
  list(set, MOST.parts),
  z.transform((given) =>
    given.map(({ soldAs, perDm2, size, gramsPer1000, ...rest }) => {
      const motif = typeof size === 'object' ? { width: size[0], height: size[1] } : undefined;
      const diameter =
        typeof size === 'object' ? Math.max(size[0], size[1]) : (size ?? (soldAs && diameterOf(soldAs)));
      const grams = gramsPer1000 ?? (soldAs && size === undefined ? gramsOf(soldAs) : undefined);
      return {
        ...rest,
        ...(soldAs === undefined ? {} : { soldAs }),
        ...(diameter === undefined ? {} : { size: diameter }),
        ...(motif === undefined ? {} : { motif }),
        ...(grams === undefined ? {} : { gramsPer1000: grams }),
        ...(perDm2 === undefined
          ? {}
          : { perDm2: typeof perDm2 === 'number' ? ([perDm2, perDm2] as const) : perDm2 }),
      };
    }),
  ),
);
