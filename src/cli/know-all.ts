import { safeText } from '../diagnostics/safe-text.ts';
import { WrongCommandLine } from './fault.ts';

/** Names on the command line that the gown does not have are wrong, not left out. */
export function knowAll(
  option: string,
  asked: readonly string[] | undefined,
  known: ReadonlySet<string>,
): void {
  const unknown = asked?.find((name) => !known.has(name));
  if (unknown === undefined) return;
  throw new WrongCommandLine(
    `${option}: there is no "${safeText(unknown)}". There are: ${[...known].join(', ')}.`,
  );
}
