import {
  Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  parseDocument,
  Scalar,
  type YAMLError,
} from 'yaml';
import type { Diagnostic, Source, Span } from '../diagnostics/diagnostic.ts';
import { withEscapes } from '../diagnostics/safe-text.ts';
import * as problems from '../diagnostics/text-problems.ts';
import type { Written, WrittenFile, WrittenScalar } from './written.ts';

/** Levels of nesting that a spec may have; its own sections need six. Deeper is a fault or an attack. */
const DEEPEST = 24;
/** Values that a spec may hold, aliases written out; a nine-gore gown has about 300. More is an alias bomb. */
const MOST_VALUES = 20_000;

/** YAML 1.2 text to a tree of written values. The only place that knows the YAML library. */
export function readYaml(source: Source): {
  readonly root?: Written;
  readonly diagnostics: readonly Diagnostic[];
} {
  const file: WrittenFile = { source };
  let document: Document.Parsed;
  try {
    document = parseDocument(source.text, {
      version: '1.2',
      uniqueKeys: false,
      stringKeys: true,
      prettyErrors: false,
    });
  } catch (error) {
    if (error instanceof RangeError) return { diagnostics: [problems.nestedTooDeep(spanOf(source, 0, 1))] };
    throw error;
  }
  const version = /^%YAML[ \t]+(?!1\.2\b)\S+/m.exec(source.text);
  if (version !== null && source.text.slice(0, version.index).trim() === '')
    return {
      diagnostics: [problems.otherYaml(spanOf(source, version.index, version.index + version[0].length))],
    };
  const faults = [...document.errors, ...document.warnings].map((error) => faultOf(source, error));
  if (faults.length > 0) return { diagnostics: firstPerLine(faults) };
  if (document.contents === null) return { diagnostics: [problems.emptySpec(spanOf(source, 0, 0))] };
  return new Conversion(file).convert(document.contents);
}

/** A tree as YAML text; `unitOf` gives the unit that a bare number must carry to mean the same there. */
export function writeYaml(root: Written, unitOf: (path: Path, scalar: WrittenScalar) => string): string {
  const nodeOf = (written: Written, path: Path): unknown => {
    if (written.kind === 'map')
      return new Map(
        [...written.entries].map(([key, value]) => [textValue(key), nodeOf(value, [...path, key])]),
      );
    if (written.kind === 'list') return written.items.map((item, index) => nodeOf(item, [...path, index]));
    return plainValue(written, unitOf(path, written));
  };
  return withEscapes(new Document(nodeOf(root, [])).toString({ lineWidth: 0 }));
}

/** What has to be escaped can be so in double quotes only. */
function textValue(text: string): string | Scalar<string> {
  if (withEscapes(text) === text) return text;
  const scalar = new Scalar(text);
  scalar.type = Scalar.QUOTE_DOUBLE;
  return scalar;
}

type Path = readonly (string | number)[];

/** A number keeps the digits that it was written with. */
function plainValue({ kind, text }: WrittenScalar, unit: string): unknown {
  if (kind === 'flag') return text === 'true';
  if (kind !== 'number' || unit !== '') return kind === 'nothing' ? null : textValue(text + unit);
  const decimals = /^[+-]?\d+\.(\d+)$/.exec(text)?.[1]?.length;
  if (decimals === undefined && String(Number(text)) !== text) return text;
  const scalar = new Scalar(Number(text));
  if (decimals !== undefined) scalar.minFractionDigits = decimals;
  return scalar;
}

/** Turns the library's nodes into ours, writing aliases out within bounds. */
class Conversion {
  private readonly diagnostics: Diagnostic[] = [];
  private readonly anchors = new Map<string, Node>();
  private values = 0;
  private stopped = false;
  private readonly file: WrittenFile;

  constructor(file: WrittenFile) {
    this.file = file;
  }

  convert(node: Node): ReturnType<typeof readYaml> {
    const root = this.valueOf(node, '', undefined, 0);
    if (this.stopped) return { diagnostics: this.diagnostics.slice(-1) };
    return { root, diagnostics: this.diagnostics };
  }

  private valueOf(node: Node | null, label: string, key: Span | undefined, depth: number): Written {
    const span = node?.range ? this.span(node.range[0], node.range[1]) : (key ?? this.span(0, 0));
    const base = { file: this.file, span, label, ...(key === undefined ? {} : { key }) };
    const nothing: WrittenScalar = { ...base, kind: 'nothing', text: '' };
    if (this.stopped || node === null) return nothing;
    if (++this.values > MOST_VALUES) return this.stop(problems.tooManyValues(key ?? span), nothing);
    if (depth > DEEPEST) return this.stop(problems.nestedTooDeep(key ?? span), nothing);
    if (isAlias(node)) return this.aliased(node.source, label, key, depth, nothing);
    if (node.anchor !== undefined) this.anchors.set(node.anchor, node);
    if (isMap(node))
      return {
        ...base,
        kind: 'map',
        entries: this.entriesOf(node.items as Pair<Node, Node | null>[], depth),
      };
    if (isSeq(node)) {
      const items = (node.items as (Node | null)[]).map((item) =>
        this.valueOf(item, label, undefined, depth + 1),
      );
      return { ...base, kind: 'list', items };
    }
    return isScalar(node) ? { ...base, ...scalarOf(node.value, node.source) } : nothing;
  }

  private aliased(
    name: string,
    label: string,
    key: Span | undefined,
    depth: number,
    nothing: WrittenScalar,
  ): Written {
    const target = this.anchors.get(name);
    if (target !== undefined) return this.valueOf(target, label, key, depth + 1);
    this.diagnostics.push(problems.unknownAlias(nothing.span, name));
    return { ...nothing, kind: 'left-out' };
  }

  private entriesOf(pairs: readonly Pair<Node, Node | null>[], depth: number): Map<string, Written> {
    const entries = new Map<string, Written>();
    for (const { key, value } of pairs) {
      const [start = 0, end = 0] = key?.range ?? [];
      const span = this.span(start, end);
      const name = isScalar(key) ? String(key.value) : isAlias(key) ? `*${key.source}` : '';
      const fault = this.faultOfKey(name, span, entries.get(name)?.key);
      if (fault !== undefined) this.diagnostics.push(fault);
      else entries.set(name, this.valueOf(value, name, span, depth + 1));
      if (this.stopped) break;
    }
    return entries;
  }

  private faultOfKey(name: string, span: Span, earlier: Span | undefined): Diagnostic | undefined {
    if (name === '<<') return problems.mergeKey(span);
    // Such a name would reach behind the records that it is looked up in.
    if (name in Object.prototype) return problems.unsafeName(span, name);
    return earlier === undefined ? undefined : problems.duplicateKey(span, name, earlier);
  }

  private stop(fault: Diagnostic, nothing: WrittenScalar): Written {
    if (!this.stopped) this.diagnostics.push(fault);
    this.stopped = true;
    return nothing;
  }

  private span(start: number, end: number): Span {
    return spanOf(this.file.source, start, end);
  }
}

function scalarOf(value: unknown, text: string | undefined): Pick<WrittenScalar, 'kind' | 'text'> {
  if (value === null || value === undefined) return { kind: 'nothing', text: '' };
  if (typeof value === 'boolean') return { kind: 'flag', text: String(value) };
  if (typeof value === 'string') return { kind: 'text', text: value };
  return { kind: 'number', text: text ?? String(value) };
}

function faultOf(source: Source, error: YAMLError): Diagnostic {
  const [start, end] = error.pos;
  const span = spanOf(source, start, Math.max(end, start + 1));
  // The library's own way to say that brackets were nested until it could not go on.
  if (/call stack/i.test(error.message)) return problems.nestedTooDeep(span);
  if (error.code === 'TAB_AS_INDENT') return problems.tabForIndent(span);
  if (error.code === 'MULTIPLE_DOCS') return problems.severalDocuments(span);
  if (error.code === 'NON_STRING_KEY') return problems.keyIsNoText(span);
  if (error.code === 'TAG_RESOLVE_FAILED') return problems.tagNotRead(span);
  return problems.notYaml(span, inPlainWords(error));
}

/** What the library says of a slip, for somebody who does not know its words. */
function inPlainWords({ code, message }: YAMLError): string {
  if (/flow (map|seq)/i.test(message)) return 'a bracket is opened and not closed, or a comma is missing';
  const words: Partial<Record<YAMLError['code'], string>> = {
    BAD_INDENT: 'the line starts too far left or right for where it stands',
    BLOCK_AS_IMPLICIT_KEY: 'two colons on a line, or a list begins on the line of its key',
    MULTILINE_IMPLICIT_KEY: 'a key runs over more than one line, or its colon is missing',
    MISSING_CHAR: 'a colon, a quote or a bracket is missing',
    BAD_SCALAR_START: 'a value begins with a sign that needs quotes round it',
    BAD_DQ_ESCAPE: 'a backslash inside double quotes means something else there; use single quotes',
    UNEXPECTED_TOKEN: 'something stands here that does not belong',
  };
  return words[code] ?? message;
}

/** One slip upsets the parser several times on its line; the first message is the useful one. */
function firstPerLine(faults: readonly Diagnostic[]): Diagnostic[] {
  const first: Diagnostic[] = [];
  let lineEnd = -1;
  for (const fault of [...faults].sort((a, b) => a.span.start - b.span.start)) {
    if (fault.span.start <= lineEnd) continue;
    first.push(fault);
    const newline = fault.span.source.text.indexOf('\n', fault.span.start);
    lineEnd = newline === -1 ? fault.span.source.text.length : newline;
  }
  return first;
}

function spanOf(source: Source, start: number, end: number): Span {
  const length = source.text.length;
  return { source, start: Math.min(start, length), end: Math.min(Math.max(end, start), length) };
}
