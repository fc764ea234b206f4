import { inflateSync } from 'node:zlib';
import { PdfLexer, UnreadablePdf, Word } from './pdf-lexer.ts';
import {
  isArray,
  isDictionary,
  isName,
  isReference,
  isStream,
  type PdfDictionary,
  type PdfStream,
  type PdfValue,
} from './pdf-value.ts';

/**
 * A PDF file as its objects. Read from start to end rather than by its tables, so that a file that was mended or saved
 * again by another program reads the same: of an object written twice the later counts.
 */
export class PdfFile {
  private readonly objects = new Map<number, PdfValue>();
  private readonly trailers: PdfDictionary[] = [];

  constructor(private readonly bytes: Uint8Array) {
    if (!latin(bytes.subarray(0, 1024)).includes('%PDF-'))
      throw new UnreadablePdf('it does not begin as a PDF does');
    this.readBody();
    if (this.trailer('Encrypt') !== undefined) throw new UnreadablePdf('it is encrypted');
    for (const value of [...this.objects.values()]) if (isStream(value)) this.unpack(value);
  }

  /** The newest value of a key that trailers have. */
  trailer(key: string): PdfValue | undefined {
    return this.trailers.findLast((one) => one.entries.has(key))?.entries.get(key);
  }

  /** What a value refers to, or itself. */
  resolved(value: PdfValue | undefined): PdfValue | undefined {
    let found = value;
    for (let step = 0; isReference(found) && step < 32; step++) found = this.objects.get(found.object);
    return isReference(found) ? undefined : found;
  }

  entry(owner: PdfValue | undefined, key: string): PdfValue | undefined {
    const own = this.resolved(owner);
    if (isStream(own)) return this.resolved(own.dictionary.entries.get(key));
    return isDictionary(own) ? this.resolved(own.entries.get(key)) : undefined;
  }

  numbers(value: PdfValue | undefined): number[] {
    const list = this.resolved(value);
    return isArray(list)
      ? list.map((one) => this.resolved(one)).filter((one) => typeof one === 'number')
      : [];
  }

  /** A stream's bytes, its filters undone. */
  content(stream: PdfStream): Uint8Array {
    const filter = this.entry(stream, 'Filter');
    const filters = isArray(filter)
      ? filter.map((one) => this.resolved(one))
      : filter === undefined
        ? []
        : [filter];
    let { raw } = stream;
    for (const one of filters) {
      if (!isName(one) || (one.name !== 'FlateDecode' && one.name !== 'Fl')) {
        throw new UnreadablePdf(
          `it is packed in a way that this reader does not know (${isName(one) ? one.name : '?'})`,
        );
      }
      raw = inflated(raw);
    }
    return raw;
  }

  private readBody(): void {
    const lexer = new PdfLexer(this.bytes);
    const before: (PdfValue | Word)[] = [];
    for (let value = lexer.next(); value !== undefined; value = lexer.next()) {
      if (value instanceof Word && value.text === 'obj') this.readObject(lexer, before.at(-2));
      else if (value instanceof Word && value.text === 'trailer') {
        const trailer = lexer.next();
        if (trailer !== undefined && !(trailer instanceof Word) && isDictionary(trailer))
          this.trailers.push(trailer);
      }
      before.push(value);
      if (before.length > 2) before.shift();
    }
  }

  private readObject(lexer: PdfLexer, number: PdfValue | Word | undefined): void {
    if (typeof number !== 'number') return;
    const first = lexer.next();
    if (first === undefined || first instanceof Word) return;
    let value: PdfValue = first;
    const here = lexer.at;
    const second = lexer.next();
    const third = typeof first === 'number' && typeof second === 'number' ? lexer.next() : undefined;
    if (third instanceof Word && third.text === 'R') value = { object: first as number };
    else if (isDictionary(first) && second instanceof Word && second.text === 'stream')
      value = this.stream(lexer, first);
    else lexer.at = here;
    this.objects.set(number, value);
  }

  private stream(lexer: PdfLexer, dictionary: PdfDictionary): PdfStream {
    let start = lexer.at;
    if (this.bytes[start] === 0x0d) start += 1;
    if (this.bytes[start] === 0x0a) start += 1;
    const length = dictionary.entries.get('Length');
    const stated = typeof length === 'number' ? start + length : -1;
    const isStated = stated > 0 && /^\s*endstream/.test(latin(this.bytes.subarray(stated, stated + 16)));
    const end = isStated ? stated : this.find('endstream', start);
    lexer.at = end;
    if (isName(dictionary.entries.get('Type')) && dictionary.entries.has('Root'))
      this.trailers.push(dictionary);
    return { dictionary, raw: this.bytes.subarray(start, end) };
  }

  private find(word: string, from: number): number {
    const place = Buffer.from(this.bytes.buffer, this.bytes.byteOffset, this.bytes.length).indexOf(
      word,
      from,
      'latin1',
    );
    if (place < 0) throw new UnreadablePdf('a stream in it does not end: the file was cut off');
    return place;
  }

  /** Objects packed in a stream; those written on their own later in the file are newer, and rare enough to ignore. */
  private unpack(stream: PdfStream): void {
    const type = this.entry(stream, 'Type');
    if (!isName(type) || type.name !== 'ObjStm') return;
    const bytes = this.content(stream);
    const first = this.entry(stream, 'First');
    const count = this.entry(stream, 'N');
    if (typeof first !== 'number' || typeof count !== 'number') return;
    const heads = new PdfLexer(bytes);
    for (let index = 0; index < count; index++) {
      const [number, offset] = [heads.next(), heads.next()];
      if (typeof number !== 'number' || typeof offset !== 'number') return;
      const value = new PdfLexer(bytes, first + offset).next();
      if (value !== undefined && !(value instanceof Word)) this.objects.set(number, value);
    }
  }
}

function inflated(bytes: Uint8Array): Uint8Array {
  try {
    return inflateSync(bytes, { maxOutputLength: MOST_BYTES });
  } catch {
    throw new UnreadablePdf('a packed part of it is damaged, or far larger than any pattern');
  }
}

/** A pattern's largest stream is some hundred kilobytes; a file made to fill memory stops here. */
const MOST_BYTES = 64 * 1024 * 1024;

function latin(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('latin1');
}
