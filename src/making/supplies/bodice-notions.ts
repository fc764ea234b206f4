import { bonesToBuy } from '../../bodice/bones.ts';
import type { DraftedBodice } from '../../bodice/draft-asked.ts';
import { sideLength } from '../../bodice/supplies.ts';
import type { BonesAsked } from '../../gown/above-waist.ts';
import type { ClosureFacts } from '../closure/closure-facts.ts';

/** What a drafted bodice is made up with. Lengths mm. */
export type BodiceNotion =
  | {
      readonly kind: 'bones';
      readonly material: BonesAsked['kind'];
      readonly length: number;
      readonly count: number;
    }
  | { readonly kind: 'casing'; readonly width: number; readonly length: number }
  | { readonly kind: 'eyelets'; readonly count: number }
  | {
      readonly kind:
        | 'lace'
        | 'waist-tape'
        | 'busk'
        | 'bodice-zip'
        | 'through-zip'
        | 'bodice-hooks'
        | 'upper-binding';
      readonly length: number;
    };

/** Ends of a binding or a tape that are turned in, both together, mm: common practice. */
const TURNED_ENDS = 50;

/** @param listed whether the spec's own notions name such a thing already */
export function bodiceNotions(
  bodice: DraftedBodice,
  closure: ClosureFacts | undefined,
  listed: (words: RegExp) => boolean,
): BodiceNotion[] {
  const { bones, lacing, tape, figures, asked } = bodice;
  const { draft } = asked;
  const notions: BodiceNotion[] = [];
  if (draft.bones !== undefined && !listed(/\bbon(e|es|ing)\b|\bsteels?\b/i)) {
    const { kind: material, width } = draft.bones;
    notions.push(
      ...bonesToBuy(bones, material).map((buy): BodiceNotion => ({ kind: 'bones', material, ...buy })),
    );
    const run = bones.reduce((sum, { casing, count }) => sum + casing * count, 0);
    notions.push({ kind: 'casing', width, length: run });
  }
  if (lacing !== undefined && !listed(/\beyelets?\b|\blac(e|ing)\b/i)) {
    const sides = draft.closing?.side === undefined ? lacedEdges(bodice) : 2;
    notions.push({ kind: 'eyelets', count: sides * lacing.eyelets });
    notions.push({ kind: 'lace', length: (lacing.lace * sides) / 2 });
  }
  notions.push(...closingNotions(bodice, closure, listed));
  if (!listed(/waist ?(stay|tape)/i)) notions.push({ kind: 'waist-tape', length: tape.length });
  if (draft.upperFinish === 'bound' && !listed(/\bbinding\b/i))
    notions.push({ kind: 'upper-binding', length: figures.upper + TURNED_ENDS });
  return notions;
}

/** Whether one zip runs from the upper edge through the waist seam and down the skirt. */
export function isOneZip({ asked }: DraftedBodice, closure: ClosureFacts): boolean {
  const { closing } = asked.draft;
  return (
    closing?.kind === 'zip' &&
    closure.kind === 'zip' &&
    closing.at === closure.at &&
    closure.starts === 0 &&
    closure.opening !== undefined
  );
}

/** A centre is laced once; another seam without a side on both sides of her, each with two edges. */
function lacedEdges({ asked }: DraftedBodice): number {
  const at = asked.draft.closing?.at;
  return at === 'centre-front' || at === 'centre-back' ? 2 : 4;
}

function closingNotions(
  bodice: DraftedBodice,
  closure: ClosureFacts | undefined,
  listed: (words: RegExp) => boolean,
): BodiceNotion[] {
  const { asked, draft } = bodice;
  const { closing } = asked.draft;
  if (closing === undefined || closing.kind === 'lacing') return [];
  const half = closing.side === 'right' ? draft.right : draft.left;
  const station = half.stations.indexOf(closing.at);
  if (station < 0) return [];
  const length = sideLength(half, station);
  if (closing.kind === 'busk') return listed(/\bbusk\b/i) ? [] : [{ kind: 'busk', length }];
  if (closure !== undefined && isOneZip(bodice, closure))
    return listed(/\bzip/i) ? [] : [{ kind: 'through-zip', length: length + closure.opening! }];
  if (closing.kind === 'zip') return listed(/\bzip/i) ? [] : [{ kind: 'bodice-zip', length }];
  return listed(/\bhooks?\b/i) ? [] : [{ kind: 'bodice-hooks', length }];
}
