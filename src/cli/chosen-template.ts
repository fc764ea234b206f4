import { safeText } from '../diagnostics/safe-text.ts';
import { WrongCommandLine } from './fault.ts';
import type { Template } from './package-files.ts';

/** The named template, or a message that lists them. */
export function chosenTemplate(all: readonly Template[], name: string): Template {
  const template = all.find((one) => one.name === name);
  if (template !== undefined) return template;
  const names = all.map((one) => one.name).join(', ');
  throw new WrongCommandLine(`there is no template "${safeText(name)}". There are: ${names}.`);
}
