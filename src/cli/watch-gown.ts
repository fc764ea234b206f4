import { spawn } from 'node:child_process';
import { basename, dirname, resolve } from 'node:path';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { safeText } from '../diagnostics/safe-text.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import { KeptEntries } from '../kept/kept-entries.ts';
import { draft, draftOutputs } from '../pipeline.ts';
import type { GownPage } from '../print/screen/gown-page.ts';
import { brokenPage, type PageSource, pageFile, pageFindings } from '../publish/page-file.ts';
import { patternAtFirst } from '../publish/pattern-files.ts';
import { drawnViews } from '../publish/views-file.ts';
import { english } from '../words/english.ts';
import { workroom } from '../workroom/workroom.ts';
import { ExitStatus } from './exit-status.ts';
import { MachineFault } from './fault.ts';
import { hangAtFirst, hangGown } from './hang-gown.ts';
import { HangThread, Overtaken } from './hang-thread.ts';
import type { Machine } from './machine.ts';
import { fontBytes } from './package-files.ts';
import { PageServer } from './page-server.ts';
import { type LayStop, newStop, planGownLays } from './plan-gown-lays.ts';
import { hasErrors, printFindings } from './print-findings.ts';
import { basesBeside, readSource } from './read-source.ts';
import { WatchedFiles } from './watched-files.ts';

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
  private readonly files: WatchedFiles;
  /** The lays of a draft that a later save has overtaken are stopped. */
  private stop: LayStop = newStop();
  private readonly firstHanging = new HangThread();
  private readonly wholeHanging = new HangThread();
  private read = '';
  /** What the last draft has worked out. */
  private kept = new KeptEntries();
  private last: PageSource | undefined;

  constructor(
    private readonly file: string,
    private readonly machine: Machine,
    private readonly server: PageServer,
  ) {
    const lost = (folder: string) => machine.err(`gorewright: cannot watch ${safeText(folder)} any more\n`);
    this.files = new WatchedFiles(() => this.draftAgain(), lost);
  }

  /** Reads and drafts; what cannot be read at the very first is thrown, later it is shown. */
  draft(): void {
    const texts: string[] = [];
    const noted = (path: string, text: string | undefined): void => {
      this.files.add(resolve(this.machine.folder, path));
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
    this.overtake();
    printFindings(drafting.diagnostics, this.machine);
    const gown = 'gown' in drafting ? drafting.gown : undefined;
    if (gown === undefined || hasErrors(drafting.diagnostics)) this.showBroken(drafting.diagnostics);
    else this.showUnlessOvertaken(gown, drafting.diagnostics);
  }

  close(): void {
    this.files.close();
    this.overtake();
    this.firstHanging.end();
    this.wholeHanging.end();
  }

  /** What is still being worked out for an earlier save is let go. */
  private overtake(): void {
    Atomics.store(this.stop, 0, 1);
    this.stop = newStop();
    this.wholeHanging.letGo();
  }

  private showUnlessOvertaken(gown: DraftedGown, findings: readonly Diagnostic[]): void {
    const own = this.stop;
    this.showSoon(gown, findings, () => own !== this.stop).catch((error: unknown) => {
      if (error instanceof Overtaken) return;
      this.machine.err(`gorewright: ${safeText(String(error))}\n`);
    });
  }

  /** Errors with their lines, and the last good gown beneath. */
  private showBroken(findings: readonly Diagnostic[]): void {
    const words = english(this.last?.gown.gown.units ?? 'cm').screen;
    const name = basename(this.file);
    const notice = {
      says: this.last === undefined ? words.brokenAtFirst(name) : words.brokenNow(name),
      findings: pageFindings(findings),
    };
    const news = this.server.newsOfNext();
    if (this.last === undefined) this.server.show({ page: brokenPage(name, notice, news), files: new Map() });
    else this.show({ ...this.last, findings: [] }, notice);
  }

  /** The pattern, a first picture and what was found at once; all else once the spec is left alone. */
  private async showSoon(
    gown: DraftedGown,
    findings: readonly Diagnostic[],
    isOvertaken: () => boolean,
  ): Promise<void> {
    const kept = new KeptEntries(this.kept.entries);
    const first = hangAtFirst(gown, this.firstHanging);
    const { files, report: sheets } = patternAtFirst(gown, { kept });
    const views = drawnViews(gown, await first);
    if (isOvertaken()) return;
    const { facts } = workroom(gown, []);
    const status = english(gown.gown.units).screen.busy;
    this.show({ gown, facts, lays: [], files, sheets, views, findings, status });
    await leftAlone();
    if (!isOvertaken()) await this.showWhole(gown, findings, kept, isOvertaken);
  }

  /** With its lays, its papers and the finished picture. */
  private async showWhole(
    gown: DraftedGown,
    findings: readonly Diagnostic[],
    kept: KeptEntries,
    isOvertaken: () => boolean,
  ): Promise<void> {
    const lays = planGownLays(gown, 'quick', this.machine, { stopped: this.stop, kept });
    const hanging = hangGown(gown, kept, this.wholeHanging);
    const outputs = await draftOutputs(gown, findings, { lays, hanging, kept, font: fontBytes });
    if (isOvertaken()) return;
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
  }

  private show(source: PageSource, notice?: GownPage['notice']): void {
    if (notice === undefined) this.last = source;
    const page = pageFile({ ...source, refreshed: this.server.newsOfNext(), ...(notice && { notice }) });
    this.server.show({ page, files: source.files });
  }

  private draftAgain(): void {
    try {
      this.draft();
    } catch (error) {
      if (!(error instanceof MachineFault)) throw error;
      this.machine.err(`gorewright: ${error.message}\n`);
    }
  }
}

/** After a first picture, whoever does not save again within this is waiting for the rest, ms. */
const LEFT_ALONE = 300;

function leftAlone(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, LEFT_ALONE));
}

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
