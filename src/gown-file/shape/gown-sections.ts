import * as z from 'zod/mini';
import { BOUNDS, MOST } from './bounds.ts';
import { described, list, listOf, named, nameless, optional, section } from './section.ts';
import { USUAL_ALLOWANCE } from './usual.ts';
import { angle, length, share, times } from './values.ts';
import { flag, name, notes, oneOf, station } from './words.ts';

/** The sections that decide the shape of the skirt. */

const flare = angle(BOUNDS.flare);
const shareOfGirths = z.union([share(BOUNDS.share), listOf(share(BOUNDS.share))]);

const gathered = { where: 'throughout', by: 'gathers' } as const;

/** Cloth gathered or pleated to a shorter edge. `fullness: 2.5` alone is gathered, and as full down to the hem. */
export const fullness = z.pipe(
  described(
    z.union([
      times(BOUNDS.fullness),
      section(
        () => ({
          ratio: times(BOUNDS.fullness),
          where: optional(oneOf('throughout', 'waist')),
          by: optional(oneOf('gathers', 'pleats')),
          // Of one pleat, fold to fold.
          depth: optional(length(BOUNDS.pleat)),
          // Which way the pleats lie.
          towards: optional(oneOf('front', 'back', 'box')),
        }),
        gathered,
      ),
    ]),
    'Cloth for one of the sewn edge',
  ),
  z.transform((given) => (typeof given === 'number' ? { ...gathered, ratio: given } : given)),
);

export const gore = z.pipe(
  section(
    () => ({
      name: name(),
      'on-fold': optional(flag()),
      top: optional(length(BOUNDS.goreTop), "Sewn top edge; its bodice panel's when absent"),
      'half-top': optional(length(BOUNDS.goreTop), 'Sewn top edge of one half, on a gore on the fold'),
      hem: optional(length(BOUNDS.hemWidth), 'Width along the arc at lengths.hem-width-at'),
      'half-hem': optional(length(BOUNDS.hemWidth)),
      flare: optional(
        z.union([flare, z.tuple([flare, flare])]),
        'Angle, or one towards the front and one towards the back of the grain',
      ),
      'half-flare': optional(flare),
      grain: optional(oneOf('centre', 'front-edge', 'back-edge')),
      share: optional(shareOfGirths, "Its part of the petticoat's girths all round"),
      'half-share': optional(shareOfGirths),
      fullness: optional(fullness),
      notes: optional(notes()),
    }),
    { onFold: false, grain: 'centre' },
  ),
  z.transform(({ halfShare, ...gore }) => ({
    ...gore,
    ...(halfShare !== undefined && { share: halfShare }),
  })),
);

export const petticoat = section(
  () => ({
    measured: optional(oneOf('along', 'vertical')),
    ease: optional(length(BOUNDS.ease)),
    girths: optional(
      list(
        section(() => ({ down: length(BOUNDS.down), girth: length(BOUNDS.girth) })),
        MOST.girths,
      ),
    ),
    hoop: optional(length(BOUNDS.girth), 'Girth of the lowest hoop'),
    'hoop-off-floor': optional(length(BOUNDS.offFloor)),
    notes: optional(notes()),
  }),
  { measured: 'along', ease: 0, girths: [] },
);

/** What is not named here was as the spec has it now. */
const measuredIn = section(() => ({
  heel: optional(length(BOUNDS.heel)),
  'drop-below-waist': optional(named(length(BOUNDS.drop))),
  petticoat: optional(z.union([oneOf('none'), petticoat])),
  notes: optional(notes()),
}));

export const lengths = section(
  () => ({
    measured: optional(oneOf('finished', 'cut', 'to-floor')),
    'off-floor': optional(length(BOUNDS.offFloor), 'How high the hem hangs; with to-floor'),
    'hem-width-at': optional(
      length(BOUNDS.length),
      'Slant distance below the level waist where hem and sweep hold',
    ),
    at: described(named(length(BOUNDS.length)), 'By station, from the sewn edge of the bodice'),
    'to-floor': optional(
      named(length(BOUNDS.length)),
      'Sewn edge of the bodice to the floor, by station, where `at` holds finished lengths',
    ),
    'measured-in': optional(measuredIn, 'What she had on when these were measured, where it differs'),
    'worn-in': optional(
      section(() => ({ heel: length(BOUNDS.heel), notes: optional(notes()) })),
      'What she will wear: every length follows by geometry',
    ),
    notes: optional(notes()),
  }),
  { measured: 'finished' },
);

export const train = section(
  () => ({
    'on-floor': optional(length(BOUNDS.onFloor), 'Train on the floor at the centre back'),
    begins: station(),
    full: optional(station(), 'Where it is longest, on a gown whose sides differ'),
    ends: optional(station(), 'Where it has risen again, on a gown whose sides differ'),
    shape: optional(oneOf('round', 'pointed', 'square')),
    notes: optional(notes()),
  }),
  { shape: 'round' },
);

const ALLOWANCES_BY = 'By edge: seam, waist, hem, or a station';

export const allowances = described(named(length(BOUNDS.allowance)), ALLOWANCES_BY);
export const USUAL_ALLOWANCES = { seam: USUAL_ALLOWANCE, waist: USUAL_ALLOWANCE, hem: USUAL_ALLOWANCE };
/** Those of the whole gown, which every layer has unless it says others. */
export const gownAllowances = described(
  z.pipe(
    allowances,
    z.transform((given) => nameless(USUAL_ALLOWANCES, given)),
  ),
  ALLOWANCES_BY,
);

export const roughCut = described(
  named(length(BOUNDS.roughCut)),
  'By gore: extra below the hem, cut off after hanging',
);
