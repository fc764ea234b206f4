import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import { lineAndColumn } from '../../src/diagnostics/place.ts';
import { type DraftedGown, draft, draftOutputs } from '../../src/pipeline.ts';
import { patternFiles } from '../../src/publish/pattern-files.ts';
import type { Report } from './measure/gown.ts';

/** What the tool makes of a spec's text; the only place where the outside tests touch the product. */
export interface Drafted {
  /** Empty where the spec has errors. */
  readonly svg: string;
  readonly report: Report | undefined;
  /** By file name. */
  readonly files: ReadonlyMap<string, string | Uint8Array>;
  readonly diagnostics: readonly Finding[];
}

export interface Finding {
  readonly code: string;
  readonly level: string;
  readonly line: number;
  /** What, why and what to do, with any table. */
  readonly message: string;
}

/** Every file, as the command writes them; the lays, which take their time, are tested elsewhere. */
export function drafted(yamlText: string, paper = 'a4'): Promise<Drafted> {
  return once(`${paper} ${yamlText}`, () =>
    filesOf(yamlText, (gown, diagnostics) => draftOutputs(gown, diagnostics, { paper, font })),
  );
}

/** Many tests ask for the same few gowns; nobody changes what came of them. */
const known = new Map<string, Promise<Drafted>>();
const MOST_KNOWN = 40;

function once(key: string, make: () => Promise<Drafted>): Promise<Drafted> {
  const drafted = known.get(key) ?? make();
  known.delete(key);
  known.set(key, drafted);
  for (const oldest of known.keys()) if (known.size > MOST_KNOWN) known.delete(oldest);
  return drafted;
}

/** The pattern and its report alone, where many gowns are to be drafted. */
export function draftedPattern(yamlText: string): Promise<Drafted> {
  return once(`pattern ${yamlText}`, () =>
    filesOf(yamlText, async (gown, diagnostics) => {
      const { files, report } = await patternFiles(gown, { paper: 'a4', font });
      return { files, report: { ...gown.report, pattern: report, findings: [] }, diagnostics };
    }),
  );
}

/** The same for a spec that must draft; its errors in full where it does not. */
export async function draftedTrue(
  yamlText: string,
  paper = 'a4',
): Promise<Drafted & { readonly report: Report }> {
  return mustDraft(await drafted(yamlText, paper), yamlText);
}

export function mustDraft(result: Drafted, yamlText: string): Drafted & { readonly report: Report } {
  if (result.report !== undefined) return { ...result, report: result.report };
  const errors = result.diagnostics.map((d) => `${d.line}: ${d.level} ${d.code}: ${d.message}`);
  throw new Error(`the spec was refused:\n${errors.join('\n')}\n${yamlText}`);
}

interface Made {
  readonly files: ReadonlyMap<string, string | Uint8Array>;
  readonly report: object;
  readonly diagnostics: readonly Diagnostic[];
}

async function filesOf(
  text: string,
  make: (gown: DraftedGown, diagnostics: readonly Diagnostic[]) => Promise<Made>,
): Promise<Drafted> {
  const { gown, diagnostics } = draft({ name: 'gown.yaml', text });
  const wrong = (found: readonly Diagnostic[]) => found.some(({ level }) => level === 'error');
  const refused = (found: readonly Diagnostic[]): Drafted => ({
    svg: '',
    report: undefined,
    files: new Map(),
    diagnostics: found.map(findingOf),
  });
  if (gown === undefined || wrong(diagnostics)) return refused(diagnostics);
  const made = await make(gown, diagnostics);
  if (wrong(made.diagnostics)) return refused(made.diagnostics);
  return {
    svg: String(made.files.get('pattern.svg')),
    report: JSON.parse(JSON.stringify(made.report)) as Report,
    files: made.files,
    diagnostics: made.diagnostics.map(findingOf),
  };
}

function findingOf({ code, level, span, message, why, hint, table }: Diagnostic): Finding {
  const text = [message, why, hint, JSON.stringify(table ?? '')].join('; ');
  return { code, level, line: lineAndColumn(span).line, message: text };
}

const FONT = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
const font = () => readFileSync(FONT);
