import { join, resolve } from 'node:path';
import { sortDiagnostics } from '../diagnostics/place.ts';
import { safeText } from '../diagnostics/safe-text.ts';
import { toileOf } from '../gown/toile.ts';
import { type Drafting, draftWhole } from '../pipeline.ts';
import { type PatternOptions, paperOf } from '../publish/pattern-sheets.ts';
import type { SheetsSince } from '../publish/sheets-since.ts';
import { tooLarge } from '../publish/too-large.ts';
import { askedPaper } from './asked-paper.ts';
import { DefaultFolder } from './default-folder.ts';
import type { DraftFlags } from './draft-flags.ts';
import { draftSince, sinceText } from './draft-since.ts';
import { draftedInto } from './drafted-into.ts';
import { ExitStatus, statusOf } from './exit-status.ts';
import { WrongCommandLine } from './fault.ts';
import { findingsJson } from './findings-json.ts';
import { jsonText } from './json-text.ts';
import type { Machine } from './machine.ts';
import { hasErrors, printFindings } from './print-findings.ts';
import { type GownRead, readGown } from './read-gown.ts';
import { refuseUnwritable } from './write-outputs.ts';

/** `draft`: everything that comes of a spec, into one folder. */
export async function draftIntoFolder(
  file: string,
  flags: DraftFlags,
  machine: Machine,
): Promise<ExitStatus> {
  const paper = askedPaper(flags.paper);
  const drafting = draftingOf(file, flags, machine);
  let diagnostics = withWhatIsTooLarge(drafting, paper?.name, flags);
  const unasked =
    flags.out === undefined ? new DefaultFolder(machine.folder, file, flags.toile ?? false) : undefined;
  const folder = flags.out ?? unasked!.shown;
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
    if (!flags.replace) unasked?.refuseAnothers();
    const draft = { ...drafting, gown: drafting.gown, diagnostics };
    const drafted = await draftedInto(
      path,
      draft,
      { ...asked, ...sinceFlags(since, flags.sheet) },
      machine,
      folder,
    );
    if (drafted === undefined) return ExitStatus.specWrong;
    ({ files, diagnostics } = drafted);
    if (files.length > 0) unasked?.claim();
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
  return statusOf(diagnostics);
}

function withWhatIsTooLarge(
  { gown, diagnostics }: Drafting,
  paper: string | undefined,
  flags: DraftFlags,
): Drafting['diagnostics'] {
  if (gown === undefined || hasErrors(diagnostics)) return diagnostics;
  return sortDiagnostics([...diagnostics, ...tooLarge(gown, paperOf(gown, paper), chosenOf(flags))]);
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

function draftingOf(file: string, flags: DraftFlags, machine: Machine): GownRead {
  const drafting = readGown(file, machine);
  if (!flags.toile || drafting.gown === undefined || hasErrors(drafting.diagnostics)) return drafting;
  return { ...draftWhole(toileOf(drafting.gown.asked)), sources: drafting.sources };
}
