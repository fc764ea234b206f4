import type { Diagnostic } from '../diagnostics/diagnostic.ts';

export interface FindingChanges {
  readonly added: readonly Diagnostic[];
  readonly gone: readonly Diagnostic[];
  /** The same finding with other figures. */
  readonly changed: readonly { readonly old: Diagnostic; readonly now: Diagnostic }[];
}

/** Findings that came, went or changed their figures, wherever their lines have moved to. */
export function findingChanges(old: readonly Diagnostic[], now: readonly Diagnostic[]): FindingChanges {
  const gone = old.filter((finding) => !now.some((other) => isSame(finding, other)));
  const added = now.filter((finding) => !old.some((other) => isSame(finding, other)));
  const changed = added.flatMap((finding) => {
    const was = gone.find((other) => saysOf(other) === saysOf(finding));
    return was === undefined ? [] : [{ old: was, now: finding }];
  });
  return {
    added: added.filter((finding) => !changed.some((pair) => pair.now === finding)),
    gone: gone.filter((finding) => !changed.some((pair) => pair.old === finding)),
    changed,
  };
}

function isSame(a: Diagnostic, b: Diagnostic): boolean {
  return a.code === b.code && a.message === b.message;
}

/** What a finding is about, its figures apart. */
function saysOf({ code, message }: Diagnostic): string {
  return `${code} ${message.replace(/\d+(\.\d+)?/g, '#')}`;
}
