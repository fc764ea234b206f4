import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { isSameOutline } from '../draft/same-outline.ts';
import * as problems from '../fittings/fitting-problems.ts';
import { isForBoth } from '../fittings/resolve-fitting.ts';
import type { AskedBodice, BodiceFitting } from '../gown/above-waist.ts';
import { type BodiceDraft, piecesOf } from './draft-bodice.ts';
import { fitHalf, type HalfFitted } from './fit-half.ts';
import { measureBodice } from './measure-bodice.ts';
import { type HalfTakes, halfTakes, nothingPinned, pinnedFaults } from './pinned-bodice.ts';

/** What one fitting did to the panels; mm, before and after, all round. */
export interface BodiceTrace {
  readonly date: string;
  readonly side?: 'left' | 'right';
  readonly upper: readonly [number, number];
  readonly lower: readonly [number, number];
  /** Panels whose outline changed. */
  readonly panels: readonly { readonly name: string; readonly side?: 'left' | 'right' }[];
}

export interface FittedBodice {
  readonly draft: BodiceDraft;
  readonly traces: readonly BodiceTrace[];
  /** By side: the seams that were pinned as far as the waist seam. */
  readonly pinned: Readonly<Record<'left' | 'right', readonly string[]>>;
  readonly diagnostics: readonly Diagnostic[];
}

interface Takes {
  readonly left: HalfTakes;
  /** The same object as `left` where both sides are altered alike. */
  readonly right: HalfTakes;
}

/** Pattern, toile, fitting, pattern anew: the panels with all that was pinned in them, one date after the other. */
export function fitBodice(draft: BodiceDraft, asked: AskedBodice): FittedBodice {
  const diagnostics: Diagnostic[] = [];
  const traces: BodiceTrace[] = [];
  const none = nothingPinned(draft.left.stations.length);
  let takes: Takes = { left: none, right: none };
  let now = draft;
  for (const fitting of asked.fittings) {
    const found = pinnedFaults(fitting);
    const next = taken(asked, fitting, now, takes, found);
    diagnostics.push(...found);
    if (found.some(({ level }) => level === 'error')) continue;
    const fitted = fittedDraft(draft, next, fitting);
    if ('problem' in fitted) {
      diagnostics.push(fitted.problem);
      continue;
    }
    traces.push(traceOf(fitting, now, fitted.draft));
    takes = next;
    now = fitted.draft;
  }
  const reaching = ({ seams }: HalfTakes): string[] =>
    draft.left.stations.filter((_, i) => seams[i]!.some(({ open }) => open.below));
  const pinned = { left: reaching(takes.left), right: reaching(takes.right) };
  return { draft: now, traces, pinned, diagnostics };
}

function taken(
  asked: AskedBodice,
  fitting: BodiceFitting,
  { left, right }: BodiceDraft,
  before: Takes,
  found: Diagnostic[],
): Takes {
  const own = halfTakes(asked, fitting, 'left', left, before.left, found);
  if (before.left === before.right && left === right && isForBoth(fitting)) return { left: own, right: own };
  const others: Diagnostic[] = [];
  const other = halfTakes(asked, fitting, 'right', right, before.right, others);
  found.push(...others.filter((one) => !found.some((said) => isSame(said, one))));
  return { left: own, right: other };
}

function isSame(a: Diagnostic, b: Diagnostic): boolean {
  return a.code === b.code && a.span.start === b.span.start;
}

function fittedDraft(
  draft: BodiceDraft,
  { left, right }: Takes,
  fitting: BodiceFitting,
): { readonly draft: BodiceDraft } | { readonly problem: Diagnostic } {
  const { measures } = draft;
  const one = fitHalf(measures, draft.left, left, right);
  if ('reason' in one) return { problem: told(one, fitting) };
  const isAlike = left === right && draft.left === draft.right;
  const other = isAlike ? one : fitHalf(measures, draft.right, right, left);
  if ('reason' in other) return { problem: told(other, fitting) };
  const halves = { left: one.half, right: other.half };
  return { draft: { ...draft, ...halves, pieces: piecesOf(halves.left, halves.right) } };
}

function told(fault: Exclude<HalfFitted, { half: unknown }>, { place }: BodiceFitting): Diagnostic {
  switch (fault.reason) {
    case 'takes-all':
      return problems.bodiceTakesAll(place('seams'), fault.panel);
    case 'crosses':
      return problems.bodiceEdgesCross(place('upper-edge'), fault.station);
    case 'does-not-settle':
      return problems.bodiceEdgeDoesNotSettle(place());
  }
}

function traceOf({ date, side }: BodiceFitting, before: BodiceDraft, after: BodiceDraft): BodiceTrace {
  const [was, is] = [measureBodice(before), measureBodice(after)];
  const isAlike = after.left === after.right;
  const changed = (key: 'left' | 'right') =>
    after[key].pieces
      .filter((piece, p) => !isSameOutline(piece, before[key].pieces[p]!))
      .map(({ gore }) => (isAlike ? { name: gore } : { name: gore, side: key }));
  return {
    date,
    ...(side === undefined ? {} : { side }),
    upper: [was.upper, is.upper],
    lower: [was.lower, is.lower],
    panels: isAlike ? changed('left') : [...changed('left'), ...changed('right')],
  };
}
