import * as z from 'zod/mini';
import { BOUNDS, MOST } from './bounds.ts';
import { facing, layer } from './cloth-sections.ts';
import { allowances } from './gown-sections.ts';
import { described, list, listOf, named, optional, section } from './section.ts';
import { USUAL_BONES, USUAL_EYELETS, USUAL_TAILS } from './usual.ts';
import { angle, count, length, times } from './values.ts';
import { flag, name, notes, oneOf, station } from './words.ts';

/** Her body, and what is drafted over it above the waist. */

export const body = section(
  () => ({
    girths: list(
      section(() => ({
        at: described(name(), 'waist, bust, underbust, high-hip, hip, or a name of your own'),
        above: optional(length(BOUNDS.height), 'Above the waist, along the body'),
        below: optional(length(BOUNDS.height), 'Below the waist, along the body'),
        girth: length(BOUNDS.bodyGirth),
        front: optional(length(BOUNDS.bodyFront), 'Over the front, side seam to side seam'),
        left: optional(length(BOUNDS.bodyFront), 'Over her left half, where her halves differ'),
        notes: optional(notes()),
      })),
      MOST.bodyGirths,
    ),
    'bust-points-apart': optional(length(BOUNDS.bustPoints)),
    height: optional(length(BOUNDS.bodyHeight), 'For the drawings only'),
    wearer: optional(oneOf('adult', 'child')),
    notes: optional(notes()),
  }),
  { wearer: 'adult' },
);

/** The level to which gores without widths of their own follow her girths; from there on they run by `sweep`. */
export const fittedTo = z.pipe(
  z.union([
    name(),
    section(() => ({ level: name(), ease: optional(length(BOUNDS.ease), 'All round, below the waist') })),
  ]),
  z.transform((given): { readonly level: string; readonly ease: number } =>
    typeof given === 'string' ? { level: given, ease: 0 } : { level: given.level, ease: given.ease ?? 0 },
  ),
);

const panel = section(
  () => ({
    name: described(name(), 'As the gore below it'),
    'on-fold': optional(flag()),
    widths: optional(named(length(BOUNDS.panelWidth)), 'By level, sewn; of the half on the fold'),
    grain: optional(oneOf('centre', 'front-edge', 'back-edge')),
    notes: optional(notes()),
  }),
  { onFold: false, widths: {} },
);

const closing = section(
  () => ({
    kind: oneOf('lacing', 'zip', 'hooks', 'busk'),
    at: station(),
    side: optional(oneOf('left', 'right')),
    gap: optional(
      z.union([length(BOUNDS.gap), named(length(BOUNDS.gap))]),
      'Between the laced edges; one for all levels, or by level',
    ),
    eyelets: optional(length(BOUNDS.eyelets), 'Eyelet to eyelet'),
    'from-edge': optional(length(BOUNDS.eyelets), 'From the laced edge to the middle of an eyelet'),
    doubled: optional(flag(), 'One more pair of eyelets at the waist'),
    modesty: optional(length(BOUNDS.modesty), 'Width of the panel behind the lacing'),
    tails: optional(length(BOUNDS.tails), 'Lace that hangs free, both ends together'),
    notes: optional(notes()),
  }),
  { ...USUAL_EYELETS, doubled: false, tails: USUAL_TAILS },
);

const bones = section(
  () => ({
    along: optional(z.union([oneOf('seams'), listOf(station())]), '`seams`, or a list of them'),
    also: optional(listOf(station()), 'Further edges that are boned'),
    kind: optional(oneOf('spiral-steel', 'flat-steel', 'synthetic')),
    width: optional(length(BOUNDS.bone)),
    clear: optional(length(BOUNDS.bonesEnd), 'Clear of each sewn edge'),
    'sold-by': optional(length(BOUNDS.bone), 'Steel is sold in lengths that go up by this'),
    notes: optional(notes()),
  }),
  { along: 'seams', also: [], kind: 'spiral-steel', ...USUAL_BONES },
);

const bodiceLayer = section(
  () => ({
    name: name(),
    cloth: name(),
    allowances: optional(allowances),
    panels: optional(listOf(name()), 'Only these panels; all when absent'),
    notes: optional(notes()),
  }),
  { allowances: {} },
);

export const bodiceDraft = section(
  () => ({
    panels: described(list(panel, MOST.gores), 'From the centre front round to the centre back, one half'),
    'side-seam': optional(station(), 'Where front and back girths part'),
    reduce: optional(
      named(length(BOUNDS.reduce)),
      'By level: what she is laced in, all round; negative is ease',
    ),
    'upper-edge': described(named(length(BOUNDS.upperEdge)), 'By station, above the waist'),
    'upper-point': optional(
      z.pipe(
        z.union([station(), listOf(station())]),
        z.transform((given): readonly string[] => (typeof given === 'string' ? [given] : given)),
      ),
      'Where it may come to a point',
    ),
    'upper-finish': optional(oneOf('bound', 'faced', 'turned')),
    facing: optional(facing, 'Shaped facings of a faced upper edge'),
    allowances: optional(allowances),
    notes: optional(notes()),
  }),
  { reduce: {}, upperPoint: [], upperFinish: 'bound', allowances: {} },
);

export const bodice = section(
  () => ({
    'waist-seam': optional(length(BOUNDS.waistSeam), 'Sewn edge of the bodice, all round'),
    draft: optional(bodiceDraft, 'Drafted over her body, in place of waist-seam and panels'),
    closing: optional(closing, 'Of a drafted bodice'),
    bones: optional(bones, 'Of a drafted bodice'),
    layers: optional(list(bodiceLayer, MOST.layers), 'Of a drafted bodice; the first carries the bones'),
    panels: optional(named(length(BOUNDS.goreTop)), "Each panel's sewn lower edge, by gore"),
    'bones-end': optional(length(BOUNDS.bonesEnd), 'How far above the waist seam the bones end'),
    'second-row': optional(
      length(BOUNDS.secondRow),
      'How far above the first a second row of stitching lies',
    ),
    plies: optional(count(1, 40), 'Thicknesses of the bodice in the waist seam'),
    'drop-below-waist': optional(
      named(length(BOUNDS.drop)),
      'How far the edge lies below the level waist, by station',
    ),
    point: optional(oneOf('centre-front', 'centre-back'), 'Where the edge may come to a point'),
    notes: optional(notes()),
  }),
  { waistSeam: 0, panels: {}, dropBelowWaist: {} },
);
// Its edge is measured, or it is drafted: which of the two is for the checks, as a message wants its place.
z.globalRegistry.add(bodice, { minProperties: 1 });

const strap = section(() => ({
  name: optional(name()),
  cloth: optional(name(), "The skirt's outermost when absent"),
  from: described(station(), 'A station of the upper edge in front'),
  to: described(station(), 'A station of the upper edge behind'),
  length: length(BOUNDS.strap),
  width: length(BOUNDS.trimWidth),
  notes: optional(notes()),
}));

/** Straps without a name are told apart by number. */
export const straps = z.pipe(
  list(strap, MOST.parts),
  z.transform((given) =>
    given.map((own, i) => ({
      ...own,
      name: own.name ?? (given.length === 1 ? 'strap' : `strap-${i + 1}`),
    })),
  ),
);

export const cape = section(
  () => ({
    name: name(),
    from: optional(station(), 'Where on the upper edge it begins'),
    to: optional(station(), 'Where it ends'),
    'sewn-to': optional(
      length(BOUNDS.capeEdge),
      'Length of the edge that it is sewn to, where no bodice is drafted',
    ),
    'over-arm': optional(length(BOUNDS.capeEdge), 'What hangs free over the arm'),
    length: z.union([length(BOUNDS.capeLength), named(length(BOUNDS.capeLength))]),
    angle: optional(angle(BOUNDS.capeAngle), 'Of the ring sector: its inner edge is radius × angle'),
    fullness: optional(times(BOUNDS.fullness), 'Gathered from a rectangle'),
    'on-fold': optional(flag(), 'Its back edge lies on the fold at the centre back'),
    layers: list(layer, MOST.layers),
    notes: optional(notes()),
  }),
  { overArm: 0, onFold: false },
);
