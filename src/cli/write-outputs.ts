import { randomBytes } from 'node:crypto';
import { accessSync, constants } from 'node:fs';
import { dirname, join, sep } from 'node:path';
import { safeText } from '../diagnostics/safe-text.ts';
import { faultOf, MachineFault, systemCode } from './fault.ts';
import { disk, type FileSystem } from './file-system.ts';
import { LOCK_NAME, quietly, removeIfThere, takeLock, type WritingPlan } from './output-lock.ts';
import { isPlainName, outputNames } from './output-names.ts';
import { filesOfReport, isReport, REPORT_NAME, sealed, sha256 } from './report-file.ts';

/** All that one run puts into its folder. */
export interface Outputs {
  /** Name in the folder, and what the file holds. */
  readonly files: ReadonlyMap<string, string | Uint8Array>;
  /** Written last as `report.json`, with the sha256 of every other file added as `files`. */
  readonly report: object;
  /**
   * Of no worth to anybody but this tool: put in place after the others, whatever stands there. It is told the sha256 of
   * the report.
   */
  readonly memory?: { readonly name: string; readonly bytes: (report: string) => Uint8Array };
}

export interface WriteOptions {
  /** Overwrite files of the same names even where they were not written by this tool, or were changed since. */
  readonly replace?: boolean;
  readonly disk?: FileSystem;
  /** The folder as the user named it, for messages. */
  readonly shown?: string;
  /** How long to wait for another run that is writing into the folder, ms. */
  readonly patience?: number;
}

/**
 * Puts the outputs into the folder, so that at any moment each file there is either the earlier one, whole, or the
 * new one, whole: every file is written beside its place under another name, and renamed once all are written.
 * `report.json` comes last: while its hashes do not fit, the folder is a mixture. Outputs of an earlier run that are
 * not made any more are removed if they are exactly as that run wrote them; no other file is touched.
 *
 * @returns the names written, the report's last
 * @throws MachineFault with one clear line; the earlier files are then as they were, or replaced whole
 */
export function writeOutputs(folder: string, outputs: Outputs, options: WriteOptions = {}): string[] {
  const files = options.disk ?? disk;
  const planned = plan(outputs);
  const made: string[] = [];
  try {
    for (const missing of missingFolders(folder, files)) {
      makeFolder(missing, files);
      made.unshift(missing);
    }
    new Writing(folder, planned, options, files, outputs.memory).run();
  } catch (error) {
    for (const empty of made) quietly(() => files.removeFolder(empty));
    throw faultOf(error, 'write into', options.shown ?? folder);
  }
  return planned.map((output) => output.name);
}

/**
 * Refuses a folder that could not be made or written into as things stand, before the cloth is planned in vain.
 *
 * @throws MachineFault with one clear line
 */
export function refuseUnwritable(folder: string, shown: string): void {
  try {
    const outermost = missingFolders(folder, disk)[0];
    const parent = outermost === undefined ? folder : dirname(outermost);
    accessSync(`${parent}${sep}.`, constants.W_OK | constants.X_OK);
  } catch (error) {
    throw faultOf(error, 'write into', shown);
  }
}

interface Output {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly hash: string;
  readonly temporary: string;
}

function plan({ files, report }: Outputs): Output[] {
  const run = randomBytes(4).toString('hex');
  const names = outputNames([REPORT_NAME, ...files.keys()]);
  const outputs: Output[] = [];
  const add = (name: string, content: string | Uint8Array) => {
    const bytes = typeof content === 'string' ? Buffer.from(content) : content;
    outputs.push({ name, bytes, hash: sha256(bytes), temporary: `.gorewright-${run}-${outputs.length}` });
  };
  for (const [name, content] of files) add(names.get(name) ?? name, content);
  const hashes = Object.fromEntries(outputs.map(({ name, hash }) => [name, hash]));
  add(REPORT_NAME, sealed({ ...report, files: hashes }));
  return outputs;
}

class Writing {
  constructor(
    private readonly folder: string,
    private readonly outputs: readonly Output[],
    private readonly options: WriteOptions,
    private readonly disk: FileSystem,
    private readonly memory: Outputs['memory'],
  ) {}

  run(): void {
    const stopped = takeLock(this.folder, this.plan(), this.disk, this.options);
    let renaming = false;
    try {
      for (const name of stopped?.temporary ?? []) this.removeTemporary(name);
      const earlier = this.earlierFiles(stopped);
      this.refuseForeign(earlier);
      const changed = this.outputs.filter((output) => !this.isInPlace(output));
      for (const output of changed) this.disk.create(this.path(output.temporary), output.bytes);
      renaming = true;
      this.putInPlace(changed, earlier);
      quietly(() => this.remember());
      this.disk.remove(this.path(LOCK_NAME));
    } catch (error) {
      this.tidy(renaming);
      throw error;
    }
  }

  private plan(): WritingPlan {
    const files = Object.fromEntries(this.outputs.map(({ name, hash }) => [name, hash]));
    return { process: process.pid, temporary: this.outputs.map((output) => output.temporary), files };
  }

  /** Hashes by name that a file of ours may have: from the report in the folder, and from a run that was stopped. */
  private earlierFiles(stopped: WritingPlan | undefined): Map<string, Set<string>> {
    const earlier = new Map<string, Set<string>>();
    for (const files of [this.reportedFiles(), stopped?.files ?? {}]) {
      for (const [name, hash] of Object.entries(files)) {
        earlier.set(name, (earlier.get(name) ?? new Set()).add(hash));
      }
    }
    return earlier;
  }

  private reportedFiles(): Record<string, string> {
    const path = this.path(REPORT_NAME);
    if (this.disk.kind(path) !== 'file') return {};
    const bytes = this.disk.read(path);
    const files = filesOfReport(Buffer.from(bytes).toString());
    return files === undefined ? {} : { ...files, [REPORT_NAME]: sha256(bytes) };
  }

  /** Nothing is written while a file in the way is not ours, or was changed since we wrote it. */
  private refuseForeign(earlier: ReadonlyMap<string, ReadonlySet<string>>): void {
    // The report first: when it was changed, nothing that it says of the others holds.
    for (const { name, hash } of [...this.outputs].reverse()) {
      const kind = this.disk.kind(this.path(name));
      if (kind === 'missing') continue;
      if (kind === 'folder') throw this.inTheWay(name, 'is a folder');
      if (this.options.replace) continue;
      if (kind === 'other') throw this.inTheWay(name, 'is a link or a device, not a file of this tool');
      const found = sha256(this.disk.read(this.path(name)));
      if (found === hash || earlier.get(name)?.has(found)) continue;
      const ours = earlier.has(name) || (name === REPORT_NAME && isReport(this.disk.read(this.path(name))));
      throw this.inTheWay(name, ours ? 'was changed since it was written' : 'was not written by this tool');
    }
  }

  private inTheWay(name: string, why: string): MachineFault {
    return new MachineFault(
      `${safeText(join(this.options.shown ?? this.folder, name))} ${why}, so nothing was written`,
      'Move it away, give another folder with --out, or give --replace to lose it.',
    );
  }

  private isInPlace({ name, hash }: Pick<Output, 'name' | 'hash'>): boolean {
    const path = this.path(name);
    return this.disk.kind(path) === 'file' && sha256(this.disk.read(path)) === hash;
  }

  private putInPlace(changed: readonly Output[], earlier: ReadonlyMap<string, ReadonlySet<string>>): void {
    const report = changed.find((output) => output.name === REPORT_NAME);
    for (const output of changed) if (output !== report) this.rename(output);
    this.removeStale(earlier);
    if (report !== undefined) this.rename(report);
  }

  /** Where it fails, the next draft works out again what could have been read. */
  private remember(): void {
    if (this.memory === undefined) return;
    const { name } = this.memory;
    const bytes = this.memory.bytes(this.outputs.at(-1)!.hash);
    if (this.isInPlace({ name, hash: sha256(bytes) })) return;
    const temporary = `.gorewright-${randomBytes(4).toString('hex')}-0`;
    try {
      this.disk.create(this.path(temporary), bytes);
      this.disk.rename(this.path(temporary), this.path(name));
    } catch {
      this.removeTemporary(temporary);
    }
  }

  private rename({ name, temporary }: Output): void {
    this.disk.rename(this.path(temporary), this.path(name));
  }

  private removeStale(earlier: ReadonlyMap<string, ReadonlySet<string>>): void {
    const current = new Set(this.outputs.map((output) => output.name));
    for (const [name, hashes] of earlier) {
      if (current.has(name) || !isPlainName(name)) continue;
      const path = this.path(name);
      if (this.disk.kind(path) === 'file' && hashes.has(sha256(this.disk.read(path)))) this.disk.remove(path);
    }
  }

  /** After a failure. Once renaming has begun the lock stays, so that the next run knows the new files as ours. */
  private tidy(renaming: boolean): void {
    for (const { temporary } of this.outputs) this.removeTemporary(temporary);
    if (!renaming) quietly(() => removeIfThere(this.path(LOCK_NAME), this.disk));
  }

  private removeTemporary(name: string): void {
    if (/^\.gorewright-[0-9a-f]+-\d+$/.test(name)) quietly(() => removeIfThere(this.path(name), this.disk));
  }

  private path(name: string): string {
    return join(this.folder, name);
  }
}

/** The folder and those above it that are not there yet, the outermost first. */
function missingFolders(folder: string, files: FileSystem): string[] {
  const missing: string[] = [];
  for (let at = folder; dirname(at) !== at && files.kind(at) === 'missing'; at = dirname(at))
    missing.unshift(at);
  return missing;
}

/** Another run may make it at the same moment. */
function makeFolder(path: string, files: FileSystem): void {
  try {
    files.makeFolder(path);
  } catch (error) {
    if (systemCode(error) !== 'EEXIST' || files.kind(path) !== 'folder') throw error;
  }
}
