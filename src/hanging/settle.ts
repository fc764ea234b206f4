import { type ClothMesh, isOnPlane } from './cloth-mesh.ts';
import bytes, { type SettlingCode } from './settling.wasm';
import type { Surroundings } from './sewn-cloth.ts';
import type { Ties } from './ties.ts';

export type { SettlingCode };

/** What one settling asks beside the cloth itself. */
export interface Settles {
  readonly steps: number;
  /** By place: how far it falls in a step, and bending length³ · fall. */
  readonly falls: Float64Array;
  readonly stiffness: Float64Array;
  /** Shear length · fall. */
  readonly shearing: number;
  /** Part of its motion that the cloth keeps from step to step. */
  readonly keeps: number;
  readonly ties: Ties;
}

/** Most that a length is drawn in in one step, as a share of it. */
const DRAWN_IN = 0.05;
/** The same where the cloth hangs from few places, which could not carry it otherwise. */
const DRAWN_IN_AT_TIES = 0.5;

/** Cloth lies on other cloth, not in it, mm. */
const ABOVE = 5;

let compiled: WebAssembly.Module | undefined;

/** The compiled code with a memory of its own. */
export function settlingCode(): SettlingCode & { readonly memory: { readonly buffer: ArrayBuffer } } {
  compiled ??= new WebAssembly.Module(bytes);
  return new WebAssembly.Instance(compiled, {}).exports as ReturnType<typeof settlingCode>;
}

/**
 * Lets the cloth fall in small steps, one round of corrections each (Macklin, Storey, Lu, Terdiman, Chentanez,
 * Jeschke, Müller, "Small steps in physics simulation", 2019), by code that is compiled.
 */
export function settle(mesh: ClothMesh, around: Surroundings, settles: Settles): void {
  const code = settlingCode();
  const at = (address: number, count: number): Float64Array =>
    new Float64Array(code.memory.buffer, address, count);
  const write = (address: number, values: Float64Array): void => at(address, values.length).set(values);
  const { closing, columns } = mesh;
  const onPlane = [0, columns - 1].map((column) => Number(isOnPlane(closing, column, columns)));
  code.begin(columns, mesh.rows, Number(closing === 'ring'), onPlane[0]!, onPlane[1]!);
  surround(code, around, write);
  const { ends } = settles.ties;
  code.beginTies(ends.length + mesh.stitched.length);
  for (const [tie, { anchor, pickUp, outside }] of ends.entries())
    code.setTie(tie, anchor.above, anchor.part, pickUp, outside);
  for (const [i, { on, under, off }] of mesh.stitched.entries())
    code.setStitch(ends.length + i, on, under, off);
  // Once all arrays are there: where the memory grows, what was seen of it is gone.
  write(code.placesAt(), mesh.place);
  write(code.motionAt(), mesh.motion);
  write(code.easeAt(), mesh.ease);
  write(code.fallsAt(), settles.falls);
  write(code.areaAt(), mesh.area);
  write(code.alongAt(), mesh.along);
  write(code.acrossAt(), mesh.across);
  write(code.gatheredAt(), mesh.gathered);
  write(code.liftedAt(), mesh.lifted);
  write(code.cellAt(), mesh.cell);
  write(code.skewAt(), mesh.skew);
  write(code.bendBeforeAt(), mesh.bends.before);
  write(code.bendAfterAt(), mesh.bends.after);
  write(code.bendLeanAt(), mesh.bends.lean);
  write(code.bendReachAt(), mesh.bends.reach);
  write(code.stiffnessAt(), settles.stiffness);
  const drawnIn = ends.length > 0 ? DRAWN_IN_AT_TIES : DRAWN_IN;
  code.settle(settles.steps, settles.shearing, settles.keeps, drawnIn);
  mesh.place.set(at(code.placesAt(), mesh.place.length));
  mesh.motion.set(at(code.motionAt(), mesh.motion.length));
}

function surround(
  code: SettlingCode,
  { body, outline, floor, bodyGrip, floorGrip }: Surroundings,
  write: (address: number, values: Float64Array) => void,
): void {
  if (body !== undefined) {
    code.beginBody(body.halfWidth.length, body.lowest, body.step, bodyGrip);
    write(code.halfWidthAt(), body.halfWidth);
    write(code.halfDepthAt(), body.halfDepth);
  }
  if (outline !== undefined) {
    const { reach, directions, lowest, step } = outline;
    code.beginOutline(reach.length / directions, directions, lowest, step, ABOVE);
    write(code.reachAt(), reach);
  }
  if (floor !== undefined) code.setFloor(floor, floorGrip);
}
