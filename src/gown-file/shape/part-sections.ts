import * as z from 'zod/mini';
import { BOUNDS, MOST } from './bounds.ts';
import { facing, hemFinish, layer } from './cloth-sections.ts';
import { allowances, gore, lengths, train } from './gown-sections.ts';
import { described, list, listOf, optional, section } from './section.ts';
import { USUAL_RUFFLE } from './usual.ts';
import { count, length, share, times } from './values.ts';
import { flag, name, notes, oneOf, station } from './words.ts';

/** What is cut beside the gores: flounces, tiers, godets, overskirts and trains that come off. */

export const flounce = section(
  () => ({
    name: name(),
    layer: name(),
    cloth: name(),
    kind: optional(oneOf('straight', 'circular')),
    depth: length(BOUNDS.flounce),
    fullness: optional(
      times(BOUNDS.fullness),
      'Straight: cloth for one of the edge. Circular: outer edge for one of the inner',
    ),
    'above-hem': optional(length(BOUNDS.down), "Above the layer's sewn hem; 0 sews it to the hem"),
    pieces: optional(count(1, 500), 'All round; straight ones go from selvedge to selvedge when absent'),
    hem: hemFinish(),
    allowances: optional(allowances),
    notes: optional(notes()),
  }),
  { kind: 'straight', fullness: USUAL_RUFFLE, aboveHem: 0, allowances: {} },
);

export const tiers = section(
  () => ({
    name: name(),
    cloth: name(),
    yoke: described(length(BOUNDS.girth), 'Edge that the first tier is gathered to, all round'),
    'yoke-depth': optional(length(BOUNDS.flounce), 'Of a straight yoke, where it is to be cut'),
    tiers: list(length(BOUNDS.sweep), MOST.tiers),
    depths: z.pipe(
      z.union([length(BOUNDS.flounce), listOf(length(BOUNDS.flounce))]),
      z.transform((given) => (typeof given === 'number' ? [given] : given)),
    ),
    allowances: optional(allowances),
    notes: optional(notes()),
  }),
  { allowances: {} },
);

export const godet = section(() => ({
  name: name(),
  seam: station(),
  from: length(BOUNDS.down),
  width: length(BOUNDS.hemWidth),
  layers: optional(listOf(name()), 'Layers that have it; all when absent'),
  notes: optional(notes()),
}));

const pleat = section(
  () => ({
    name: name(),
    kind: oneOf('knife', 'box', 'inverted', 'kick'),
    at: described(station(), 'The seam that it lies at, or is measured from'),
    'from-seam': optional(length(BOUNDS.goreTop), 'Along the waist seam, as sewn; at the seam when absent'),
    gore: optional(name(), 'Which of the two gores at that seam has it, with from-seam'),
    'fold-depth': described(
      length(BOUNDS.pleat),
      'Of one fold, from its outer edge in to its inner edge: a fold takes twice this of cloth',
    ),
    towards: optional(oneOf('front', 'back'), 'Which way the outer fold of a knife or a kick pleat points'),
    'stitched-down': optional(length(BOUNDS.down), 'From the waist seam; a kick pleat has `above-hem`'),
    'above-hem': optional(length(BOUNDS.down), 'A kick pleat: how far above the hem it begins'),
    layers: optional(listOf(name()), 'Layers that have it; all when absent'),
    hem: optional(oneOf('first', 'after'), 'Whether the hem is sewn before the pleat is pressed, or after'),
    notes: optional(notes()),
  }),
  { stitchedDown: 0, hem: 'first' },
);

const dart = section(
  () => ({
    name: optional(name()),
    gore: name(),
    at: optional(
      share(BOUNDS.dartPlace),
      'Along the sewn top of the gore, or of its half, from its front edge',
    ),
    'takes-in': described(length(BOUNDS.dart), 'By which the dart shortens the waist seam'),
    length: described(length(BOUNDS.down), 'From the waist seam to its point'),
    towards: optional(oneOf('front', 'back'), 'Which way it is folded; to the nearer centre when absent'),
    notes: optional(notes()),
  }),
  { at: 0.5 },
);

/** Darts without a name are told apart by number. */
export const darts = z.pipe(
  list(dart, MOST.parts),
  z.transform((given) =>
    given.map((own, i) => ({ ...own, name: own.name ?? (given.length === 1 ? 'dart' : `dart-${i + 1}`) })),
  ),
);

/** Folds that lie where they are said to, down to the hem. */
export const pleats = list(pleat, MOST.parts);

export const overskirt = section(
  () => ({
    name: name(),
    from: station(),
    to: optional(station()),
    gores: list(gore, MOST.gores),
    sweep: optional(length(BOUNDS.sweep)),
    lengths,
    train: optional(train),
    layers: list(layer, MOST.layers),
    fastened: optional(oneOf('hooks', 'buttons', 'snaps', 'ties')),
    edges: optional(oneOf('bound', 'faced', 'turned'), 'How its end edges are finished'),
    'edge-facing': optional(facing, 'Shaped facings of its end edges, where they are faced'),
    'quick-release': optional(flag()),
    notes: optional(notes()),
  }),
  { fastened: 'hooks', edges: 'faced', quickRelease: false },
);
