import type { ClothMesh } from './cloth-mesh.ts';

/** Lays another mesh where one hangs: each new place halfway between the old ones around it, or where one of them is. */
export function refined(coarse: ClothMesh, fine: ClothMesh): void {
  for (let column = 0; column < fine.columns; column++) {
    const across = (column * fine.stride) / coarse.stride;
    const from = Math.floor(across);
    const partAcross = across - from;
    const beyond = partAcross === 0 ? from : (from + 1) % coarse.columns;
    for (let row = 0; row < fine.rows; row++) {
      const own = column * fine.rows + row;
      if (fine.held[own] === 1) continue;
      const down = (row * fine.stride) / coarse.stride;
      const above = Math.floor(down);
      const partDown = down - above;
      const below = partDown === 0 ? above : above + 1;
      for (let axis = 0; axis < 3; axis++) {
        const at = (c: number, r: number): number => coarse.place[3 * (c * coarse.rows + r) + axis]!;
        const left = at(from, above) * (1 - partDown) + at(from, below) * partDown;
        const right = at(beyond, above) * (1 - partDown) + at(beyond, below) * partDown;
        fine.place[3 * own + axis] = left * (1 - partAcross) + right * partAcross;
      }
    }
  }
}
