import { isScalar, parseDocument, visit } from 'yaml';
import type { Random } from '../../hostile/random.ts';

/** A number in a spec's text, as it was typed. */
export interface Typed {
  readonly path: string;
  readonly start: number;
  readonly end: number;
  readonly digits: string;
}

export interface Slip {
  readonly kind: 'dropped' | 'doubled' | 'swapped' | 'decimal' | 'unit';
  readonly path: string;
  readonly from: string;
  readonly to: string;
  readonly text: string;
}

/** No lengths: counts, money, shares, names, dates and weights. */
const NO_LENGTH =
  /^(format|gown|client|notes|name|weight|price|shrinkage|hours|rate|count|dye-lot|date|safety|stitch|pieces|supplier|colour|plies|share|half-share|cut-smaller-.*|fullness|ratio|labour|dates|paper|currency)$/;

/** Every length and angle that stands in a spec. */
export function typedLengths(text: string): Typed[] {
  const found: Typed[] = [];
  visit(parseDocument(text), {
    Scalar(key, node, parents) {
      if (key === 'key' || !node.range) return;
      const path = [...parents, node].flatMap((step, i, all) => {
        const parent = all[i - 1] as { readonly items?: readonly unknown[] } | undefined;
        const at = parent?.items?.indexOf(step) ?? -1;
        if (step !== null && typeof step === 'object' && 'key' in step)
          return isScalar(step.key) ? [String(step.key.value)] : [];
        return at >= 0 ? [String(at)] : [];
      });
      const [start, end] = node.range;
      const match = /^-?(\d+(?:\.\d+)?)(?=(?:cm|mm|in|m|deg)?$)/.exec(text.slice(start, end));
      if (match === null || path.some((step) => NO_LENGTH.test(step))) return;
      const digits = match[1]!;
      const from = start + match[0].length - digits.length;
      found.push({ path: path.join('.'), start: from, end: from + digits.length, digits });
    },
  });
  return found;
}

/** One slip of the finger, its kind as likely as any other; nothing where it leaves the number as it was. */
export function slipped(text: string, typed: readonly Typed[], random: Random): Slip | undefined {
  const one = random.pick(typed);
  const kind = random.pick(['dropped', 'doubled', 'swapped', 'decimal', 'unit'] as const);
  const to = SLIPS[kind](one.digits, random).replace(/\.$/, '');
  if (!/\d/.test(to) || Number(to) === Number(one.digits)) return undefined;
  return {
    kind,
    path: one.path,
    from: one.digits,
    to,
    text: text.slice(0, one.start) + to + text.slice(one.end),
  };
}

const SLIPS: Readonly<Record<Slip['kind'], (digits: string, random: Random) => string>> = {
  dropped: (digits, random) => {
    const at = placeOfDigit(digits, random);
    return digits.slice(0, at) + digits.slice(at + 1);
  },
  doubled: (digits, random) => {
    const at = placeOfDigit(digits, random);
    return digits.slice(0, at) + digits[at] + digits.slice(at);
  },
  swapped: (digits, random) => {
    const plain = digits.replace('.', '');
    const point = digits.indexOf('.');
    if (plain.length < 2) return digits;
    const at = random.below(plain.length - 1);
    const swapped = plain.slice(0, at) + plain[at + 1] + plain[at] + plain.slice(at + 2);
    return point < 0 ? swapped : `${swapped.slice(0, point)}.${swapped.slice(point)}`;
  },
  decimal: (digits, random) =>
    String(Number((Number(digits) * random.pick([10, 100, 0.1, 0.01])).toPrecision(9))),
  unit: (digits, random) => (Number(digits) * random.pick([2.54, 1 / 2.54])).toFixed(1),
};

function placeOfDigit(digits: string, random: Random): number {
  const places = [...digits].flatMap((char, i) => (char === '.' ? [] : [i]));
  return random.pick(places);
}
