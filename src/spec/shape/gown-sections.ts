import * as z from 'zod';
import { BOUNDS } from './bounds.ts';
import { named, section } from './section.ts';
import { angle, count, flag, length, name, notes, oneOf, share, station, times } from './values.ts';

/** The sections that decide the shape of the skirt. */

export const bodice = section({
  'waist-seam': length(BOUNDS.waistSeam).meta({ description: 'Sewn edge of the bodice, all round' }),
  panels: named(length(BOUNDS.goreTop))
    .exactOptional()
    .meta({ description: "Each panel's sewn lower edge, by gore" }),
  'bones-end': length(BOUNDS.bonesEnd)
    .exactOptional()
    .meta({ description: 'How far above the waist seam the bones end' }),
  'second-row': length(BOUNDS.secondRow)
    .exactOptional()
    .meta({ description: 'How far above the first a second row of stitching lies' }),
  plies: count(1, 40).exactOptional().meta({ description: 'Thicknesses of the bodice in the waist seam' }),
  'drop-below-waist': named(length(BOUNDS.drop))
    .exactOptional()
    .meta({ description: 'How far the edge lies below the level waist, by station' }),
  point: oneOf('centre-front', 'centre-back')
    .exactOptional()
    .meta({ description: 'Where the edge may come to a point' }),
  notes: notes().exactOptional(),
});

const flare = angle(BOUNDS.flare);
const shareOfGirths = z.union([share(BOUNDS.share), z.array(share(BOUNDS.share))]);

/** `fullness: 2.5` alone is gathered, as full down to the hem. */
export const fullness = z
  .union([
    times(BOUNDS.fullness),
    section({
      ratio: times(BOUNDS.fullness),
      where: oneOf('throughout', 'waist').exactOptional(),
      by: oneOf('gathers', 'pleats').exactOptional(),
      depth: length(BOUNDS.pleat).exactOptional(),
      towards: oneOf('front', 'back', 'box').exactOptional(),
    }),
  ])
  .meta({ description: 'Cloth for one of the sewn edge' });

export const gore = section({
  name: name(),
  'on-fold': flag().exactOptional(),
  top: length(BOUNDS.goreTop)
    .exactOptional()
    .meta({ description: "Sewn top edge; its bodice panel's when absent" }),
  'half-top': length(BOUNDS.goreTop)
    .exactOptional()
    .meta({ description: 'Sewn top edge of one half, on a gore on the fold' }),
  hem: length(BOUNDS.hemWidth)
    .exactOptional()
    .meta({ description: 'Width along the arc at lengths.hem-width-at' }),
  'half-hem': length(BOUNDS.hemWidth).exactOptional(),
  flare: z
    .union([flare, z.tuple([flare, flare])])
    .exactOptional()
    .meta({ description: 'Angle, or one towards the front and one towards the back of the grain' }),
  'half-flare': flare.exactOptional(),
  grain: oneOf('centre', 'front-edge', 'back-edge').exactOptional(),
  share: shareOfGirths.exactOptional().meta({ description: "Its part of the petticoat's girths all round" }),
  'half-share': shareOfGirths.exactOptional(),
  fullness: fullness.exactOptional(),
  notes: notes().exactOptional(),
});

export const lengths = section({
  measured: oneOf('finished', 'cut', 'to-floor').exactOptional(),
  'off-floor': length(BOUNDS.offFloor)
    .exactOptional()
    .meta({ description: 'How high the hem hangs; with to-floor' }),
  'hem-width-at': length(BOUNDS.length)
    .exactOptional()
    .meta({ description: 'Slant distance below the level waist where hem and sweep hold' }),
  at: named(length(BOUNDS.length)).meta({ description: 'By station, from the sewn edge of the bodice' }),
  'to-floor': named(length(BOUNDS.length)).exactOptional().meta({
    description: 'Sewn edge of the bodice to the floor, by station, where `at` holds finished lengths',
  }),
  notes: notes().exactOptional(),
});

export const train = section({
  'on-floor': length(BOUNDS.onFloor)
    .exactOptional()
    .meta({ description: 'Train on the floor at the centre back' }),
  begins: station(),
  full: station().exactOptional().meta({ description: 'Where it is longest, on a gown whose sides differ' }),
  ends: station()
    .exactOptional()
    .meta({ description: 'Where it has risen again, on a gown whose sides differ' }),
  shape: oneOf('round', 'pointed', 'square').exactOptional(),
  notes: notes().exactOptional(),
});

export const allowances = named(length(BOUNDS.allowance)).meta({
  description: 'By edge: seam, waist, hem, or a station',
});
export const roughCut = named(length(BOUNDS.roughCut)).meta({
  description: 'By gore: extra below the hem, cut off after hanging',
});

export const petticoat = section({
  measured: oneOf('along', 'vertical').exactOptional(),
  ease: length(BOUNDS.ease).exactOptional(),
  girths: z.array(section({ down: length(BOUNDS.down), girth: length(BOUNDS.girth) })).exactOptional(),
  hoop: length(BOUNDS.girth).exactOptional().meta({ description: 'Girth of the lowest hoop' }),
  'hoop-off-floor': length(BOUNDS.offFloor).exactOptional(),
  notes: notes().exactOptional(),
});
