import { join, parse, resolve } from 'node:path';
import { safeText } from '../diagnostics/safe-text.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import { toileOf } from '../gown/toile.ts';
import type { LayEffort } from '../lay/plan/plan-lays.ts';
import { type Drafting, type DraftOutputs, draftOutputs, draftWhole } from '../pipeline.ts';
import { chosenPieces, type PatternOptions } from '../publish/pattern-files.ts';
import type { SheetsSince } from '../publish/sheets-since.ts';
import { askedLength } from './asked-length.ts';
import { askedPaper } from './asked-paper.ts';
import { draftSince, sinceText } from './draft-since.ts';
import { ExitStatus } from './exit-status.ts';
import { WrongCommandLine } from './fault.ts';
import { findingsJson } from './findings-json.ts';
import { hangGown } from './hang-gown.ts';
import { jsonText } from './json-text.ts';
import { knowAll } from './know-all.ts';
import type { Machine } from './machine.ts';
import { fontBytes } from './package-files.ts';
import { planGownLays } from './plan-gown-lays.ts';
import { hasErrors, printFindings } from './print-findings.ts';
import { readGown } from './read-gown.ts';
import { refuseUnwritable, writeOutputs } from './write-outputs.ts';

export interface DraftFlags {
  readonly out?: string;
  readonly paper?: string;
  readonly sheets?: 'all' | 'ends';
  readonly layersApart?: boolean;
  readonly gores?: readonly string[];
  readonly layer?: readonly string[];
  readonly sheet?: readonly string[];
  readonly since?: string;
  readonly toile?: boolean;
  readonly projector?: boolean;
  readonly audit?: boolean;
  readonly every?: string;
  readonly effort?: LayEffort;
  readonly replace?: boolean;
  readonly json?: boolean;
  /** Where pieces lay in an earlier version; no option of its own. */
  readonly places?: PatternOptions['places'];
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
  let since: SheetsSince | undefined;
  if (drafting.gown !== undefined && !hasErrors(diagnostics)) {
    const asked = { ...flags, ...(paper && { paper: paper.name }) };
    if (flags.since !== undefined && flags.toile)
      throw new WrongCommandLine('--since: a toile is cut in one go; take --toile or --since.');
    if (flags.since !== undefined)
      since = draftSince(file, flags.since, drafting.gown, chosenOf(asked), machine);
    const path = resolve(machine.folder, folder);
    refuseUnwritable(path, folder);
    const outputs = await outputsOf(
      drafting.gown,
      diagnostics,
      { ...asked, ...sinceFlags(since, flags.sheet) },
      machine,
    );
    diagnostics = outputs.diagnostics;
    if (flags.audit && !(await passesAudit(drafting.gown, outputs, machine))) return ExitStatus.specWrong;
    if (!hasErrors(diagnostics))
      files = writeOutputs(path, outputs, { replace: flags.replace ?? false, shown: folder });
  }
  if (flags.json) {
    const changed = since && { again: since.again, gone: since.gone, count: since.count };
    machine.out(
      jsonText({ folder, files, ...(changed && { since: changed }), findings: findingsJson(diagnostics) }),
    );
  } else {
    printFindings(diagnostics, machine);
    machine.out(files.map((name) => `${safeText(join(folder, name))}\n`).join(''));
    const again = files.find((name) => name.endsWith('-again.pdf')) ?? '';
    if (since !== undefined && files.length > 0) machine.out(`\n${sinceText(since, flags.since!, again)}`);
  }
  return hasErrors(diagnostics) ? ExitStatus.specWrong : ExitStatus.done;
}

/** What the sheets are laid out by, of all that was asked for. */
function chosenOf({ paper, gores, layer: layers, sheets, layersApart }: DraftFlags): PatternOptions {
  return {
    ...(paper !== undefined && { paper }),
    ...(gores && { gores }),
    ...(layers && { layers }),
    endsOnly: sheets === 'ends',
    layersApart: layersApart ?? false,
  };
}

/** Sheets that changed are printed like those that are asked for by their labels; all of them need no second file. */
function sinceFlags(
  since: SheetsSince | undefined,
  asked: readonly string[] = [],
): Pick<DraftFlags, 'sheet' | 'places'> {
  if (since === undefined) return {};
  const { again, count, places } = since;
  return {
    ...(places !== undefined && { places }),
    ...(again.length > 0 && again.length < count && { sheet: [...new Set([...asked, ...again])] }),
  };
}

function draftingOf(file: string, flags: DraftFlags, machine: Machine): Drafting {
  const drafting = readGown(file, machine);
  if (!flags.toile || drafting.gown === undefined || hasErrors(drafting.diagnostics)) return drafting;
  return draftWhole(toileOf(drafting.gown.asked));
}

async function outputsOf(
  gown: DraftedGown,
  found: DraftOutputs['diagnostics'],
  flags: DraftFlags,
  machine: Machine,
): Promise<DraftOutputs> {
  const { paper, gores, layer: layers, sheet: again, places } = flags;
  const every = askedLength('--every', flags.every, gown.gown.units);
  const pieces = gown.cut.pieces;
  knowAll('--gores', gores, new Set(pieces.map((piece) => piece.gore)));
  knowAll('--layer', layers, new Set(pieces.flatMap((piece) => piece.layers)));
  const chosen = { ...(gores && { gores }), ...(layers && { layers }) };
  if (chosenPieces(gown, chosen).length === 0)
    throw new WrongCommandLine('those layers have no piece of those gores.');
  const lays = planGownLays(gown, flags.effort ?? 'quick', machine);
  const hanging = hangGown(gown);
  const outputs = await draftOutputs(gown, found, {
    lays,
    hanging,
    ...chosen,
    ...(paper !== undefined && { paper }),
    ...(again !== undefined && { again }),
    ...(places !== undefined && { places }),
    ...(every !== undefined && { every }),
    endsOnly: flags.sheets === 'ends',
    layersApart: flags.layersApart ?? false,
    projector: flags.projector ?? false,
    forClient: !flags.toile,
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
  const { auditFile } = await import('../publish/audit-file.ts');
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
