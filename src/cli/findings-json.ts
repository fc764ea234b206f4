import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { lineAndColumn } from '../diagnostics/place.ts';

/** Findings as a script reads them: all that the message for a person says, and where. */
export function findingsJson(diagnostics: readonly Diagnostic[]): object[] {
  return diagnostics.map(({ code, level, message, why, hint, span, table }) => ({
    code,
    level,
    message,
    why,
    hint,
    file: span.source.name,
    ...lineAndColumn(span),
    ...(table === undefined ? {} : { table }),
  }));
}
