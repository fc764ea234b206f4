import { createHash } from 'node:crypto';
import {
  type PDFContext,
  PDFDocument,
  type PDFFont,
  PDFHexString,
  PDFName,
  type PDFPageTree,
  type PDFRef,
} from 'pdf-lib';
import { type Kept, NOTHING_KEPT } from '../../kept/kept.ts';
import type { Drawing, Mark } from '../drawing.ts';
import { plainText } from '../text/plain-text.ts';
import { isWinAnsi } from '../text/win-ansi.ts';
import { compressed } from './compressed.ts';
import { type PdfResources, POINTS_PER_MM, pdfContent } from './pdf-content.ts';
import type { PdfFile, PdfOptions } from './pdf-file.ts';
import { type Bookmark, outlineItems } from './pdf-outline.ts';
import { type EmbeddedFont, FONT_NAMES, textEncoder } from './pdf-text.ts';

/** `writePdf`'s work: the one file that knows the PDF library. */
export async function pdfDocument(pages: readonly Drawing[], options: PdfOptions): Promise<PdfFile> {
  const document = await PDFDocument.create({ updateMetadata: false });
  const embedded = await embeddedFont(document, pages, options);
  const encoder = textEncoder(embedded && usable(embedded));
  const content = new ContentStreams(document.context, encoder.encode, options.kept ?? NOTHING_KEPT);
  const pageRefs = addPages(document.context, document.catalog.Pages(), pages, content);
  const layers = content.finish(standardFonts(document.context, embedded));
  document.setTitle(plainText(options.title));
  if (options.subject !== undefined) document.setSubject(plainText(options.subject));
  if (options.keywords !== undefined) document.setKeywords([plainText(options.keywords)]);
  fillCatalog(document, pageRefs, options.bookmarks ?? titlesOf(pages), layers);
  const id = PDFHexString.of(content.hash([options.title, options.subject ?? '', options.keywords ?? '']));
  document.context.trailerInfo.ID = document.context.obj([id, id]);
  const bytes = await document.save({
    useObjectStreams: true,
    addDefaultPage: false,
    objectsPerTick: Infinity,
    updateFieldAppearances: false,
  });
  return { bytes, missingGlyphs: encoder.missing() };
}

/** Pages put straight into the tree: the library's own way looks through all pages again for each. */
function addPages(
  context: PDFContext,
  tree: PDFPageTree,
  pages: readonly Drawing[],
  content: ContentStreams,
): PDFRef[] {
  const parent = context.getObjectRef(tree)!;
  const refs = pages.map((drawing) =>
    context.register(
      context.obj({
        Type: 'Page',
        Parent: parent,
        MediaBox: [0, 0, points(drawing.width), points(drawing.height)],
        Resources: content.resources,
        Contents: content.stream(pdfContent(drawing, content)),
      }),
    ),
  );
  tree.set(PDFName.of('Kids'), context.obj(refs));
  tree.set(PDFName.of('Count'), context.obj(refs.length));
  return refs;
}

/** Characters. A page with the edge of a piece and its name strip is shorter. */
const SHORT_STREAM = 1400;

interface SwitchedLayer {
  readonly ref: PDFRef;
  readonly offAtFirst: boolean;
}

/** Streams of pages and of the drawings that they use, and the one resource dictionary that all of them share. */
class ContentStreams implements PdfResources {
  readonly resources: PDFRef;
  private readonly forms = new Map<Drawing, { readonly name: string; readonly ref: PDFRef }>();
  private readonly layers = new Map<string, SwitchedLayer>();
  private readonly switches = new Map<string, { readonly name: string; readonly ref: PDFRef }>();
  private readonly digest = createHash('sha256');

  constructor(
    private readonly context: PDFContext,
    readonly text: PdfResources['text'],
    private readonly kept: Kept,
  ) {
    this.resources = context.nextRef();
  }

  /**
   * Compressed by the library's own code, since the platform's zlib differs from one machine to the next; short ones
   * are left as they are, for setting up the compressor takes longer than all the rest of a page.
   */
  stream(content: string, dictionary: Parameters<PDFContext['stream']>[1] = {}): PDFRef {
    this.digest.update(content);
    const { context } = this;
    if (content.length < SHORT_STREAM) return context.register(context.stream(content, dictionary));
    const bytes = compressed(content, this.kept, () => context.flateStream(content).getContents());
    return context.register(context.stream(bytes, { ...dictionary, Filter: 'FlateDecode' }));
  }

  form(drawing: Drawing): string {
    const known = this.forms.get(drawing);
    if (known !== undefined) return known.name;
    const ref = this.stream(pdfContent(drawing, this), {
      Type: 'XObject',
      Subtype: 'Form',
      BBox: [0, 0, points(drawing.width), points(drawing.height)],
      Resources: this.resources,
    });
    const name = `D${this.forms.size + 1}`;
    this.forms.set(drawing, { name, ref });
    return name;
  }

  layer(names: readonly string[], offAtFirst: boolean): string {
    const key = JSON.stringify(names);
    const known = this.switches.get(key);
    if (known !== undefined) return known.name;
    const refs = names.map((name) => this.layerRef(name, offAtFirst));
    const anyOf = () => this.context.register(this.context.obj({ Type: 'OCMD', OCGs: refs, P: 'AnyOn' }));
    const own = { name: `L${this.switches.size + 1}`, ref: refs.length === 1 ? refs[0]! : anyOf() };
    this.switches.set(key, own);
    return own.name;
  }

  private layerRef(name: string, offAtFirst: boolean): PDFRef {
    const known = this.layers.get(name);
    if (known !== undefined) return known.ref;
    const ref = this.context.register(
      this.context.obj({ Type: 'OCG', Name: PDFHexString.fromText(plainText(name)) }),
    );
    this.layers.set(name, { ref, offAtFirst });
    return ref;
  }

  /** Writes the shared resources; gives the switchable layers. */
  finish(fonts: Record<string, PDFRef>): SwitchedLayer[] {
    const named = (entries: Iterable<{ readonly name: string; readonly ref: PDFRef }>) =>
      Object.fromEntries([...entries].map(({ name, ref }) => [name, ref]));
    const dictionary = {
      Font: fonts,
      XObject: named(this.forms.values()),
      Properties: named(this.switches.values()),
    };
    this.context.assign(this.resources, this.context.obj(dictionary));
    return [...this.layers.values()];
  }

  /** Thirty-two hexadecimal digits that stand for everything drawn, and for `more`. */
  hash(more: readonly string[]): string {
    return this.digest.update(JSON.stringify(more)).digest('hex').slice(0, 32);
  }
}

async function embeddedFont(
  document: PDFDocument,
  pages: readonly Drawing[],
  options: PdfOptions,
): Promise<PDFFont | undefined> {
  if (options.font === undefined || !needsFont(pages.flatMap((page) => page.marks))) return undefined;
  // Loaded here: it takes longer to read than all the rest together.
  const [{ fontkit }, bytes] = await Promise.all([import('../text/font-library.ts'), options.font()]);
  document.registerFontkit(fontkit);
  return document.embedFont(bytes, { subset: true });
}

function needsFont(marks: readonly Mark[]): boolean {
  return marks.some((mark) => {
    if (mark.kind === 'text') return !isWinAnsi(plainText(mark.text));
    if (mark.kind === 'group') return needsFont(mark.marks);
    return mark.kind === 'use' && needsFont(mark.drawing.marks);
  });
}

function usable(font: PDFFont): EmbeddedFont {
  const characters = new Set(font.getCharacterSet());
  return {
    has: (codePoint) => characters.has(codePoint),
    operand: (run) => font.encodeText(run).toString(),
    width: (run) => font.widthOfTextAtSize(run, 1),
  };
}

function standardFonts(context: PDFContext, embedded: PDFFont | undefined): Record<string, PDFRef> {
  const standard = (name: string) => {
    const font = { Type: 'Font', Subtype: 'Type1', BaseFont: name, Encoding: 'WinAnsiEncoding' };
    return context.register(context.obj(font));
  };
  return {
    [FONT_NAMES.plain]: standard('Helvetica'),
    [FONT_NAMES.bold]: standard('Helvetica-Bold'),
    ...(embedded === undefined ? {} : { [FONT_NAMES.embedded]: embedded.ref }),
  };
}

function fillCatalog(
  document: PDFDocument,
  pages: readonly PDFRef[],
  bookmarks: readonly Bookmark[],
  layers: readonly SwitchedLayer[],
): void {
  const { catalog, context } = document;
  const name = (key: string) => PDFName.of(key);
  catalog.set(name('ViewerPreferences'), context.obj({ PrintScaling: 'None', DisplayDocTitle: true }));
  catalog.set(name('PageLabels'), context.obj({ Nums: [0, { S: 'D' }] }));
  if (bookmarks.length > 0) catalog.set(name('Outlines'), outline(context, pages, bookmarks));
  if (layers.length > 0) {
    const refs = layers.map(({ ref }) => ref);
    const off = layers.filter(({ offAtFirst }) => offAtFirst).map(({ ref }) => ref);
    const on = refs.filter((ref) => !off.includes(ref));
    const usual = { ON: on, OFF: off, Order: refs };
    catalog.set(name('OCProperties'), context.obj({ OCGs: refs, D: usual }));
    catalog.set(name('PageMode'), name('UseOC'));
  }
}

function outline(context: PDFContext, pages: readonly PDFRef[], bookmarks: readonly Bookmark[]): PDFRef {
  const items = outlineItems(bookmarks);
  const root = context.nextRef();
  const refs = items.map(() => context.nextRef());
  const linked = (key: string, index: number | undefined) =>
    index === undefined ? {} : { [key]: refs[index]! };
  const family = (children: readonly number[]) =>
    children.length === 0 ? {} : { ...linked('First', children[0]), ...linked('Last', children.at(-1)) };
  for (const [index, item] of items.entries()) {
    const entry = context.obj({
      Title: PDFHexString.fromText(plainText(item.title)),
      Parent: item.parent === undefined ? root : refs[item.parent]!,
      Dest: [pages[item.page]!, 'XYZ', null, null, null],
      ...linked('Prev', item.previous),
      ...linked('Next', item.next),
      ...family(item.children),
      // Negative: closed until she opens it.
      ...(item.children.length > 0 ? { Count: -item.children.length } : {}),
    });
    context.assign(refs[index]!, entry);
  }
  const top = items.flatMap((item, index) => (item.parent === undefined ? [index] : []));
  context.assign(root, context.obj({ Type: 'Outlines', ...family(top), Count: top.length }));
  return root;
}

function titlesOf(pages: readonly Drawing[]): Bookmark[] {
  return pages.flatMap(({ title }, page) => (title === undefined ? [] : [{ title, page, level: 1 }]));
}

function points(mm: number): number {
  return Math.round(mm * POINTS_PER_MM * 1e4) / 1e4;
}
