import { resolve } from 'node:path';
import { faultText, isWarning } from '../audit/audit-fault.ts';
import { safeText } from '../diagnostics/safe-text.ts';
import { auditFile, type FileAudit } from '../publish/audit-file.ts';
import { ENGLISH_AUDIT as words } from '../words/english-tables.ts';
import { ExitStatus } from './exit-status.ts';
import { MachineFault } from './fault.ts';
import { findingsJson } from './findings-json.ts';
import { jsonText } from './json-text.ts';
import type { Machine } from './machine.ts';
import { hasErrors, printFindings } from './print-findings.ts';
import { readAtMost } from './read-at-most.ts';
import { readGown } from './read-gown.ts';

export interface AuditFlags {
  readonly json?: boolean;
}

/** `audit`: a pattern's PDF against the draft of a spec. */
export function auditPdf(pdf: string, file: string, flags: AuditFlags, machine: Machine): ExitStatus {
  const bytes = bytesOf(resolve(machine.folder, pdf), pdf);
  const { gown, diagnostics } = readGown(file, machine);
  if (gown === undefined || hasErrors(diagnostics)) {
    if (flags.json) machine.out(jsonText({ findings: findingsJson(diagnostics) }));
    else printFindings(diagnostics, machine);
    return ExitStatus.specWrong;
  }
  const audit = auditFile(gown, bytes);
  if (flags.json) machine.out(jsonText(auditJson(audit)));
  else {
    const { faults, figures } = auditWords(audit, pdf);
    machine.err(faults);
    machine.out(figures);
  }
  return hasFaults(audit) ? ExitStatus.specWrong : ExitStatus.done;
}

export function hasFaults(audit: FileAudit): boolean {
  return audit.faults.some((fault) => !isWarning(fault));
}

/** An audit in words: the faults, for messages, and the figures. Either may be empty. */
export function auditWords(
  audit: FileAudit,
  pdf: string,
): { readonly faults: string; readonly figures: string } {
  const faults = audit.faults.map((fault) => {
    const { message, why, hint } = faultText(fault);
    const level = isWarning(fault) ? 'warning' : 'error';
    return `${safeText(pdf)}: ${level}[${fault.kind}]: ${safeText(message)}\n  why: ${why}\n  do:  ${hint}\n\n`;
  });
  return { faults: faults.join(''), figures: figuresText(audit, pdf) };
}

function figuresText(audit: FileAudit, pdf: string): string {
  if (audit.sheets === 0) return '';
  const { square } = audit;
  const found = [
    words.compared(audit.sheets, audit.metres.toFixed(1), audit.farthest.toFixed(3)),
    ...(square === undefined ? [] : [words.square(square.across.toFixed(2), square.down.toFixed(2))]),
    ...(audit.madeFrom === '' ? [] : [words.madeFrom(safeText(audit.madeFrom))]),
  ];
  return `${safeText(pdf)}: ${found.join('; ')}\n`;
}

function auditJson(audit: FileAudit): object {
  const faults = audit.faults.map((fault) => ({ ...fault, ...faultText(fault) }));
  return { ...audit, faults };
}

function bytesOf(path: string, name: string): Uint8Array {
  const bytes = readAtMost(LARGEST_PDF, path, name);
  if (bytes.length <= LARGEST_PDF) return bytes;
  throw new MachineFault(
    `${safeText(name)} is larger than 100 MB, which no pattern is`,
    "Give the pattern's own PDF.",
  );
}

const LARGEST_PDF = 100 * 1024 * 1024;
