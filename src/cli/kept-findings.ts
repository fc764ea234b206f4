import type { Diagnostic, Source } from '../diagnostics/diagnostic.ts';

/** Findings as they are kept: each with its place as numbers. Undefined where one stands in no source that is known. */
export function findingsToKeep(
  diagnostics: readonly Diagnostic[],
  sources: readonly Source[],
): unknown[] | undefined {
  const findings = diagnostics.map(({ span, ...finding }) => ({
    ...finding,
    at: [sources.indexOf(span.source), span.start, span.end],
  }));
  return findings.some(({ at }) => at[0]! < 0) ? undefined : findings;
}

/** The findings again, where what was kept is a list of such. */
export function keptFindings(kept: unknown, sources: readonly Source[]): Diagnostic[] | undefined {
  if (!Array.isArray(kept)) return undefined;
  const findings = kept.flatMap((one) => keptFinding(one, sources) ?? []);
  return findings.length === kept.length ? findings : undefined;
}

const LEVELS: readonly unknown[] = ['error', 'warning', 'note'] satisfies Diagnostic['level'][];
const TEXTS = ['code', 'message', 'why', 'hint'] as const satisfies (keyof Diagnostic)[];

function keptFinding(kept: unknown, sources: readonly Source[]): Diagnostic | undefined {
  if (typeof kept !== 'object' || kept === null) return undefined;
  const { at, ...finding } = kept as Partial<Diagnostic> & { readonly at?: unknown };
  const isTold = LEVELS.includes(finding.level) && TEXTS.every((text) => typeof finding[text] === 'string');
  const { table = [] } = finding;
  const isTable = Array.isArray(table) && table.every((row) => Array.isArray(row) && row.every(isText));
  if (!isTold || !isTable || !Array.isArray(at) || !at.every(Number.isInteger)) return undefined;
  const [number, start, end] = at as number[];
  const source = sources[number ?? -1];
  if (source === undefined || start === undefined || end === undefined) return undefined;
  const isThere = 0 <= start && start <= end && end <= source.text.length;
  return isThere ? { ...(finding as Diagnostic), span: { source, start, end } } : undefined;
}

function isText(value: unknown): boolean {
  return typeof value === 'string';
}
