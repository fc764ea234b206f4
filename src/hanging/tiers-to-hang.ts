import { type Figure, halfWidthOf, type TiersUnder, tiersBegin } from './figure.ts';
import { FINEST, FOURS } from './gown-panels.ts';
import { newCloth, type Panel, placeIndex, type SewnCloth, type Strip } from './sewn-cloth.ts';
import type { SpacePoint } from './space-point.ts';
import { CIRCLE, CIRCLE_POINTS } from './unit-circle.ts';

/** Cloth between two columns of the widest tier, about, mm: net falls in deep folds, and its gathers are finer than any grid. */
const COLUMN = 60;
/** How far it starts off what holds it out, mm, and how high the ripples are that it starts in. */
const LIES_OFF = 4;
const RIPPLE = 8;

/** Net tiers as they are worn under a skirt, by themselves: the yoke over her, and every tier gathered to the one above. */
export function tiersToHang(
  { yoke, tiers }: TiersUnder,
  { bare, worn }: { readonly bare: Figure; readonly worn: Figure },
  waistHeight: number,
  facts: Pick<SewnCloth, 'bendingLength' | 'shearLength'>,
): { readonly cloth: SewnCloth; readonly joins: readonly number[] } {
  const begins = Math.max(10, tiersBegin(bare, yoke, waistHeight));
  const widest = Math.max(...tiers.map(({ girth }) => girth));
  const across = FOURS * Math.max(4, Math.round(widest / 2 / COLUMN / FOURS));
  const rowsOf = (depth: number): number => FOURS * Math.max(1, Math.round(depth / FINEST / FOURS));
  const waist = bare.girthAt(waistHeight);
  const strips = [
    ringStrip(waist / 2, yoke / 2, begins, {
      across,
      down: rowsOf(begins),
      first: 0,
    }),
  ];
  for (const { girth, depth } of tiers) {
    const first = endOf(strips[strips.length - 1]!);
    strips.push(
      ringStrip(girth / 2, girth / 2, depth, {
        across,
        down: rowsOf(depth),
        first,
      }),
    );
  }
  const down = endOf(strips[strips.length - 1]!);
  const panel: Panel = { name: 'net', across, strips };
  const cloth = newCloth([panel], down, 'mirrored', facts);
  start(cloth, strips, worn, waistHeight);
  const girths = [yoke, ...tiers.map(({ girth }) => girth)];
  for (const [i, strip] of strips.entries()) if (i > 0) gatherTier(cloth, strip, girths[i]! / girths[i - 1]!);
  return { cloth, joins: strips.slice(0, -1).map(endOf) };
}

/** Part of its fullness that a tier shows in folds at its lower edge; the rest stays in gathers finer than the grid. */
const OPENS = 0.6;

/** Stiff gathers open slowly: all the way down a tier. */
function gatherTier(cloth: SewnCloth, { first, down }: Strip, fullness: number): void {
  const least = 1 / (Math.max(1, fullness) * 1.02);
  for (let column = 0; column <= cloth.panels[0]!.across; column++)
    for (let row = 1; row <= down; row++)
      cloth.gathered[placeIndex(cloth, column, first + row)] = least + ((1 - least) * OPENS * row) / down;
}

function endOf({ first, down }: Strip): number {
  return first + down;
}

/** A strip of two widths: straight, or as much of a cone. */
function ringStrip(
  top: number,
  bottom: number,
  depth: number,
  { across, down, first }: Pick<Strip, 'first' | 'down'> & { readonly across: number },
): Strip {
  const flat = new Float64Array(2 * (across + 1) * (down + 1));
  for (let column = 0; column <= across; column++) {
    for (let row = 0; row <= down; row++) {
      const at = 2 * (column * (down + 1) + row);
      flat[at] = (top + ((bottom - top) * row) / down) * (column / across - 0.5);
      flat[at + 1] = (depth * row) / down;
    }
  }
  return { first, down, flat };
}

/** Every column down what holds it out, in ripples that it may fall into folds from. */
function start(cloth: SewnCloth, strips: readonly Strip[], worn: Figure, waistHeight: number): void {
  const half = CIRCLE_POINTS / 2;
  const { across } = cloth.panels[0]!;
  const placeAt = (part: number, height: number, off: number): SpacePoint => {
    const at = Math.min(half - 1, Math.floor(part * half));
    const roundness = worn.roundnessAt(height);
    const wide = halfWidthOf(worn.girthAt(height), roundness);
    const [x, y] = [0, 1].map(
      (axis) =>
        CIRCLE[2 * at + axis]! + (CIRCLE[2 * at + 2 + axis]! - CIRCLE[2 * at + axis]!) * (part * half - at),
    ) as [number, number];
    return [x * (wide + off), y * (wide * roundness + off), height];
  };
  for (let column = 0; column <= across; column++) {
    const part = column / across;
    let last = placeAt(part, waistHeight, 0);
    cloth.held[placeIndex(cloth, column, 0)] = 1;
    cloth.start.set(last, 3 * placeIndex(cloth, column, 0));
    for (const { first, down, flat } of strips) {
      const length = flat[3]! - flat[1]!;
      for (let row = 1; row <= down; row++) {
        const ripple = first === 0 ? 0 : (column % 4 < 2 ? 1 : -1) * RIPPLE * Math.min(1, row / 4);
        const wanted = placeAt(part, Math.max(1, last[2] - length), LIES_OFF);
        const rise = Math.min(STEEPEST * length, Math.max(0, farOut(wanted) - farOut(last)));
        const height = Math.max(1, last[2] - Math.sqrt(length * length - rise * rise));
        last = placeAt(part, height, LIES_OFF);
        const out = 1 + ripple / farOut(last);
        const own = placeIndex(cloth, column, first + row);
        cloth.start.set([last[0] * out, last[1] * out, height], 3 * own);
        // The yoke fits her, and is held as it lies.
        if (first === 0) cloth.held[own] = 1;
      }
    }
  }
}

/** It goes out no more than this for each mm of cloth. */
const STEEPEST = 0.95;

function farOut([x, y]: SpacePoint): number {
  return Math.sqrt(x * x + y * y);
}
