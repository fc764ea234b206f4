import { Resvg } from '@resvg/resvg-js';
// The build for Node needs nothing of a browser.
import { getDocument, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Sheet } from './gown.ts';

/** Ink on paper or screen: one byte a pixel, 0 white to 255 black. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly ink: Uint8Array;
}

export interface PdfPage {
  /** Points. */
  readonly width: number;
  readonly height: number;
  readonly userUnit: number;
  readonly text: string;
  /** Boxes of the text, mm from the page's left and bottom. */
  readonly textBoxes: readonly Box[];
  readonly raster: Raster;
}

export interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

const POINT = 25.4 / 72;

/** Pages rendered by pdf.js, which shares no code with the writer, at so many pixels a mm. */
export async function readPages(
  bytes: Uint8Array,
  pixelsPerMm: number,
): Promise<{ pages: PdfPage[]; printScaling: unknown }> {
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const pages: PdfPage[] = [];
  for (let n = 1; n <= pdf.numPages; n++) {
    const page = await pdf.getPage(n);
    const viewport = page.getViewport({ scale: pixelsPerMm * POINT });
    const [width, height] = [Math.ceil(viewport.width), Math.ceil(viewport.height)];
    const { canvas, context } = (pdf.canvasFactory as CanvasFactory).create(width, height);
    await page.render({ canvas, canvasContext: context, viewport }).promise;
    const { items } = await page.getTextContent();
    const words = items.flatMap((item) => ('str' in item ? [item] : []));
    const [x0, y0, x1, y1] = page.view as [number, number, number, number];
    pages.push({
      width: x1 - x0,
      height: y1 - y0,
      userUnit: page.userUnit,
      text: words.map((word) => word.str + (word.hasEOL ? '\n' : '')).join(''),
      textBoxes: words.map((word) => boxOf(word.transform as number[], word.width, word.height)),
      raster: inkOf(context.getImageData(0, 0, width, height).data, width, height),
    });
  }
  const preferences = (await pdf.getViewerPreferences()) as { PrintScaling?: unknown } | null;
  return { pages, printScaling: preferences?.PrintScaling };
}

/** What pdf.js makes its canvases with: here there is no browser to give their types. */
interface CanvasFactory {
  create(width: number, height: number): { canvas: Canvas; context: Context };
}
type Canvas = Parameters<PDFPageProxy['render']>[0]['canvas'];
type Context = Parameters<PDFPageProxy['render']>[0]['canvasContext'] & {
  getImageData(x: number, y: number, width: number, height: number): { data: Uint8ClampedArray };
};

function boxOf(transform: readonly number[], width: number, height: number): Box {
  const [left, base] = [transform[4]! * POINT, transform[5]! * POINT];
  const tall = (height > 0 ? height : Math.abs(transform[3]!)) * POINT;
  return { left, bottom: base - 0.5 * tall, right: left + width * POINT, top: base + 1.05 * tall };
}

/** An SVG rendered by resvg; its text left out. */
export function readSvgInk(svg: string, pixelsPerMm: number): Raster {
  const lines = svg.replace(/<text[\s\S]*?<\/text>/g, '');
  const image = new Resvg(lines, {
    background: 'white',
    fitTo: { mode: 'zoom', value: (pixelsPerMm * 25.4) / 96 },
  }).render();
  return inkOf(image.pixels, image.width, image.height);
}

function inkOf(rgba: Uint8Array | Uint8ClampedArray, width: number, height: number): Raster {
  const ink = new Uint8Array(width * height);
  for (let i = 0; i < ink.length; i++) ink[i] = 255 - rgba[4 * i]!;
  return { width, height, ink };
}

/** The sheets laid side by side by the report's rectangles, as she tapes them: the darker where two meet. */
export function taped(
  size: { width: number; height: number },
  sheets: readonly Sheet[],
  pages: readonly PdfPage[],
  pixelsPerMm: number,
): Raster {
  const whole = { ...size, ink: new Uint8Array(size.width * size.height) };
  for (const sheet of sheets) {
    const page = pages[sheet.page - 1]!;
    const top = page.height * POINT - sheet.bottom - sheet.height;
    for (let y = Math.ceil(sheet.y * pixelsPerMm); y < (sheet.y + sheet.height) * pixelsPerMm; y++) {
      const from = Math.round(y + (top - sheet.y) * pixelsPerMm);
      if (y >= size.height || from >= page.raster.height) continue;
      for (let x = Math.ceil(sheet.x * pixelsPerMm); x < (sheet.x + sheet.width) * pixelsPerMm; x++) {
        if (x >= size.width) break;
        const ink =
          page.raster.ink[from * page.raster.width + Math.round(x + (sheet.left - sheet.x) * pixelsPerMm)]!;
        const at = y * size.width + x;
        whole.ink[at] = Math.max(whole.ink[at]!, ink);
      }
    }
  }
  return whole;
}

/** Pixels that are dark in one raster with no ink in another within `radius` pixels. */
export function missingFrom(dark: Raster, other: Raster, radius: number): { x: number; y: number }[] {
  const reach = Math.floor(radius);
  const missing: { x: number; y: number }[] = [];
  for (let y = 0; y < dark.height; y++) {
    for (let x = 0; x < dark.width; x++) {
      if (dark.ink[y * dark.width + x]! >= DARK && !hasInk(other, x, y, radius, reach))
        missing.push({ x, y });
    }
  }
  return missing;
}

const DARK = 140;
const ANY_INK = 40;

function hasInk(
  { ink, width, height }: Raster,
  x: number,
  y: number,
  radius: number,
  reach: number,
): boolean {
  for (let dy = -reach; dy <= reach; dy++) {
    for (let dx = -reach; dx <= reach; dx++) {
      if (dx * dx + dy * dy > radius * radius) continue;
      const [px, py] = [x + dx, y + dy];
      if (px >= 0 && py >= 0 && px < width && py < height && ink[py * width + px]! >= ANY_INK) return true;
    }
  }
  return false;
}
