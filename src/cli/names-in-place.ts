import { join } from 'node:path';
import { disk, type FileSystem } from './file-system.ts';
import { LOCK_NAME } from './output-lock.ts';
import { isPlainName } from './output-names.ts';
import { filesOfReport, REPORT_NAME, sha256 } from './report-file.ts';

/**
 * Names of all that a draft left in a folder, the report's last, where every file is there as that draft wrote it;
 * undefined where one is not, or another run is writing there or was stopped.
 * @param report sha256 of `report.json`
 */
export function namesInPlace(folder: string, report: string, files: FileSystem = disk): string[] | undefined {
  const contentOf = (name: string): Uint8Array | undefined => {
    const path = join(folder, name);
    return isPlainName(name) && files.kind(path) === 'file' ? files.read(path) : undefined;
  };
  const isThere = (name: string, hash: string): boolean => {
    const content = contentOf(name);
    return content !== undefined && sha256(content) === hash;
  };
  try {
    if (files.kind(join(folder, LOCK_NAME)) !== 'missing') return undefined;
    const content = contentOf(REPORT_NAME);
    if (content === undefined || sha256(content) !== report) return undefined;
    const others = filesOfReport(Buffer.from(content).toString());
    const isWhole =
      others !== undefined && Object.entries(others).every(([name, hash]) => isThere(name, hash));
    return isWhole ? [...Object.keys(others), REPORT_NAME] : undefined;
  } catch {
    return undefined;
  }
}
