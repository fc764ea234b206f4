import { randomBytes } from 'node:crypto';
import { existsSync, readFileSync, realpathSync, renameSync, writeFileSync } from 'node:fs';
import { join, parse, relative, resolve, sep } from 'node:path';
import { safeText } from '../diagnostics/safe-text.ts';
import { MachineFault } from './fault.ts';
import { quietly } from './output-lock.ts';

/** Stands in `out`, and says which spec each folder there was drafted from, seen from `out`. */
const INDEX = '.gorewright-specs';

/** Where `draft` writes unless told otherwise: `out` and the spec's name, which specs of two folders may share. */
export class DefaultFolder {
  /** As the user would name it. */
  readonly shown: string;
  private readonly name: string;
  private readonly out: string;
  private readonly spec: string;

  constructor(
    private readonly folder: string,
    private readonly file: string,
    toile: boolean,
  ) {
    this.name = `${nameOf(file)}${toile ? '-toile' : ''}`;
    this.shown = join('out', this.name);
    this.out = resolve(folder, 'out');
    this.spec = resolve(folder, file);
  }

  /** @throws MachineFault where a spec of the same name from another folder has drafted into it, and is still there */
  refuseAnothers(): void {
    const other = this.read()[this.name];
    if (typeof other !== 'string') return;
    const path = resolve(this.out, other);
    if (!existsSync(path) || !existsSync(join(this.out, this.name)) || isSame(path, this.spec)) return;
    throw new MachineFault(
      `${safeText(this.shown)} was drafted from ${safeText(relative(this.folder, path))}, not from ${safeText(this.file)}, so nothing was written`,
      'Give another folder with --out, or --replace to let this spec have it.',
    );
  }

  /** Remembers whose it is now. What cannot be remembered is no fault: the outputs are written. */
  claim(): void {
    const own = relative(this.out, this.spec).split(sep).join('/');
    const known = this.read();
    if (known[this.name] === own) return;
    quietly(() => {
      const temporary = join(this.out, `.gorewright-${randomBytes(4).toString('hex')}-0`);
      writeFileSync(temporary, `${JSON.stringify({ ...known, [this.name]: own }, null, 2)}\n`, {
        flag: 'wx',
      });
      renameSync(temporary, join(this.out, INDEX));
    });
  }

  private read(): Readonly<Record<string, unknown>> {
    try {
      const index: unknown = JSON.parse(readFileSync(join(this.out, INDEX), 'utf8'));
      return typeof index === 'object' && index !== null && !Array.isArray(index) ? { ...index } : {};
    } catch {
      return {};
    }
  }
}

function isSame(a: string, b: string): boolean {
  try {
    return realpathSync(a) === realpathSync(b);
  } catch {
    return false;
  }
}

/** The spec's name without its folder and ending; a file called `..yaml` must not lead out of `out`. */
function nameOf(file: string): string {
  const { name } = parse(file);
  return /^\.*$/.test(name) ? 'gown' : name;
}
