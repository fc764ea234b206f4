/** What bones are made of: steel is sold by its length, synthetic is cut from a length bought by the metre. */
export type BoneKind = 'spiral-steel' | 'flat-steel' | 'synthetic';

export interface BoneRule {
  readonly kind: BoneKind;
  readonly width: number;
  /** Clear of each sewn edge, mm. */
  readonly clear: number;
  /** Lengths go up by this where steel is sold, mm. */
  readonly step: number;
}

/** Bones of one length in one place. */
export interface Bones {
  readonly along: string;
  readonly side?: 'left' | 'right';
  /** Of the seam between the sewn edges, mm. */
  readonly seam: number;
  /** The longest that keeps clear of both edges. */
  readonly room: number;
  /** As it is cut or bought: never longer than there is room for. */
  readonly length: number;
  /** Of the casing, edge to edge. */
  readonly casing: number;
  readonly count: number;
}

/** @returns undefined where the seam leaves no room */
export function bonesAlong(
  place: Pick<Bones, 'along' | 'side' | 'count'>,
  seam: number,
  rule: BoneRule,
): Bones | undefined {
  const room = seam - 2 * rule.clear;
  const length = rule.kind === 'synthetic' ? Math.floor(room) : shorterOf(room, rule.step);
  if (!(length > 0)) return undefined;
  return { ...place, seam, room, length, casing: seam };
}

/** A length that falls on a step by rounding alone is that step. */
function shorterOf(room: number, step: number): number {
  return Math.floor(room / step + 1e-6) * step;
}

/** What to buy: steels by the length, synthetic bone in one. */
export function bonesToBuy(
  bones: readonly Bones[],
  kind: BoneKind,
): readonly { readonly length: number; readonly count: number }[] {
  if (kind === 'synthetic') {
    const run = bones.reduce((sum, { length, count }) => sum + length * count, 0);
    return run === 0 ? [] : [{ length: run, count: 1 }];
  }
  const lengths = [...new Set(bones.map(({ length }) => length))].sort((a, b) => a - b);
  return lengths.map((length) => ({
    length,
    count: bones.reduce((sum, bone) => sum + (bone.length === length ? bone.count : 0), 0),
  }));
}
