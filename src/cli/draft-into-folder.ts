import { join, parse, resolve } from 'node:path';
import { plainText } from '../diagnostics/plain-text.ts';
import type { LayEffort } from '../lay-plans/plan-lays.ts';
import { chosenPieces } from '../outputs/pattern-files.ts';
import { type DraftedGown, type Drafting, type DraftOutputs, draftOutputs, draftSpec } from '../pipeline.ts';
import { toileSpec } from '../workroom/toile-spec.ts';
import { askedLength } from './asked-length.ts';
import { askedPaper } from './asked-paper.ts';
import { ExitStatus } from './exit-status.ts';
import { WrongCommandLine } from './fault.ts';
import { findingsJson } from './findings-json.ts';
import { knowAll } from './know-all.ts';
import type { Machine } from './machine.ts';
import { fontBytes } from './package-files.ts';
import { planGownLays } from './plan-gown-lays.ts';
import { hasErrors, printFindings } from './print-findings.ts';
import { readGown } from './read-gown.ts';
import { writeOutputs } from './write-outputs.ts';

export interface DraftFlags {
  readonly out?: string;
  readonly paper?: string;
  readonly sheets?: 'all' | 'ends';
  readonly layersApart?: boolean;
  readonly gores?: readonly string[];
  readonly layer?: readonly string[];
  readonly sheet?: readonly string[];
  readonly toile?: boolean;
  readonly projector?: boolean;
  readonly audit?: boolean;
  readonly every?: string;
  readonly effort?: LayEffort;
  readonly replace?: boolean;
  readonly json?: boolean;
}

/** `draft`: everything that comes of a spec, into one folder. */
export async function draftIntoFolder(
  file: string,
  flags: DraftFlags,
  machine: Machine,
): Promise<ExitStatus> {
  const paper = askedPaper(flags.paper);
  const drafting = draftingOf(file, flags, machine);
  let { diagnostics } = drafting;
  const folder = flags.out ?? join('out', `${nameOf(file)}${flags.toile ? '-toile' : ''}`);
  let files: string[] = [];
  if (drafting.gown !== undefined && !hasErrors(diagnostics)) {
    const outputs = await outputsOf(
      drafting.gown,
      diagnostics,
      { ...flags, ...(paper && { paper: paper.name }) },
      machine,
    );
    diagnostics = outputs.diagnostics;
    if (flags.audit && !(await passesAudit(drafting.gown, outputs, machine))) return ExitStatus.specWrong;
    if (!hasErrors(diagnostics)) {
      const path = resolve(machine.folder, folder);
      files = writeOutputs(path, outputs, { replace: flags.replace ?? false, shown: folder });
    }
  }
  if (flags.json) {
    machine.out(`${JSON.stringify({ folder, files, findings: findingsJson(diagnostics) }, null, 2)}\n`);
  } else {
    printFindings(diagnostics, machine);
    machine.out(files.map((name) => `${plainText(join(folder, name))}\n`).join(''));
  }
  return hasErrors(diagnostics) ? ExitStatus.specWrong : ExitStatus.done;
}

function draftingOf(file: string, flags: DraftFlags, machine: Machine): Drafting {
  const drafting = readGown(file, machine);
  if (!flags.toile || drafting.gown === undefined || hasErrors(drafting.diagnostics)) return drafting;
  return draftSpec(toileSpec(drafting.gown.spec));
}

async function outputsOf(
  gown: DraftedGown,
  found: DraftOutputs['diagnostics'],
  flags: DraftFlags,
  machine: Machine,
): Promise<DraftOutputs> {
  const { paper, gores, layer: layers, sheet: again } = flags;
  const every = askedLength('--every', flags.every, gown.spec.units);
  const pieces = gown.cut.pieces;
  knowAll('--gores', gores, new Set(pieces.map((piece) => piece.gore)));
  knowAll('--layer', layers, new Set(pieces.flatMap((piece) => piece.layers)));
  const chosen = { ...(gores && { gores }), ...(layers && { layers }) };
  if (chosenPieces(gown, chosen).length === 0)
    throw new WrongCommandLine('those layers have no piece of those gores.');
  const lays = planGownLays(gown, flags.effort ?? 'quick', machine);
  const outputs = await draftOutputs(gown, found, {
    lays,
    ...chosen,
    ...(paper !== undefined && { paper }),
    ...(again !== undefined && { again }),
    ...(every !== undefined && { every }),
    endsOnly: flags.sheets === 'ends',
    layersApart: flags.layersApart ?? false,
    projector: flags.projector ?? false,
    font: fontBytes,
  });
  knowAll('--sheet', again, new Set(outputs.report.pattern.sheets.map((sheet) => sheet.label)));
  return outputs;
}

/** The sheets read back and compared with the draft, as a stranger would; what is found goes to the messages. */
async function passesAudit(
  gown: DraftedGown,
  { files, report }: DraftOutputs,
  machine: Machine,
): Promise<boolean> {
  const { auditFile } = await import('../outputs/audit-file.ts');
  const { auditWords, hasFaults } = await import('./audit-pdf.ts');
  const name = `pattern-${report.pattern.paper}.pdf`;
  const bytes = files.get(name);
  if (bytes === undefined || typeof bytes === 'string') return true;
  const audit = auditFile(gown, bytes);
  const { faults, figures } = auditWords(audit, name);
  machine.err(faults + figures);
  return !hasFaults(audit);
}

/** The spec's name without its folder and ending; a file called `..yaml` must not lead out of `out`. */
function nameOf(file: string): string {
  const { name } = parse(file);
  return /^\.*$/.test(name) ? 'gown' : name;
}
