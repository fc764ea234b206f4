import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import { lineAndColumn } from '../../src/diagnostics/place.ts';
import { draft, draftOutputs } from '../../src/pipeline.ts';
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

const FONT = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');

export async function drafted(yamlText: string, paper = 'a4'): Promise<Drafted> {
  const { gown, diagnostics } = draft({ name: 'gown.yaml', text: yamlText });
  const nothing = { svg: '', report: undefined, files: new Map() };
  if (gown === undefined || diagnostics.some(({ level }) => level === 'error')) {
    return { ...nothing, diagnostics: diagnostics.map(findingOf) };
  }
  const outputs = await draftOutputs(gown, diagnostics, { paper, font: () => readFileSync(FONT) });
  const found = outputs.diagnostics.map(findingOf);
  if (found.some(({ level }) => level === 'error')) return { ...nothing, diagnostics: found };
  return {
    svg: String(outputs.files.get('pattern.svg')),
    report: JSON.parse(JSON.stringify(outputs.report)) as Report,
    files: outputs.files,
    diagnostics: found,
  };
}

function findingOf({ code, level, span, message, why, hint, table }: Diagnostic): Finding {
  const text = [message, why, hint, JSON.stringify(table ?? '')].join('; ');
  return { code, level, line: lineAndColumn(span).line, message: text };
}

/** The files of a spec that must draft; its errors in full where it does not. */
export async function draftedTrue(
  yamlText: string,
  paper = 'a4',
): Promise<Drafted & { readonly report: Report }> {
  const result = await drafted(yamlText, paper);
  if (result.report === undefined) {
    const errors = result.diagnostics.map((d) => `${d.line}: ${d.level} ${d.code}: ${d.message}`);
    throw new Error(`the spec was refused:\n${errors.join('\n')}\n${yamlText}`);
  }
  return { ...result, report: result.report };
}
