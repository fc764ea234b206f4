import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';
import { error } from '../diagnostics/finding.ts';
import { quoted } from '../diagnostics/safe-text.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { Units } from '../diagnostics/units.ts';
import type { Undraftable } from './undraftable.ts';

/** Says in the maker's words why no gore can be drawn. */
export function cannotDraft(span: Span, { reason, gore, at }: Undraftable, units: Units): Diagnostic {
  return WHY_NOT[reason](span, quoted(gore ?? ''), at === undefined ? undefined : tapeText(at, units));
}

const WHY_NOT = {
  'narrows-to-nothing': error('gore-narrows-to-nothing', (gore: string, at: string | undefined) => ({
    message: `Gore ${gore} narrows to nothing${at === undefined ? '' : ` before its hem, ${at} below the waist`}.`,
    why: 'Its two seams would cross above the hem, and such a piece cannot be cut.',
    hint: 'Give it a wider hem or less negative flare, or shorten it.',
  })),
  'widens-too-fast': error('gore-widens-too-fast', (gore: string) => ({
    message: `Gore ${gore} changes its width faster from one girth to the next than its seams can follow.`,
    why: 'No flat piece of cloth has seams of that length and levels of that width.',
    hint: 'Spread the girth over more gores, or put the levels of the petticoat farther apart.',
  })),
  'waist-does-not-settle': error('waist-cannot-be-drawn', () => ({
    message: 'The dropped waist edge cannot be drawn through these drops with these tops.',
    why: 'Where the edge drops farther than a gore is wide, no edge of that length reaches.',
    hint: 'Check `drop-below-waist`: every drop is measured down from the level waist.',
  })),
  'hem-does-not-settle': error('hem-cannot-be-drawn', () => ({
    message: 'No smooth hem passes through these lengths with these widths.',
    why: 'The hem must run straight through every seam.',
    hint: 'Check the lengths at the stations against each other, and the widths of the gores.',
  })),
  'hem-above-waist': error('hem-above-waist', (gore: string) => ({
    message: `The hem of gore ${gore} would lie above its top.`,
    why: 'Nothing would be left of the gore.',
    hint: 'Check the lengths, what layers are shorter by, and `off-floor`.',
  })),
} satisfies Readonly<Record<Undraftable['reason'], unknown>>;
