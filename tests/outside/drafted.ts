import type { Report } from './measure/gown.ts';

/** What the tool makes of a spec's text; the only place where the outside tests touch the product. */
export interface Drafted {
  /** Empty where the spec has errors. */
  readonly svg: string;
  readonly report: Report | undefined;
  /** By file name. */
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly diagnostics: readonly {
    readonly code: string;
    readonly level: string;
    readonly line: number;
    readonly message: string;
  }[];
}

export async function drafted(yamlText: string, paper = 'a4'): Promise<Drafted> {
  throw new Error(`no pipeline yet for ${paper} and ${yamlText.length} characters`);
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
