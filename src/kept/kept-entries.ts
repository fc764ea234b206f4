import { createHash } from 'node:crypto';
import type { Kept } from './kept.ts';

/**
 * What one draft has kept, and what an earlier one had. Only what was asked for this time is written again, so that the
 * same spec leaves the same text, whatever came before it.
 */
export class KeptEntries implements Kept {
  private readonly used = new Map<string, string>();

  /**
   * @param earlier by key, as JSON
   * @param isWhole nothing of it was spoilt
   */
  constructor(
    readonly earlier: ReadonlyMap<string, string> = new Map(),
    readonly isWhole = true,
  ) {}

  recall(key: string): unknown {
    const text = this.used.get(key) ?? this.earlier.get(key);
    try {
      return text === undefined ? undefined : JSON.parse(text);
    } catch {
      return undefined;
    }
  }

  keep(key: string, value: unknown): void {
    this.used.set(key, JSON.stringify(value));
  }

  /** What was kept or used, by key, as JSON. */
  get entries(): ReadonlyMap<string, string> {
    return this.used;
  }

  /** What another thread has kept or used. */
  add(entries: ReadonlyMap<string, string>): void {
    for (const [key, text] of entries) this.used.set(key, text);
  }
}

/** Kept entries as text, a line each with its seal, under a line that names the tool: what another made is not read. */
export function keptText(entries: ReadonlyMap<string, string>, tool: string): string {
  const lines = [...entries]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, text]) => `${key} ${seal(key, text)} ${text}\n`);
  return `${tool}\n${lines.join('')}`;
}

/** The entries of a text that are whole and were made by this tool; a line that is not as it was written is left out. */
export function keptEntries(text: string, tool: string): Map<string, string> {
  const [head, ...lines] = text.split('\n');
  const entries = new Map<string, string>();
  if (head !== tool) return entries;
  for (const line of lines) {
    const [key = '', sealed, ...rest] = line.split(' ');
    const json = rest.join(' ');
    if (sealed === seal(key, json)) entries.set(key, json);
  }
  return entries;
}

function seal(key: string, text: string): string {
  return createHash('sha256').update(`${key} ${text}`).digest('hex').slice(0, 32);
}
