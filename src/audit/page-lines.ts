import { ContentReader, type State } from './content-reader.ts';
import type { PdfFile } from './pdf-file.ts';
import { isArray, isStream, type PdfValue } from './pdf-value.ts';
import type { Stroke } from './plane.ts';

export interface ReadPage {
  /** mm. */
  readonly width: number;
  readonly height: number;
  readonly strokes: readonly Stroke[];
}

/** Every page of a file with its stroked lines, cut where the page cuts them. */
export function pagesOf(file: PdfFile): ReadPage[] {
  return pageNodes(file, file.entry(file.trailer('Root'), 'Pages'), 0).map(({ page, box, resources }) => {
    const [left = 0, bottom = 0, right = 0, top = 0] = box;
    const strokes: Stroke[] = [];
    const start: State = {
      matrix: [MM, 0, 0, MM, -left * MM, -bottom * MM],
      clip: { left: 0, bottom: 0, right: (right - left) * MM, top: (top - bottom) * MM },
    };
    new ContentReader(file, strokes).run(pageContent(file, page), resources, start, 0);
    return { width: start.clip.right, height: start.clip.top, strokes };
  });
}

const MM = 25.4 / 72;

interface PageNode {
  readonly page: PdfValue;
  readonly box: readonly number[];
  readonly resources: PdfValue | undefined;
}

/** Leaves of the page tree, with what they inherit. */
function pageNodes(file: PdfFile, node: PdfValue | undefined, depth: number, above?: PageNode): PageNode[] {
  if (node === undefined || depth > 40) return [];
  const ownBox = file.numbers(file.entry(node, 'MediaBox'));
  const own: PageNode = {
    page: node,
    box: ownBox.length === 4 ? ownBox : (above?.box ?? []),
    resources: file.entry(node, 'Resources') ?? above?.resources,
  };
  const kids = file.entry(node, 'Kids');
  if (!isArray(kids)) return [own];
  return kids.flatMap((kid) => pageNodes(file, file.resolved(kid), depth + 1, own));
}

function pageContent(file: PdfFile, page: PdfValue): Uint8Array {
  const contents = file.entry(page, 'Contents');
  const parts = (isArray(contents) ? contents : [contents])
    .map((part) => file.resolved(part))
    .filter(isStream);
  return Buffer.concat(parts.flatMap((part) => [file.content(part), Buffer.from('\n')]));
}
