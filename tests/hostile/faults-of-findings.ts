import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import { formatDiagnostics } from '../../src/diagnostics/format-diagnostic.ts';
import { lineAndColumn } from '../../src/diagnostics/place.ts';

/** What is wrong with findings as messages: no place in the file, something missing, or text that reaches a terminal raw. */
export function faultsOfFindings(diagnostics: readonly Diagnostic[], text: string): string[] {
  const faults = diagnostics.flatMap((diagnostic) => {
    const { code, span, message, why, hint } = diagnostic;
    const { line, column } = lineAndColumn(span);
    const said = [message, why, hint, ...(diagnostic.table ?? []).flat()].join('\n');
    return [
      ...(span.source.text === text || span.source.text === ''
        ? []
        : [`${code} has a place in another text`]),
      ...(span.start >= 0 && span.start <= span.end && span.end <= text.length
        ? []
        : [`${code} lies outside the file: ${span.start} to ${span.end} of ${text.length}`]),
      ...(line >= 1 && column >= 1 ? [] : [`${code} is at ${line}:${column}`]),
      ...(message === '' || why === '' || hint === '' ? [`${code} leaves out what, why or what to do`] : []),
      ...(saysNothing(said, text) ? [`${code} says: ${said}`] : []),
      ...(message.length > LONGEST ? [`${code} has a message of ${message.length} characters`] : []),
    ];
  });
  const shown = formatDiagnostics(diagnostics, { colour: false });
  if (RAW.test(shown)) faults.push('a message holds controls or marks that turn the reading direction');
  return faults;
}

/** Characters. A line of a terminal holds 80 to 200; a message may take several. */
const LONGEST = 700;
const RAW = /(?!\n)[\p{Cc}\u202a-\u202e\u2066-\u2069]|\p{Cs}/u;

/** A word of the language that this is written in, where the spec itself has none such. */
function saysNothing(said: string, text: string): boolean {
  return [/\bNaN\b/, /\bInfinity\b/, /\bundefined\b/, /\[object/].some(
    (word) => word.test(said) && !word.test(text),
  );
}
