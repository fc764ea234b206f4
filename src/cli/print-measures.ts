import { resolve } from 'node:path';
import { safeText } from '../diagnostics/safe-text.ts';
import { readSpec } from '../gown-file/read-spec.ts';
import type { Spec } from '../gown-file/spec.ts';
import { gownAsked } from '../pipeline.ts';
import { measuresForm, measuresText } from '../print/papers/measures-form.ts';
import { writePdf } from '../print/pdf/write-pdf.ts';
import { deskPaperOf } from '../publish/pattern-sheets.ts';
import { english } from '../words/english.ts';
import { askedPaper } from './asked-paper.ts';
import { chosenTemplate } from './chosen-template.ts';
import { ExitStatus } from './exit-status.ts';
import { WrongCommandLine } from './fault.ts';
import type { Machine } from './machine.ts';
import { fontBytes, templates } from './package-files.ts';
import { hasErrors, printFindings } from './print-findings.ts';
import { basesBeside, readSource } from './read-source.ts';
import { writeNewFile } from './write-new-file.ts';

export interface MeasuresFlags {
  readonly from?: string;
  readonly out?: string;
  readonly paper?: string;
}

/** `measures`: the blank form for a fitting, as text, or as a PDF where a file is named. */
export async function printMeasures(
  file: string | undefined,
  flags: MeasuresFlags,
  machine: Machine,
): Promise<ExitStatus> {
  if (file !== undefined && flags.from !== undefined) {
    throw new WrongCommandLine('measures: give a spec or a template, not both.');
  }
  const asked = askedPaper(flags.paper);
  const spec = file === undefined ? specOfTemplate(flags.from) : specOf(file, machine);
  if (spec === undefined) return ExitStatus.specWrong;
  const { gown, diagnostics } = gownAsked(spec);
  if (gown === undefined) {
    printFindings(diagnostics, machine);
    return ExitStatus.specWrong;
  }
  // With neither spec nor template nothing is known of the gown.
  const isOpen = file === undefined && flags.from === undefined;
  const words = english(gown.units);
  if (flags.out === undefined) {
    machine.out(`${measuresText(gown, words, isOpen)}\n`);
    return ExitStatus.done;
  }
  const { pages, bookmarks } = measuresForm(gown, words, deskPaperOf({ gown }, asked?.name), isOpen);
  const pdf = await writePdf(pages, {
    title: `${gown.name}: ${words.measuresForm.title}`,
    bookmarks,
    font: fontBytes,
  });
  writeNewFile(resolve(machine.folder, flags.out), pdf.bytes, flags.out);
  machine.out(`${safeText(flags.out)}\n`);
  return ExitStatus.done;
}

function specOf(file: string, machine: Machine): Spec | undefined {
  const { source, diagnostics: unreadable } = readSource(file, machine);
  const { spec, diagnostics } =
    source === undefined ? { diagnostics: unreadable } : readSpec(source, basesBeside(file, machine));
  if (hasErrors(diagnostics)) printFindings(diagnostics, machine);
  return spec;
}

/** Without a spec or a template, the form is for a plain floor-length gown. */
function specOfTemplate(name = 'floor-length'): Spec | undefined {
  const template = chosenTemplate(templates(), name);
  return readSpec({ name: `${template.name}.yaml`, text: template.text }).spec;
}
