import { BOUNDS } from './bounds.ts';
import { facing } from './cloth-sections.ts';
import { described, optional, section } from './section.ts';
import { USUAL_OVERLAP, USUAL_POCKET } from './usual.ts';
import { count, length } from './values.ts';
import { flag, name, notes, oneOf, station } from './words.ts';

/** What the waist of a skirt is finished with that is sewn to no bodice. */
export const waist = section(
  () => ({
    finish: oneOf('band', 'facing', 'stay'),
    width: length(BOUNDS.band),
    cloth: optional(name(), 'Needed by a band; a facing is cut from the outermost layer when absent'),
    overlap: optional(length(BOUNDS.overlap), 'What a band is longer by than the waist, to fasten on'),
    upper: optional(length(BOUNDS.waistSeam), 'Upper edge of a shaped band, all round'),
    ease: optional(length(BOUNDS.ease), 'Added to her waist where the gores say no tops'),
    notes: optional(notes()),
  }),
  { overlap: USUAL_OVERLAP, ease: 0 },
);

/** Two edges that lie over one another from waist to hem, and how she gets in. */
export const wrap = section(
  () => ({
    at: described(
      station(),
      'The line that both edges lie over by half of the overlap: nothing is sewn there',
    ),
    overlap: described(length(BOUNDS.wrap), 'At the waist, from one edge to the other'),
    'overlap-at-hem': optional(length(BOUNDS.wrap)),
    over: optional(oneOf('right', 'left'), 'Which side of her lies on top'),
    edges: optional(oneOf('bound', 'faced', 'turned'), 'How they are finished from waist to hem'),
    'edge-facing': optional(facing, 'Facings cut to their shape, where they are faced'),
    fastened: optional(oneOf('ties', 'buttons', 'hooks', 'snaps')),
    ties: optional(
      section(() => ({
        length: described(length(BOUNDS.tie), 'Of one, as sewn'),
        width: described(length(BOUNDS.trimWidth), 'As sewn'),
        cloth: optional(name(), "The outermost layer's when absent"),
      })),
      'A pair of strips, where they are to be cut',
    ),
    notes: optional(notes()),
  }),
  ({ overlap }) => ({
    overlapAtHem: overlap,
    over: 'right' as const,
    edges: 'faced' as const,
    fastened: 'buttons' as const,
  }),
);

/** What lies in openings of seams. */

export const slit = section(
  () => ({
    seam: described(station(), 'Open from the hem up'),
    'above-hem': optional(length(BOUNDS.opening), 'How high it goes'),
    'below-waist': optional(length(BOUNDS.down), 'Where it begins, in place of above-hem'),
    side: optional(oneOf('left', 'right'), 'On this side only, where there are two such seams'),
    stay: optional(flag(), 'A square of cloth sewn over its upper end'),
    facing: optional(facing, 'A strip along each of its edges; their allowances are turned in when absent'),
    notes: optional(notes()),
  }),
  { stay: false },
);

export const pocket = section(
  () => ({
    seam: station(),
    'below-waist': described(length(BOUNDS.down), 'Where its opening begins'),
    opening: optional(length(BOUNDS.pocket)),
    depth: optional(length(BOUNDS.pocket), 'Of the bag, from the upper end of its opening'),
    width: optional(length(BOUNDS.pocket)),
    cloth: described(name(), 'What the bag is cut from'),
    side: optional(oneOf('left', 'right'), 'On this side only'),
    notes: optional(notes()),
  }),
  USUAL_POCKET,
);

export const loops = section(() => ({
  name: optional(name()),
  count: count(1, 500),
  length: described(length(BOUNDS.trimWidth), 'Of one, as sewn, its ends with it'),
  width: described(length(BOUNDS.trimWidth), 'As sewn'),
  cloth: name(),
  notes: optional(notes()),
}));

interface Gore {
  readonly name: string;
  readonly onFold: boolean;
  readonly top?: number;
  readonly halfTop?: number;
}

interface Sewn<G extends Gore> {
  readonly symmetry: string;
  readonly gores: readonly G[];
  readonly waist?: { readonly ease: number };
  readonly body?: { readonly girths: readonly { readonly at: string; readonly girth: number }[] };
  readonly bodice: { readonly waistSeam: number; readonly draft?: object; readonly panels: object };
}

/**
 * A skirt with a waist of its own: tops that no gore says share what is left of her waist evenly, and the edge is as
 * long as all of them.
 */
export function withOwnWaist<G extends Gore, T extends Sewn<G>>(spec: T): T {
  const { waist: finish, bodice } = spec;
  if (finish === undefined || bodice?.draft !== undefined || bodice === undefined) return spec;
  const parts = (spec.gores ?? []).map((gore) => ({
    gore,
    copies: gore.onFold || spec.symmetry === 'none' ? 1 : 2,
    whole: gore.onFold ? gore.halfTop && 2 * gore.halfTop : gore.top,
  }));
  const panelled = Object.keys(bodice.panels ?? {}).length > 0;
  const lacking = panelled ? [] : parts.filter(({ whole }) => whole === undefined);
  const given = parts.reduce((sum, { whole = 0, copies }) => sum + whole * copies, 0);
  const girth = spec.body?.girths?.find(({ at }) => at === 'waist')?.girth;
  const round = bodice.waistSeam || (girth === undefined ? 0 : girth + finish.ease);
  const each = (round - given) / lacking.reduce((sum, { copies }) => sum + copies, 0);
  const gores = parts.map(({ gore, whole }) => {
    if (whole !== undefined || panelled || !(each > 0)) return gore;
    return gore.onFold ? { ...gore, halfTop: each / 2 } : { ...gore, top: each };
  });
  const known = lacking.length === 0 || each > 0;
  const seam = bodice.waistSeam || (!known ? 0 : lacking.length === 0 ? given : round);
  return { ...spec, gores, bodice: { ...bodice, waistSeam: seam } };
}
