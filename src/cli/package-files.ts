import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { faultOf, MachineFault } from './fault.ts';

/** A starter spec that comes with the tool. */
export interface Template {
  /** As given to `--from`. */
  readonly name: string;
  /** Its first comment line: what gown it is for. */
  readonly about: string;
  readonly text: string;
}

/** The templates, by name. */
export function templates(): Template[] {
  const folder = join(packageFolder(), 'templates');
  const files = readdirSync(folder).filter((file) => file.endsWith('.yaml'));
  return files.sort().map((file) => {
    const text = readPackageFile(join(folder, file));
    const about = /^#[ \t]*(\S.*)$/m.exec(text)?.[1] ?? '';
    return { name: file.slice(0, -'.yaml'.length), about, text };
  });
}

/** The font for text that a PDF's standard fonts cannot write: Latin, Greek and Cyrillic. */
export function fontBytes(): Uint8Array {
  const path = fontPath();
  try {
    return readFileSync(path);
  } catch (error) {
    throw faultOf(error, 'read the font', path);
  }
}

/** Beside the bundle; in the source tree, where there is none, in the package that the build takes it from. */
function fontPath(): string {
  const built = fileURLToPath(new URL('./DejaVuSans.ttf', import.meta.url));
  return existsSync(built)
    ? built
    : createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
}

function readPackageFile(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    throw faultOf(error, 'read', path);
  }
}

/** Where the tool itself lies: the source tree and the bundle are at different depths below it. */
function packageFolder(): string {
  const start = dirname(fileURLToPath(import.meta.url));
  let folder = start;
  while (!existsSync(join(folder, 'package.json'))) {
    if (dirname(folder) === folder)
      throw new MachineFault(`${start} is not the whole tool`, 'Install it again.');
    folder = dirname(folder);
  }
  return folder;
}
