import type { DraftedGown } from '../drafted-gown.ts';
import type { KeptEntries } from '../kept/kept-entries.ts';
import { type DraftOutputs, draftOutputs } from '../pipeline.ts';
import { chosenPieces } from '../publish/pattern-sheets.ts';
import { askedLength } from './asked-length.ts';
import type { DraftFlags } from './draft-flags.ts';
import { type DraftAsked, type Drafted, draftedBefore, keepDraft } from './drafted-before.ts';
import { WrongCommandLine } from './fault.ts';
import { hangGown } from './hang-gown.ts';
import { KEPT_NAME, keptFile, keptIn } from './kept-file.ts';
import { knowAll } from './know-all.ts';
import type { Machine } from './machine.ts';
import { fontBytes } from './package-files.ts';
import { planGownLays } from './plan-gown-lays.ts';
import { hasErrors } from './print-findings.ts';
import { writeOutputs } from './write-outputs.ts';

/** A gown to draft, what was found of it so far, and all that was read for it. */
export interface ToDraft extends Pick<DraftAsked, 'sources'> {
  readonly gown: DraftedGown;
  readonly diagnostics: DraftOutputs['diagnostics'];
}

/**
 * Drafts into a folder, or finds that nothing is to be done there; no files where errors were found. Undefined where the
 * sheets do not pass the audit that was asked for.
 * @param shown the folder as the user named it
 */
export async function draftedInto(
  folder: string,
  { gown, diagnostics: found, sources }: ToDraft,
  flags: DraftFlags,
  machine: Machine,
  shown: string,
): Promise<Drafted | undefined> {
  // Where it goes and what is printed is left out, and nothing else: whatever else is asked for makes it another draft.
  const { out: _, json: _json, replace = false, audit = false, ...asked } = flags;
  const draft = { sources, asked };
  const kept = keptIn(folder);
  const before = audit ? undefined : draftedBefore(kept, draft, folder);
  if (before !== undefined) return before;
  const outputs = await outputsOf(gown, found, flags, machine, kept);
  const { diagnostics } = outputs;
  if (audit && !(await passesAudit(gown, outputs, machine))) return undefined;
  if (hasErrors(diagnostics)) return { files: [], diagnostics };
  const bytes = (report: string) => {
    keepDraft(kept, draft, diagnostics, report);
    return keptFile(kept);
  };
  const files = writeOutputs(folder, { ...outputs, memory: { name: KEPT_NAME, bytes } }, { replace, shown });
  return { files, diagnostics };
}

async function outputsOf(
  gown: DraftedGown,
  found: DraftOutputs['diagnostics'],
  flags: DraftFlags,
  machine: Machine,
  kept: KeptEntries,
): Promise<DraftOutputs> {
  const { paper, gores, layer: layers, sheet: again, places } = flags;
  const every = askedLength('--every', flags.every, gown.gown.units);
  const pieces = gown.cut.pieces;
  knowAll('--gores', gores, new Set(pieces.map((piece) => piece.gore)));
  knowAll('--layer', layers, new Set(pieces.flatMap((piece) => piece.layers)));
  const chosen = { ...(gores && { gores }), ...(layers && { layers }) };
  if (chosenPieces(gown, chosen).length === 0)
    throw new WrongCommandLine('those layers have no piece of those gores.');
  const lays = planGownLays(gown, flags.effort ?? 'quick', machine, { kept });
  // A search of minutes is not made shorter by drawing meanwhile, and Ctrl-C should be heard from its first second on.
  if (flags.effort === 'thorough') await lays;
  const hanging = hangGown(gown, kept);
  const outputs = await draftOutputs(gown, found, {
    lays,
    hanging,
    kept,
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
