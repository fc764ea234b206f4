import type { Diagnostic, Span } from './diagnostic.ts';

export interface LineAndColumn {
  /** From 1. */
  readonly line: number;
  /** From 1, in characters as a person counts them: one for a letter outside the basic plane. */
  readonly column: number;
}

/** Where a span begins. */
export function lineAndColumn(span: Span): LineAndColumn {
  const { text } = span.source;
  const at = Math.min(Math.max(span.start, 0), text.length);
  const lineStart = text.lastIndexOf('\n', at - 1) + 1;
  let line = 1;
  for (let i = text.indexOf('\n'); i !== -1 && i < lineStart; i = text.indexOf('\n', i + 1)) line++;
  return { line, column: [...text.slice(lineStart, at)].length + 1 };
}

/** In the order in which a reader meets them: the file first named first, then by place, errors before advice. */
export function sortDiagnostics(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  const files = [...new Set(diagnostics.map((d) => d.span.source.name))];
  const file = (d: Diagnostic) => files.indexOf(d.span.source.name);
  return [...diagnostics].sort(
    (a, b) =>
      file(a) - file(b) || a.span.start - b.span.start || LEVELS.indexOf(a.level) - LEVELS.indexOf(b.level),
  );
}

const LEVELS: readonly Diagnostic['level'][] = ['error', 'warning', 'note'];
