import type { LayerShape } from '../gown/layer.ts';
import type { GownLines } from '../gown/lines.ts';
import { type PlainHem, withoutFullness } from '../gown/lines-of-layer.ts';
import { integrateAlong } from './edge-profiles.ts';
import { goreFrames } from './gore-frames.ts';
import { hemProfile } from './hem-profile.ts';
import type { Undraftable } from './undraftable.ts';
import { waistProfile } from './waist-profile.ts';

/**
 * Where the hem of every gore lies without fullness and uncut by any layer but for what the layer is shorter by, and
 * how wide the gore is there.
 */
export function plainHems(full: GownLines, { shorter, smallerAlong }: LayerShape): PlainHem[] | Undraftable {
  const gown = withoutFullness(full);
  const waist = waistProfile(gown);
  if (waist === undefined) return { reason: 'waist-does-not-settle' };
  const frames = goreFrames(gown, waist);
  if ('reason' in frames) return frames;
  // In the layer a slant is shorter by what the cloth stretches.
  const shape = { shorter: shorter / (1 - smallerAlong), smallerAcross: 0, smallerAlong: 0 };
  const hem = hemProfile(gown, frames, shape);
  if (hem === undefined) return { reason: 'hem-does-not-settle' };
  return frames.map((frame, i) => {
    const [from, to] = [hem.ways[i]!, hem.ways[i + 1]!];
    // A little width more or less at a depth lengthens the hem by as much over the width, twice: once for its share
    // of the gore, once for the gore's share of the way.
    const over = (f: (depth: number) => number): number =>
      integrateAlong(hem, (way) => f(hem.valueAt(way)) / frame.widthAt(hem.valueAt(way)) ** 2, from, to);
    const level = over((depth) => depth) / over(() => 1);
    const least = Math.min(hem.valueAt(from), hem.valueAt(to));
    return { level, least, width: frame.widthAt(level), waist: frame.widthAt(0) };
  });
}
