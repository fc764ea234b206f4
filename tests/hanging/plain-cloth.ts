import type { ClothMesh } from '../../src/hanging/cloth-mesh.ts';
import { columnsOf, type SewnCloth } from '../../src/hanging/sewn-cloth.ts';

export type Place = readonly [number, number, number];

/** How a piece of cloth lies flat, where it is let go and what holds it, by column and row. */
interface Plain {
  readonly across: number;
  readonly down: number;
  readonly closing: SewnCloth['closing'];
  readonly flat: (column: number, row: number) => readonly [number, number];
  readonly start: (column: number, row: number) => Place;
  readonly isHeld: (column: number, row: number) => boolean;
  readonly bendingLength: number;
}

export function plainCloth({ across, down, closing, flat, start, isHeld, bendingLength }: Plain): SewnCloth {
  const places = (columns: number): [number, number][] =>
    Array.from({ length: columns * (down + 1) }, (_, i) => [Math.floor(i / (down + 1)), i % (down + 1)]);
  const lies = Float64Array.from(places(across + 1).flatMap(([c, r]) => [...flat(c, r)]));
  const panels = [{ name: 'cloth', across, strips: [{ first: 0, down, flat: lies }] }];
  const all = places(columnsOf({ panels, closing }));
  return {
    panels,
    down,
    closing,
    held: Uint8Array.from(all, ([c, r]) => (isHeld(c, r) ? 1 : 0)),
    start: Float64Array.from(all.flatMap(([c, r]) => [...start(c, r)])),
    gathered: new Float64Array(all.length).fill(1),
    lifted: new Float64Array(all.length),
    bendingLength,
    hemStiffness: 1,
    shearLength: 1500,
  };
}

export function placeOf({ place, rows }: ClothMesh, column: number, row: number): Place {
  const at = 3 * (column * rows + row);
  return [place[at]!, place[at + 1]!, place[at + 2]!];
}

/** A sector of a ring of `angle` between two radii, sewn into a ring along its straight edges, and let go as a cone. */
export function sewnCone(
  angle: number,
  inner: number,
  outer: number,
  size: { readonly across: number; readonly down: number },
  bendingLength: number,
  slope: number,
): SewnCloth {
  const radiusAt = (row: number): number => inner + ((outer - inner) * row) / size.down;
  const held = (inner * angle) / (2 * Math.PI);
  return plainCloth({
    ...size,
    closing: 'ring',
    flat: (column, row) => {
      const turn = (angle * column) / size.across;
      return [radiusAt(row) * Math.cos(turn), radiusAt(row) * Math.sin(turn)];
    },
    start: (column, row) => {
      const turn = (2 * Math.PI * column) / size.across;
      const slant = radiusAt(row) - inner;
      const uneven = slant * 0.01 * Math.sin(5 * turn + 1) + slant * 0.01 * Math.sin(7 * turn);
      const out = held + slant * slope + uneven;
      return [out * Math.sin(turn), -out * Math.cos(turn), -slant * Math.sqrt(1 - slope * slope)];
    },
    isHeld: (_column, row) => row === 0,
    bendingLength,
  });
}
