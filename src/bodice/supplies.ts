import { lengthOfRun } from '../geometry/length.ts';
import type { BodiceFault } from './bodice-fault.ts';
import { CENTRE_BACK, CENTRE_FRONT } from './bodice-measures.ts';
import { type BoneRule, type Bones, bonesAlong } from './bones.ts';
import type { BodiceDraft } from './draft-bodice.ts';
import type { HalfBodice } from './draft-half.ts';
import { type Lacing, lacingOf } from './lacing.ts';
import { gapAt, gapRound } from './sewn-levels.ts';

/** What closes the bodice; mm. */
export type BodiceClosing =
  | { readonly kind: 'zip' | 'hooks' | 'busk'; readonly at: string; readonly side?: 'left' | 'right' }
  | LacedClosing;

export interface LacedClosing {
  readonly kind: 'lacing';
  readonly at: string;
  readonly side?: 'left' | 'right';
  readonly gap: number | Readonly<Record<string, number>>;
  /** Eyelet to eyelet. */
  readonly eyelets: number;
  readonly fromEdge: number;
  readonly doubledAtWaist: boolean;
  /** Width of the panel behind the lacing. */
  readonly modesty?: number;
  /** Lace that hangs free, both ends together. */
  readonly tails: number;
}

/** Which seams are boned, and with what. */
export interface BoningRule extends BoneRule {
  readonly along: 'seams' | readonly string[];
  readonly also: readonly string[];
}

/** The tape round the waist on the inside, mm. */
export interface WaistTape {
  /** As it closes: the waist as it is laced in. */
  readonly round: number;
  readonly length: number;
}

/** A tape's two ends are turned under and take a hook and an eye, mm each: common practice. */
const TAPE_END = 25;

export function waistTape({ measures, left, right }: BodiceDraft): WaistTape {
  const waist = measures.girths.findIndex(({ above }) => above === 0);
  const round =
    left.levels[waist]!.half + right.levels[waist]!.half + gapRound(measures, measures.girths[waist]!.at);
  return { round, length: round + 2 * TAPE_END };
}

/** Every bone, by the seam that its casing lies along. */
export function bonesOf(
  draft: BodiceDraft,
  rule: BoningRule,
  closings: readonly BodiceClosing[],
): { readonly bones: readonly Bones[]; readonly faults: readonly BodiceFault[] } {
  const faults: BodiceFault[] = [];
  const { left, right } = draft;
  const { stations } = left;
  const asked = [...(rule.along === 'seams' ? stations.slice(1, -1) : rule.along), ...rule.also];
  const bones = stations.flatMap((station, i): Bones[] => {
    if (!asked.includes(station)) return [];
    return placesAlong(draft, i, closings).flatMap(({ half, ...place }) => {
      const seam = sideLength(half, i);
      const own = bonesAlong({ along: station, ...place }, seam, rule);
      if (own !== undefined) return [own];
      faults.push({
        code: 'bones-do-not-fit',
        place: ['bodice', 'bones', 'clear'],
        seam: station,
        length: seam,
        clear: rule.clear,
      });
      return [];
    });
  });
  const unknown = asked.filter((station) => !stations.includes(station));
  faults.push(
    ...unknown.map((station): BodiceFault => {
      const place = ['bodice', 'bones', rule.also.includes(station) ? 'also' : 'along'];
      return { code: 'unknown-bodice-station', place, station, stations };
    }),
  );
  return { bones: left === right ? bones : bones.filter(({ count }) => count > 0), faults };
}

interface BonePlace {
  readonly half: HalfBodice;
  readonly side?: 'left' | 'right';
  readonly count: number;
}

/** A seam has one bone; an edge that opens has one on each side of it, a laced one two, before and behind its eyelets. */
function placesAlong(
  { left, right }: BodiceDraft,
  station: number,
  closings: readonly BodiceClosing[],
): BonePlace[] {
  const name = left.stations[station]!;
  const closing = closings.find(({ at }) => at === name);
  const each = closing === undefined ? 1 : closing.kind === 'lacing' ? 2 : 1;
  if (name === CENTRE_FRONT || name === CENTRE_BACK)
    return [{ half: left, count: closing === undefined ? 1 : 2 * each }];
  const opens = (side: 'left' | 'right'): boolean =>
    closing !== undefined && (closing.side === undefined || closing.side === side);
  const countOn = (side: 'left' | 'right'): number => (opens(side) ? 2 * each : 1);
  if (left === right && countOn('left') === countOn('right'))
    return [{ half: left, count: 2 * countOn('left') }];
  return [
    { half: left, side: 'left', count: countOn('left') },
    { half: right, side: 'right', count: countOn('right') },
  ];
}

/** Length of the seam, edge or fold at a station, mm. */
export function sideLength({ pieces }: HalfBodice, station: number): number {
  const piece = pieces[station];
  const run = piece === undefined ? pieces[station - 1]!.edges[1]! : piece.edges[3]!;
  return lengthOfRun(run.curves);
}

/** Eyelets and lace of one laced closing. */
export function lacingAt(
  draft: BodiceDraft,
  closing: LacedClosing,
): { readonly lacing: Lacing } | { readonly faults: readonly BodiceFault[] } {
  const half = closing.side === 'right' ? draft.right : draft.left;
  const station = half.stations.indexOf(closing.at);
  const edge = sideLength(half, station);
  const upper = -half.upper.valueAt(half.upper.ways[station]!);
  const lower = -half.lower.valueAt(half.lower.ways[station]!);
  const gap = [gapAbove(draft, closing, upper), gapAbove(draft, closing, lower)] as const;
  const lacing = lacingOf({
    edge,
    gap,
    pitch: closing.eyelets,
    fromEdge: closing.fromEdge,
    fromEnds: closing.fromEdge,
    doubledAtWaist: closing.doubledAtWaist,
    waist: upper,
    tails: closing.tails,
  });
  const place = ['bodice', 'closing'];
  if (lacing === undefined)
    return {
      faults: [
        {
          code: 'eyelets-do-not-fit',
          place: [...place, 'from-edge'],
          seam: closing.at,
          length: edge,
          end: closing.fromEdge,
        },
      ],
    };
  const widest = Math.max(...gap);
  if (closing.modesty !== undefined && !(closing.modesty > widest))
    return {
      faults: [
        { code: 'modesty-too-narrow', place: [...place, 'modesty'], width: closing.modesty, gap: widest },
      ],
    };
  return { lacing };
}

/** How wide the lacing gapes at a height: as at the level nearest to it. */
function gapAbove({ measures }: BodiceDraft, closing: LacedClosing, above: number): number {
  const nearest = measures.girths.reduce((best, level) =>
    Math.abs(level.above - above) < Math.abs(best.above - above) ? level : best,
  );
  return gapAt(closing, nearest.at);
}
