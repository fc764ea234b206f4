import { resolve } from 'node:path';
import { sortDiagnostics } from '../diagnostics/place.ts';
import { quoteReport } from '../money/quote-report.ts';
import { quoteText } from '../print/papers/quote-text.ts';
import { clientFile } from '../publish/paper-files.ts';
import { deskPaperOf } from '../publish/pattern-sheets.ts';
import { drawnViews } from '../publish/views-file.ts';
import { english } from '../words/english.ts';
import { workroom } from '../workroom/workroom.ts';
import { askedPaper } from './asked-paper.ts';
import { ExitStatus, isCutShort, statusOf } from './exit-status.ts';
import { findingsJson } from './findings-json.ts';
import { hangGown } from './hang-gown.ts';
import { jsonText } from './json-text.ts';
import type { Machine } from './machine.ts';
import { fontBytes } from './package-files.ts';
import { planGownLays } from './plan-gown-lays.ts';
import { hasErrors, printFindings } from './print-findings.ts';
import { readGown } from './read-gown.ts';
import { writeNewFile } from './write-new-file.ts';

export interface QuoteFlags {
  readonly out?: string;
  readonly paper?: string;
  readonly json?: boolean;
}

/** `quote`: what the client pays, from the lays, the notions and the hours. */
export async function quoteGown(file: string, flags: QuoteFlags, machine: Machine): Promise<ExitStatus> {
  const { gown, diagnostics: found } = readGown(file, machine);
  if (gown === undefined || hasErrors(found)) {
    if (flags.json) machine.out(jsonText({ findings: findingsJson(found) }));
    else printFindings(found, machine);
    return ExitStatus.specWrong;
  }
  // The page that she approves shows the gown as it hangs, which is worked out while the cloths are planned.
  const hanging = flags.out === undefined ? undefined : hangGown(gown);
  const { lays, diagnostics: laid } = await planGownLays(gown, 'quick', machine);
  const { facts } = workroom(gown, lays);
  const diagnostics = sortDiagnostics([...found, ...laid]);
  if (flags.out !== undefined) {
    const paper = deskPaperOf(gown, askedPaper(flags.paper)?.name);
    const hung = await hanging;
    const { bytes } = await clientFile(gown, facts, diagnostics, {
      paper,
      font: fontBytes,
      ...(hung && { views: drawnViews(gown, hung) }),
    });
    writeNewFile(resolve(machine.folder, flags.out), bytes, flags.out);
  }
  if (flags.json) {
    const report = quoteReport(gown.gown, facts.pricing) ?? null;
    machine.out(jsonText({ quote: report, findings: findingsJson(diagnostics) }));
  } else {
    printFindings(diagnostics, machine);
    const words = english(gown.gown.units);
    machine.out(quoteText(gown.gown, facts.pricing, words));
    if (isCutShort(diagnostics)) machine.out(`${words.client.cutShort}\n`);
  }
  return statusOf(diagnostics);
}
