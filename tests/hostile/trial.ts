import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { CutPiece } from '../../src/draft/piece.ts';
import { endOf, startOf } from '../../src/geometry/evaluate.ts';
import { gownToLay } from '../../src/lay/plan/lay-to-plan.ts';
import { type LaysPlanned, planLays } from '../../src/lay/plan/plan-lays.ts';
import {
  type DraftedGown,
  type Drafting,
  type DraftOutputs,
  draft,
  draftOutputs,
} from '../../src/pipeline.ts';
import { compareGowns, comparisonSvg } from '../../src/publish/comparison.ts';
import { areaOf } from '../outside/measure/path.ts';
import { readPattern } from '../outside/measure/pattern.ts';
import { faultsOfCsv } from './faults-of-csv.ts';
import { faultsOfFindings } from './faults-of-findings.ts';
import { faultsOfHtml } from './faults-of-html.ts';
import { faultsOfPdf } from './faults-of-pdf.ts';
import { faultsOfReport } from './faults-of-report.ts';
import { faultsOfSvg } from './faults-of-svg.ts';

/** One spec taken through the tool, and what should not have happened on the way. */
export interface Trial {
  readonly faults: readonly string[];
  /** The spec has no errors: it was drafted. */
  readonly isDrafted: boolean;
  /** Everything was written, read again and looked through. */
  readonly isWritten: boolean;
}

export interface Thoroughness {
  /** Sheets that a pattern may take and still be drawn, 0 for none: thousands of sheets take their time. */
  readonly mostSheets: number;
  /** Plan the cloth too. */
  readonly lays: boolean;
}

const FONT = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');

/** Drafts a text as `draft` does and looks at all that comes of it. It never throws. */
export async function trialOf(text: string, { mostSheets, lays }: Thoroughness): Promise<Trial> {
  const faults: string[] = [];
  let isDrafted = false;
  let isWritten = false;
  try {
    const drafting = draft({ name: 'gown.yaml', text });
    faults.push(...faultsOfFindings(drafting.diagnostics, text));
    const { gown } = drafting;
    isDrafted = gown !== undefined && !hasErrors(drafting);
    if (gown !== undefined && isDrafted) faults.push(...faultsOfReport(gown.report));
    if (gown === undefined && !hasErrors(drafting)) faults.push('nothing was drafted, and no error says why');
    if (gown !== undefined && isDrafted) faults.push(...gown.cut.pieces.flatMap(gapsOf));
    if (gown !== undefined && isDrafted && paperArea(gown) < mostSheets * SHEET) {
      isWritten = true;
      const planned = lays ? quickLays(gown) : undefined;
      faults.push(...(await faultsOfOutputs(gown, drafting, text, planned)));
    }
  } catch (error) {
    faults.push(error instanceof Error ? `thrown: ${error.stack}` : `thrown: ${String(error)}`);
  }
  return { faults, isDrafted, isWritten };
}

function hasErrors({ diagnostics }: Pick<Drafting, 'diagnostics'>): boolean {
  return diagnostics.some(({ level }) => level === 'error');
}

/** The area of one sheet's frame, mm². */
const SHEET = 190 * 260;

function paperArea({ report }: DraftedGown): number {
  return [report, ...report.overskirts]
    .flatMap(({ gores }) => gores)
    .reduce((sum, { area }) => sum + area, 0);
}

/** The first lay that holds, without a search for a shorter one. */
function quickLays(gown: DraftedGown): LaysPlanned {
  let asked = 0;
  return planLays(gownToLay(gown), { say: (mm) => `${mm.toFixed(0)} mm`, shouldStop: () => ++asked > LOOKS });
}

/** How often a search may ask whether to stop. */
const LOOKS = 20;

async function faultsOfOutputs(
  gown: DraftedGown,
  { spec, diagnostics }: Drafting,
  text: string,
  lays: LaysPlanned | undefined,
): Promise<string[]> {
  const options = {
    font: () => readFileSync(FONT),
    ...(lays === undefined ? {} : { lays: Promise.resolve(lays) }),
  };
  const outputs = await draftOutputs(gown, diagnostics, options);
  const same = { name: 'gown.yaml', spec: spec!, gown, diagnostics };
  const comparison = compareGowns(same, same);
  return [
    ...faultsOfFindings(outputs.diagnostics, text),
    ...faultsOfReport(outputs.report),
    ...[...outputs.files].flatMap(([name, content]) =>
      faultsOfFile(name, content).map((fault) => `${name}: ${fault}`),
    ),
    ...faultsOfPieces(outputs),
    ...faultsOfSvg(comparisonSvg(comparison)).map((fault) => `compare.svg: ${fault}`),
    ...comparison.pieces.changes
      .filter(({ verdict, marks }) => verdict !== 'same' || marks.length > 0)
      .map(({ gore, verdict }) => `compared with itself, ${gore} is ${verdict}`),
  ];
}

/** Where the lines of a piece do not run on from each other: drawn, such a gap would be closed in silence. */
function gapsOf({ gore, piece, cutEdges }: CutPiece): string[] {
  return [piece.edges, cutEdges].flatMap((edges) => {
    const lines = edges.flatMap(({ name, curves }) => curves.map((curve) => ({ name, curve })));
    return lines.flatMap(({ name, curve }, i) => {
      const next = lines[(i + 1) % lines.length]!;
      const [end, start] = [endOf(curve), startOf(next.curve)];
      const gap = Math.hypot(end.x - start.x, end.y - start.y);
      return gap <= GAP ? [] : [`${gore}: ${gap.toFixed(4)} mm between ${name} and ${next.name}`];
    });
  });
}

/** mm, a hundredth of what a printer can show. */
const GAP = 0.001;

function faultsOfFile(name: string, content: string | Uint8Array): string[] {
  if (typeof content !== 'string') return faultsOfPdf(content);
  if (name.endsWith('.html')) return faultsOfHtml(content);
  return name.endsWith('.csv') ? faultsOfCsv(content) : faultsOfSvg(content);
}

/** Outlines that are closed and hold cloth, and a sewn outline smaller than the cut one. */
function faultsOfPieces({ files }: DraftOutputs): string[] {
  const pattern = readPattern(String(files.get('pattern.svg')));
  if (pattern.pieces.length === 0) return ['the pattern has no piece'];
  return pattern.pieces.flatMap(({ gore, cut, sew, grain }) => [
    ...(areaOf(cut) > 1 ? [] : [`${gore} has an area of ${areaOf(cut)}`]),
    ...(cut.from.x === cut.to.x && cut.from.y === cut.to.y ? [] : [`${gore} is not closed`]),
    ...(sew.size >= 3 ? [] : [`${gore} has ${sew.size} sewn edges`]),
    ...(grain.length > 0 ? [] : [`${gore} has no grain line`]),
  ]);
}
