import type { AuditFault } from '../audit/audit-fault.ts';
import { type Audit, auditPattern } from '../audit/audit-pattern.ts';
import { readPattern } from '../audit/read-pattern.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import { layOutSheets } from '../sheets/lay-out-sheets.ts';
import { paperNamed } from '../sheets/paper.ts';
import type { SheetPlan } from '../sheets/sheet-plan.ts';
import { settingsIn } from '../sheets/sheet-settings.ts';
import { labelsOf } from './pattern-files.ts';
import { chosenPieces, paperOf, sheetPlan } from './pattern-sheets.ts';

/** What an audit of a file found, and what the file says of the spec that made it. */
export interface FileAudit extends Audit {
  /** As printed on its pieces; empty where the file does not say. */
  readonly madeFrom: string;
}

/**
 * Reads a pattern's PDF, of today or received long ago, and compares it with the gown's draft, laid out as the file
 * says that it was; as the spec would have it now where it says nothing.
 */
export function auditFile(gown: DraftedGown, bytes: Uint8Array): FileAudit {
  const read = readPattern(bytes);
  if ('unreadable' in read) {
    const faults: AuditFault[] = [{ kind: 'unreadable', reason: read.unreadable }];
    return { faults, sheets: 0, metres: 0, farthest: 0, madeFrom: '' };
  }
  const audit = auditPattern(read.pages, planOf(gown, read.keywords));
  const planned = labelsOf(gown).trace;
  const other: AuditFault[] =
    read.subject === planned ? [] : [{ kind: 'other-content', found: read.subject, planned }];
  return { ...audit, faults: [...other, ...audit.faults], madeFrom: read.subject };
}

function planOf(gown: DraftedGown, keywords: string): SheetPlan {
  const settings = settingsIn(keywords);
  const paper = settings === undefined ? undefined : paperNamed(settings.paper);
  const pieces = settings === undefined ? [] : chosenPieces(gown, settings);
  if (settings === undefined || paper === undefined || pieces.length === 0)
    return sheetPlan(gown, paperOf(gown));
  return layOutSheets(pieces, { ...settings, paper });
}
