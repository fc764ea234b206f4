import { safeText } from '../diagnostics/safe-text.ts';
import { PAPERS, type Paper, paperNamed } from '../sheets/paper.ts';
import { WrongCommandLine } from './fault.ts';

/** The paper of `--paper`, or a message that lists them. */
export function askedPaper(name: string | undefined): Paper | undefined {
  if (name === undefined) return undefined;
  const paper = paperNamed(name);
  if (paper !== undefined) return paper;
  const names = PAPERS.map((one) => one.name).join(', ');
  throw new WrongCommandLine(
    `--paper: there is no paper "${safeText(name)}". There are: ${names}, and rolls by their width in mm, such as roll:914.`,
  );
}
