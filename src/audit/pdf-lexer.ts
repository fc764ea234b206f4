import type { PdfDictionary, PdfString, PdfValue } from './pdf-value.ts';

/** A file, or a stream of it, that cannot be read as PDF. */
export class UnreadablePdf extends Error {}

/** What a PDF is written in, one piece after another: values, and bare words (operators and keywords). */
export class PdfLexer {
  constructor(
    private readonly bytes: Uint8Array,
    /** Where reading goes on. */
    public at = 0,
  ) {}

  /** The next value or word; undefined at the end. A reference `7 0 R` is read by the caller, as three. */
  next(depth = 0): PdfValue | Word | undefined {
    if (depth > DEEPEST)
      throw new UnreadablePdf('values lie deeper in one another than any printed page needs');
    this.skipSpace();
    const byte = this.bytes[this.at];
    if (byte === undefined) return undefined;
    const character = String.fromCharCode(byte);
    if (character === '/') return this.name();
    if (character === '(') return this.literalString();
    if (character === '[') return this.list(depth, ']');
    if (character === '<')
      return this.bytes[this.at + 1] === LESS ? this.dictionary(depth) : this.hexString();
    if (character === ']' || character === '}' || character === '{') return this.single();
    if (character === '>') return this.closing();
    return this.numberOrWord();
  }

  skipSpace(): void {
    for (; this.at < this.bytes.length; this.at++) {
      const byte = this.bytes[this.at]!;
      if (byte === PERCENT) while (this.at < this.bytes.length && !isLineEnd(this.bytes[this.at]!)) this.at++;
      else if (!isSpace(byte)) return;
    }
  }

  private name(): PdfValue {
    this.at += 1;
    const text = this.regular().replace(/#([0-9a-fA-F]{2})/g, (_, hex: string) =>
      String.fromCharCode(Number.parseInt(hex, 16)),
    );
    return { name: text };
  }

  private numberOrWord(): number | boolean | null | Word {
    const text = this.regular();
    if (text === '') throw new UnreadablePdf(`an unexpected byte at ${this.at}`);
    if (/^[+-]?(\d+(\.\d*)?|\.\d+)$/.test(text)) return Number(text);
    if (text === 'true' || text === 'false') return text === 'true';
    return text === 'null' ? null : new Word(text);
  }

  private regular(): string {
    let text = '';
    for (; this.at < this.bytes.length; this.at++) {
      const byte = this.bytes[this.at]!;
      if (isSpace(byte) || DELIMITERS.has(byte)) break;
      text += String.fromCharCode(byte);
    }
    return text;
  }

  private literalString(): PdfString {
    this.at += 1;
    let text = '';
    for (let open = 1; this.at < this.bytes.length; this.at++) {
      let character = String.fromCharCode(this.bytes[this.at]!);
      if (character === '\\') character = this.escape();
      else if (character === '(') open += 1;
      else if (character === ')' && --open === 0) break;
      text += character;
    }
    this.at += 1;
    return { bytes: text };
  }

  /** At the backslash; leaves `at` on the last byte of the escape. */
  private escape(): string {
    const octal = /^[0-7]{1,3}/.exec(String.fromCharCode(...this.bytes.slice(this.at + 1, this.at + 4)))?.[0];
    if (octal !== undefined) {
      this.at += octal.length;
      return String.fromCharCode(Number.parseInt(octal, 8) & 255);
    }
    this.at += 1;
    const character = String.fromCharCode(this.bytes[this.at] ?? 0);
    return ESCAPES[character] ?? character;
  }

  private hexString(): PdfString {
    this.at += 1;
    let digits = '';
    for (; this.at < this.bytes.length && this.bytes[this.at] !== GREATER; this.at++) {
      if (!isSpace(this.bytes[this.at]!)) digits += String.fromCharCode(this.bytes[this.at]!);
    }
    this.at += 1;
    const pairs = digits.match(/../g) ?? [];
    return { bytes: pairs.map((pair) => String.fromCharCode(Number.parseInt(pair, 16))).join('') };
  }

  private list(depth: number, end: string): PdfValue[] {
    this.at += 1;
    const values: PdfValue[] = [];
    for (;;) {
      const value = this.next(depth + 1);
      if (value === undefined || (value instanceof Word && value.text === end)) return values;
      pushOrRefer(values, value);
    }
  }

  private dictionary(depth: number): PdfDictionary {
    this.at += 1;
    const values = this.list(depth, '>>');
    const entries = new Map<string, PdfValue>();
    for (let index = 0; index + 1 < values.length; index += 2) {
      const key = values[index];
      if (typeof key === 'object' && key !== null && 'name' in key) entries.set(key.name, values[index + 1]!);
    }
    return { entries };
  }

  private closing(): Word {
    const double = this.bytes[this.at + 1] === GREATER;
    this.at += double ? 2 : 1;
    return new Word(double ? '>>' : '>');
  }

  private single(): Word {
    this.at += 1;
    return new Word(String.fromCharCode(this.bytes[this.at - 1]!));
  }
}

/** An operator or a keyword. */
export class Word {
  constructor(readonly text: string) {}
}

/** `7 0 R` stands as two numbers and a word. */
function pushOrRefer(values: PdfValue[], value: PdfValue | Word): void {
  if (!(value instanceof Word)) {
    values.push(value);
    return;
  }
  if (value.text !== 'R') return;
  values.pop();
  const object = values.pop();
  if (typeof object === 'number') values.push({ object });
}

const DEEPEST = 60;
const PERCENT = 0x25;
const LESS = 0x3c;
const GREATER = 0x3e;
const DELIMITERS = new Set([...'()<>[]{}/%'].map((character) => character.charCodeAt(0)));
const ESCAPES: Readonly<Record<string, string>> = {
  n: '\n',
  r: '\r',
  t: '\t',
  b: '\b',
  f: '\f',
  '\n': '',
  '\r': '',
};

function isSpace(byte: number): boolean {
  return byte === 0x20 || byte === 0x0a || byte === 0x0d || byte === 0x09 || byte === 0x0c || byte === 0;
}

function isLineEnd(byte: number): boolean {
  return byte === 0x0a || byte === 0x0d;
}
