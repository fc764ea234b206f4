import type { Diagnostic, Level, Span } from './diagnostic.ts';
import { lineAndColumn } from './place.ts';
import { safeText } from './safe-text.ts';

/**
 * A diagnostic as a person reads it: `file:line:column: error[code]: what`, the line itself with carets, why it
 * matters, what to do, and its table. Nothing from the spec reaches the terminal unescaped. No line end at the end.
 */
export function formatDiagnostic(diagnostic: Diagnostic, options: { readonly colour: boolean }): string {
  const paint = options.colour ? inColour : (text: string) => text;
  const { span, level, code, message } = diagnostic;
  const { line, column } = lineAndColumn(span);
  const head = `${safeText(span.source.name)}:${line}:${column}:`;
  return [
    `${paint(head, 'bold')} ${paint(`${level}[${code}]`, level)}${paint(`: ${safeText(message)}`, 'bold')}`,
    ...lineWithCarets(span, line, (text) => paint(text, level)),
    ...[
      ['why', diagnostic.why],
      ['do', diagnostic.hint],
    ]
      .filter(([, text]) => text !== '')
      .map(([label, text]) => `  ${`${label}:`.padEnd(4)} ${safeText(text!)}`),
    ...tableRows(diagnostic.table ?? []),
  ].join('\n');
}

/** The whole report: each diagnostic, a blank line between them. */
export function formatDiagnostics(
  diagnostics: readonly Diagnostic[],
  options: { readonly colour: boolean },
): string {
  return diagnostics.map((diagnostic) => formatDiagnostic(diagnostic, options)).join('\n\n');
}

type Paint = Level | 'bold';
const SGR: Readonly<Record<Paint, string>> = { error: '1;31', warning: '1;33', note: '1;36', bold: '1' };

function inColour(text: string, paint: Paint): string {
  return `\u001b[${SGR[paint]}m${text}\u001b[0m`;
}

/** Characters of the line shown; a longer one is cut to a window around the place. */
const WINDOW = 100;

function lineWithCarets(span: Span, line: number, paint: (text: string) => string): string[] {
  const { text } = span.source;
  if (text.trim() === '') return [];
  const lineStart = text.lastIndexOf('\n', span.start - 1) + 1;
  const newline = text.indexOf('\n', lineStart);
  const lineEnd = newline === -1 ? text.length : newline;
  const from = span.start - lineStart > WINDOW - 20 ? span.start - WINDOW / 2 : lineStart;
  const to = Math.min(lineEnd, from + WINDOW);
  const shown = (start: number, end: number) =>
    safeText(text.slice(start, end).replace(/\r$/, '').replaceAll('\t', ' '));
  const before = shown(from, span.start);
  const marked = shown(span.start, Math.max(Math.min(span.end, to), span.start));
  const after = shown(Math.max(Math.min(span.end, to), span.start), to);
  const gutter = String(line).padStart(5);
  const lead = from > lineStart ? '…' : '';
  const carets = '^'.repeat(Math.max([...marked].length, 1));
  return [
    `${gutter} | ${lead}${before}${marked}${after}${to < lineEnd ? '…' : ''}`.trimEnd(),
    `${' '.repeat(gutter.length)} | ${' '.repeat([...lead, ...before].length)}${paint(carets)}`,
  ];
}

/** Words to the left, figures to the right of their columns. */
function tableRows(table: NonNullable<Diagnostic['table']>): string[] {
  const rows = table.map((row) => row.map(safeText));
  const widths = (rows[0] ?? []).map((_, i) => Math.max(...rows.map((row) => [...(row[i] ?? '')].length)));
  const pad = (cell: string, i: number) =>
    i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0);
  return rows.map((row) => `       ${row.map(pad).join('   ')}`.trimEnd());
}
