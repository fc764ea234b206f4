import { createHash } from 'node:crypto';
import { jsonText } from './json-text.ts';

/** Written last, with the sha256 of every other file. */
export const REPORT_NAME = 'report.json';

/** A report that carries the hash of its own text, so that a change by hand shows. */
export function sealed(report: object): string {
  const seal = sha256(jsonText(report));
  return jsonText({ ...report, seal });
}

export function sha256(content: Uint8Array | string): string {
  return createHash('sha256').update(content).digest('hex');
}

/** The hashes in an earlier report; undefined for any other file, and for a report that was changed since. */
export function filesOfReport(text: string): Record<string, string> | undefined {
  try {
    const report: unknown = JSON.parse(text);
    if (typeof report !== 'object' || report === null || !('gown' in report && 'files' in report))
      return undefined;
    if (typeof report.files !== 'object' || report.files === null) return undefined;
    const { seal: _, ...own } = report as { seal?: unknown };
    if (sealed(own) !== text) return undefined;
    return Object.fromEntries(Object.entries(report.files).map(([name, hash]) => [name, String(hash)]));
  } catch {
    return undefined;
  }
}

/** Whether a file began as a report of ours, whatever was done to it. */
export function isReport(bytes: Uint8Array): boolean {
  const text = Buffer.from(bytes).toString();
  return /"gown":/.test(text) && /"files":/.test(text);
}
