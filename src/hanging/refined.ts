import type { ClothMesh } from './cloth-mesh.ts';

/** Lays a finer mesh where a coarser one hangs: each new place halfway between the old ones around it. */
export function refined(coarse: ClothMesh, fine: ClothMesh): void {
  const times = coarse.stride / fine.stride;
  for (let column = 0; column < fine.columns; column++) {
    const from = Math.floor(column / times);
    const to = (from + 1) % coarse.columns;
    const partAcross = (column % times) / times;
    for (let row = 0; row < fine.rows; row++) {
      const own = column * fine.rows + row;
      if (fine.held[own] === 1) continue;
      const above = Math.floor(row / times);
      const partDown = (row % times) / times;
      const below = partDown === 0 ? above : above + 1;
      const beyond = partAcross === 0 ? from : to;
      for (let axis = 0; axis < 3; axis++) {
        const at = (c: number, r: number): number => coarse.place[3 * (c * coarse.rows + r) + axis]!;
        const left = at(from, above) * (1 - partDown) + at(from, below) * partDown;
        const right = at(beyond, above) * (1 - partDown) + at(beyond, below) * partDown;
        fine.place[3 * own + axis] = left * (1 - partAcross) + right * partAcross;
      }
    }
  }
}
