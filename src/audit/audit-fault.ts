/** What is wrong with a pattern on paper; lengths in mm. */
export type AuditFault =
  | { readonly kind: 'unreadable'; readonly reason: string }
  | { readonly kind: 'other-content'; readonly found: string; readonly planned: string }
  | { readonly kind: 'square-missing' }
  | { readonly kind: 'square-off'; readonly found: Both; readonly planned: Both }
  | { readonly kind: 'sheet-missing'; readonly sheet: string; readonly page: number }
  | {
      readonly kind: 'page-resized';
      readonly sheet: string;
      readonly page: number;
      readonly found: Size;
      readonly planned: Size;
    }
  | { readonly kind: 'pages-too-many'; readonly found: number; readonly planned: number }
  | {
      readonly kind: 'line-off';
      readonly sheet: string;
      readonly page: number;
      readonly piece: string;
      readonly off: number;
    }
  | {
      readonly kind: 'line-too-many';
      readonly sheet: string;
      readonly page: number;
      readonly pieces: readonly string[];
      /** From the page's lower left corner. */
      readonly at: { readonly x: number; readonly y: number };
    };

interface Both {
  readonly across: number;
  readonly down: number;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

export interface FaultText {
  /** What is wrong. */
  readonly message: string;
  /** Why it matters at the table. */
  readonly why: string;
  /** What to do. */
  readonly hint: string;
}

/** A pattern of another version may be meant: its lines are compared all the same. */
export function isWarning({ kind }: AuditFault): boolean {
  return kind === 'other-content';
}

/** A fault in words. */
export function faultText(fault: AuditFault): FaultText {
  switch (fault.kind) {
    case 'unreadable':
      return {
        message: `The PDF cannot be read: ${fault.reason}.`,
        why: 'What it would print is not known.',
        hint: 'Draft the pattern again, or get the file again whole.',
      };
    case 'other-content':
      return {
        message:
          fault.found === ''
            ? `The PDF does not say which version of a spec made it; this one is ${fault.planned}.`
            : `The PDF was made from ${fault.found}; this spec is ${fault.planned}.`,
        why: 'Pieces of two versions do not fit one another.',
        hint: 'Print the pattern of the version that you mean to cut, and keep no sheets of the other.',
      };
    case 'square-missing':
      return {
        message: 'The first page has no test square of 100 mm.',
        why: 'Nothing shows whether the printer keeps the size.',
        hint: 'Draft the pattern again and print its first page.',
      };
    case 'square-off':
      return {
        message: `The test square is ${mm(fault.found.across)} across and ${mm(fault.found.down)} down in place of ${mm(fault.planned.across)} and ${mm(fault.planned.down)}${fitted(fault.found, fault.planned)}.`,
        why: 'Every piece is wrong by as much.',
        hint: 'Draft the pattern again; save and print it at 100 %, with no fit to page.',
      };
    case 'sheet-missing':
      return {
        message: `Sheet ${fault.sheet}, page ${fault.page}, is not in the file.`,
        why: 'A part of the pattern would be guessed.',
        hint: 'Get the file again whole, or print that sheet from a new draft.',
      };
    case 'page-resized':
      return {
        message: `Sheet ${fault.sheet}, page ${fault.page}, is ${mm(fault.found.width)} by ${mm(fault.found.height)} in place of ${mm(fault.planned.width)} by ${mm(fault.planned.height)}.`,
        why: 'The printer would scale or cut it to fit its paper.',
        hint: 'Draft the pattern for the paper that you have.',
      };
    case 'pages-too-many':
      return {
        message: `The file has ${fault.found} pages, the pattern ${fault.planned}.`,
        why: 'Sheets of something else may be taped in.',
        hint: 'Print the pages of the pattern only.',
      };
    case 'line-off':
      return {
        message: `Sheet ${fault.sheet}, page ${fault.page}: a line of ${fault.piece} is ${off(fault.off)}.`,
        why: 'It would be cut into cloth.',
        hint: 'Do not cut from this file: draft the pattern again.',
      };
    case 'line-too-many':
      return {
        message: `Sheet ${fault.sheet}, page ${fault.page}: a line at ${mm(fault.at.x)} from the left and ${mm(fault.at.y)} from below is no line of ${fault.pieces.join('; ')}.`,
        why: 'It may be taken for a cut line.',
        hint: 'Do not cut from this file: draft the pattern again.',
      };
  }
}

function mm(length: number): string {
  return `${Number(length.toFixed(2))} mm`;
}

function off(distance: number): string {
  return distance >= 4 ? 'missing, or 4 mm off or more' : `${mm(distance)} off`;
}

/** A page of one standard paper fitted on the other: A4 on Letter, Letter on A4. */
function fitted(found: Both, planned: Both): string {
  const [across, down] = [found.across / planned.across, found.down / planned.down];
  const is = (scale: number) => Math.abs(across - scale) < 0.0015 && Math.abs(down - scale) < 0.0015;
  if (is(0.9407)) return ', which is what A4 fitted on Letter makes of it';
  return is(0.9727) ? ', which is what Letter fitted on A4 makes of it' : '';
}
