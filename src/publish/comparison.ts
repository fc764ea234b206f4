import { type Comparison, compare } from '../compare/compare.ts';
import type { GownVersion } from '../compare/gown-version.ts';
import type { PieceChange } from '../compare/piece-change.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { CutPiece } from '../draft/piece.ts';
import { runAcross, unfolded } from '../draft/unfolded.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import type { Curve } from '../geometry/curve.ts';
import { translated } from '../geometry/transform.ts';
import type { LayPlan } from '../lay/plan/lay-plan.ts';
import { type Overlay, overlayDrawing } from '../print/pattern/overlay-drawing.ts';
import { writeSvg } from '../print/svg/write-svg.ts';
import { layCost } from '../report/lay-report.ts';
import { ENGLISH_PATTERN } from '../words/english-pattern.ts';
import { pieceWords } from '../words/piece-words.ts';
import { workroom } from '../workroom/workroom.ts';
import { paperOf } from './pattern-sheets.ts';
import { sheetsSince } from './sheets-since.ts';

/** A gown that was read under a name and drafted. */
export interface NamedGown {
  readonly name: string;
  /** As it was read. */
  readonly spec: GownVersion['spec'];
  readonly gown: DraftedGown;
  readonly diagnostics: readonly Diagnostic[];
  /** Absent where the cloth was not planned: nothing is said of what to buy then. */
  readonly lays?: readonly LayPlan[];
}

/** Two gowns, their lays where they were planned, and the new one's sheets against the old one's. */
export function compareGowns(
  old: NamedGown,
  now: NamedGown,
  cutFrom: ReadonlyMap<string, NamedGown> = new Map(),
): Comparison {
  const { again, gone, count } = sheetsSince(old.gown, now.gown, paperOf(now.gown));
  const known = new Map([...new Set(cutFrom.values())].map((version) => [version, versionOf(version)]));
  return compare(versionOf(old), versionOf(now), {
    sheets: { again, gone, count },
    cutFrom: new Map([...cutFrom].map(([layer, version]) => [layer, known.get(version)!])),
  });
}

function versionOf({ name, spec, gown, diagnostics, lays = [] }: NamedGown): GownVersion {
  const price = workroom(gown, lays).facts.pricing.quote?.total;
  return {
    name,
    spec,
    content: gown.gown.content,
    pieces: gown.cut.pieces,
    layers: gown.layers.map((layer) => ({ name: layer.name, cloth: layer.cloth.name })),
    lays: lays.map(({ cloth, layers, length, buy }) => {
      const cost = layCost(gown.gown, cloth, buy);
      return { cloth, layers, length, buy, ...(cost === undefined ? {} : { cost }) };
    }),
    ...(price === undefined ? {} : { price }),
    findings: diagnostics,
  };
}

/** Every piece that changes, old and new laid over each other; pieces alike in several layers are drawn once. */
export function comparisonSvg({ pieces, old, now }: Comparison): string {
  const changed = pieces.changes.filter(({ verdict, marks }) => verdict !== 'same' || marks.length > 0);
  const alike = new Map<string, { change: PieceChange; layers: string[] }>();
  for (const change of changed) {
    const key = JSON.stringify([
      change.gore,
      change.side,
      change.verdict,
      change.piece.layers,
      change.was?.layers,
    ]);
    const known = alike.get(key);
    if (known === undefined) alike.set(key, { change, layers: [change.layer] });
    else known.layers.push(change.layer);
  }
  const overlays = [...alike.values()].map(({ change, layers }) => overlayOf(change, layers, now.spec.units));
  const title = ENGLISH_PATTERN.overlayTitle(now.spec.gown, old.name, now.name, overlays.length > 0);
  return writeSvg(overlayDrawing(title, overlays, ENGLISH_PATTERN));
}

function overlayOf(
  change: PieceChange,
  layers: readonly string[],
  units: GownVersion['spec']['units'],
): Overlay {
  const { gore, side, verdict, shift, was, piece } = change;
  const back = { x: shift.x, y: shift.y };
  const now = linesOf(piece);
  const moved = (runs: readonly (readonly Curve[])[]) =>
    runs.map((run) => run.map((curve) => translated(curve, back)));
  return {
    gore,
    layers,
    verdict,
    title: `${side === undefined ? gore : `${gore} ${side}`} (${layers.join(', ')}): ${verdict}`,
    words: pieceWords(change, units),
    old: was === undefined ? { cut: [], sew: [] } : linesOf(was, piece.piece.middle !== undefined),
    now: { cut: moved(now.cut), sew: moved(now.sew) },
  };
}

interface Lines {
  readonly cut: Overlay['old']['cut'];
  readonly sew: Overlay['old']['sew'];
}

/** @param opened both halves of a piece that was cut on the fold, for a new one that is drawn whole */
function linesOf({ cutEdges, piece }: CutPiece, opened = false): Lines {
  const whole = opened ? unfolded(cutEdges) : undefined;
  const cut = whole === undefined ? cutEdges : [...whole.half, ...whole.other];
  const seams = piece.edges.filter(({ name }) => !opened || name !== 'fold').map(({ curves }) => curves);
  const other = whole === undefined ? [] : seams.map((run) => runAcross(run, whole.foldAt));
  return { cut: [cut.flatMap(({ curves }) => curves)], sew: [...seams, ...other] };
}
