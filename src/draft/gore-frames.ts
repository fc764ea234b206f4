import { SETTLED } from '../geometry/tolerances.ts';
import type { Gore, Gown, LayerShape } from '../gown/gown.ts';
import type { Undraftable } from './draft-gown.ts';
import { type EdgeProfile, integrateAlong } from './edge-profiles.ts';
import type { GoreFrame } from './gore-frame.ts';
import { sectorFrame } from './sector-frame.ts';

/** Lays every gore flat. Under a drop the width at the level waist is the one whose dropped edge is the gore's top. */
export function goreFrames(gown: Gown, waist: EdgeProfile, shape: LayerShape): GoreFrame[] | Undraftable {
  const frames: GoreFrame[] = [];
  for (const [i, gore] of gown.gores.entries()) {
    const frame = frameOf(gore, waist, i, shape);
    if (frame === undefined) return { reason: 'narrows-to-nothing', gore: gore.name };
    frames.push(frame);
  }
  return frames;
}

function frameOf(gore: Gore, waist: EdgeProfile, i: number, shape: LayerShape): GoreFrame | undefined {
  const from = waist.ways[i]!;
  const to = waist.ways[i + 1]!;
  let width = to - from;
  for (let round = 0; round < 300; round++) {
    const flare = flareOf(gore, width, shape);
    const kappa = flare / width;
    const next = integrateAlong(waist, (way) => 1 / (1 + kappa * waist.valueAt(way)), from, to);
    const change = Math.abs(next / width - 1);
    if (!(next > 0) || !Number.isFinite(next)) return undefined;
    width = next;
    if (change < SETTLED) return sectorFrame(width, ...aboutGrain(gore, flare));
  }
  return undefined;
}

/** Angle of the sector whose width at the level waist is `width`. */
function flareOf(gore: Gore, width: number, shape: LayerShape): number {
  const smaller = 1 - shape.smallerAcross;
  if (gore.width.kind === 'flare') return gore.width.angle * smaller;
  if (gore.width.kind === 'hem')
    return (gore.width.width * smaller - width) / (gore.width.at * (1 - shape.smallerAlong));
  throw new Error('girths are laid flat by shaped frames');
}

function aboutGrain(gore: Gore, flare: number): [number, number] {
  if ('frontPart' in gore.grain) return [flare * gore.grain.frontPart, flare * (1 - gore.grain.frontPart)];
  const { front, back } = gore.grain;
  const excess = (flare - front - back) / 2;
  return [front + excess, back + excess];
}
