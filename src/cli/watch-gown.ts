import { spawn } from 'node:child_process';
import { type FSWatcher, watch } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { safeText } from '../diagnostics/safe-text.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import { KeptEntries } from '../kept/kept-entries.ts';
import { draft, draftOutputs } from '../pipeline.ts';
import type { GownPage } from '../print/screen/gown-page.ts';
import { brokenPage, type PageSource, pageFile, pageFindings } from '../publish/page-file.ts';
import { patternFiles } from '../publish/pattern-files.ts';
import { drawnViews } from '../publish/views-file.ts';
import { english } from '../words/english.ts';
import { workroom } from '../workroom/workroom.ts';
import { ExitStatus } from './exit-status.ts';
import { MachineFault } from './fault.ts';
import { hangAtFirst, hangGown } from './hang-gown.ts';
import type { Machine } from './machine.ts';
import { fontBytes } from './package-files.ts';
import { NEWS, PageServer } from './page-server.ts';
import { type LayStop, newStop, planGownLays } from './plan-gown-lays.ts';
import { hasErrors, printFindings } from './print-findings.ts';
import { basesBeside, readSource } from './read-source.ts';

export interface WatchFlags {
  readonly open?: boolean;
}

/** `watch`: drafts on every save and shows the gown's page, until Ctrl-C. */
export async function watchGown(file: string, flags: WatchFlags, machine: Machine): Promise<ExitStatus> {
  const server = await PageServer.open();
  const watched = new WatchedGown(file, machine, server);
  try {
    watched.draft();
    machine.out(`${server.address}\n`);
    machine.err('Drafts on every save, and shows the gown at that address. Ctrl-C ends it.\n');
    if (flags.open) openInBrowser(server.address, machine);
    await new Promise<void>((end) => process.once('SIGINT', end));
  } finally {
    watched.close();
    await server.close();
  }
  return ExitStatus.done;
}

/** A spec's file, what it is based on, and the last gown that came of it. */
class WatchedGown {
  private readonly watchers = new Map<string, { readonly watcher: FSWatcher; readonly names: Set<string> }>();
  private waiting: NodeJS.Timeout | undefined;
  /** The lays of a draft that a later save has overtaken are stopped. */
  private stop = newStop();
  private read = '';
  /** What the last draft has worked out. */
  private kept = new KeptEntries();
  private last: PageSource | undefined;

  constructor(
    private readonly file: string,
    private readonly machine: Machine,
    private readonly server: PageServer,
  ) {}

  /** Reads and drafts; what cannot be read at the very first is thrown, later it is shown. */
  draft(): void {
    const texts: string[] = [];
    const noted = (path: string, text: string | undefined): void => {
      this.watch(resolve(this.machine.folder, path));
      texts.push(text ?? '');
    };
    const { source, diagnostics } = readSource(this.file, this.machine);
    noted(this.file, source?.text);
    const bases = basesBeside(this.file, this.machine);
    const drafting =
      source === undefined
        ? { diagnostics }
        : draft(source, (path) => {
            const base = bases(path);
            noted(resolve(this.machine.folder, dirname(this.file), path), base?.source?.text);
            return base;
          });
    // An editor touches a file more often than it changes it.
    const read = texts.join('\0');
    if (read === this.read) return;
    this.read = read;
    Atomics.store(this.stop, 0, 1);
    this.stop = newStop();
    printFindings(drafting.diagnostics, this.machine);
    const gown = 'gown' in drafting ? drafting.gown : undefined;
    if (gown === undefined || hasErrors(drafting.diagnostics)) this.showBroken(drafting.diagnostics);
    else this.showSoon(gown, drafting.diagnostics, this.stop);
  }

  close(): void {
    clearTimeout(this.waiting);
    Atomics.store(this.stop, 0, 1);
    for (const { watcher } of this.watchers.values()) watcher.close();
  }

  /** Errors with their lines, and the last good gown beneath. */
  private showBroken(findings: readonly Diagnostic[]): void {
    const words = english(this.last?.gown.gown.units ?? 'cm').screen;
    const name = basename(this.file);
    const notice = {
      says: this.last === undefined ? words.brokenAtFirst(name) : words.brokenNow(name),
      findings: pageFindings(findings),
    };
    if (this.last === undefined) this.server.show({ page: brokenPage(name, notice, NEWS), files: new Map() });
    else this.show({ ...this.last, findings: [] }, notice);
  }

  /** The pattern, a first picture and what was found at once; the lays, the papers and the picture when they are there. */
  private showSoon(gown: DraftedGown, findings: readonly Diagnostic[], stop: LayStop): void {
    const overtaken = () => stop !== this.stop || Atomics.load(stop, 0) !== 0;
    const all = async (): Promise<void> => {
      const first = hangAtFirst(gown);
      const { files, report: sheets } = await patternFiles(gown, { font: fontBytes });
      const views = drawnViews(gown, await first);
      const { facts } = workroom(gown, []);
      if (overtaken()) return;
      const status = english(gown.gown.units).screen.busy;
      this.show({ gown, facts, lays: [], files, sheets, views, findings, status });
      const kept = new KeptEntries(this.kept.entries);
      const lays = planGownLays(gown, 'quick', this.machine, { stopped: stop, kept });
      const hanging = hangGown(gown, kept);
      const outputs = await draftOutputs(gown, findings, { lays, hanging, font: fontBytes });
      if (overtaken()) return;
      this.kept = kept;
      printFindings(
        outputs.diagnostics.filter((one) => !findings.includes(one)),
        this.machine,
      );
      this.show({
        gown,
        facts: outputs.facts,
        lays: (await lays).lays,
        files: new Map([...outputs.files, ['report.json', `${JSON.stringify(outputs.report, null, 2)}\n`]]),
        sheets: outputs.report.pattern,
        findings: outputs.diagnostics,
        ...(outputs.views && { views: outputs.views }),
      });
    };
    all().catch((error: unknown) => this.machine.err(`gorewright: ${safeText(String(error))}\n`));
  }

  private show(source: PageSource, notice?: GownPage['notice']): void {
    if (notice === undefined) this.last = source;
    const page = pageFile({ ...source, refreshed: NEWS, ...(notice && { notice }) });
    this.server.show({ page, files: source.files });
  }

  /** Editors replace a file by renaming another one, so its folder is what is watched. */
  private watch(path: string): void {
    const [folder, name] = [dirname(path), basename(path)];
    const known = this.watchers.get(folder);
    if (known !== undefined) return void known.names.add(name);
    const names = new Set([name]);
    try {
      const watcher = watch(folder, (_event, changed) => {
        if (changed === null || names.has(changed)) this.draftSoon();
      });
      watcher.on('error', () => this.machine.err(`gorewright: cannot watch ${safeText(folder)} any more\n`));
      this.watchers.set(folder, { watcher, names });
    } catch {
      throw new MachineFault(`${safeText(folder)} cannot be watched`, 'Use draft after each change.');
    }
  }

  private draftSoon(): void {
    clearTimeout(this.waiting);
    this.waiting = setTimeout(() => {
      try {
        this.draft();
      } catch (error) {
        if (!(error instanceof MachineFault)) throw error;
        this.machine.err(`gorewright: ${error.message}\n`);
      }
    }, SETTLES);
  }
}

/** An editor writes a file in several steps; after this long without another it is taken as saved, ms. */
const SETTLES = 40;

function openInBrowser(address: string, machine: Machine): void {
  const [command, ...before] =
    process.platform === 'darwin'
      ? ['open']
      : process.platform === 'win32'
        ? ['cmd', '/c', 'start', '']
        : ['xdg-open'];
  const opened = spawn(command!, [...before, address], { stdio: 'ignore', detached: true });
  opened.on('error', () => machine.err('No browser could be opened: open the address yourself.\n'));
  opened.unref();
}
