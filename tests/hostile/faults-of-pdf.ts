import { inflateSync } from 'node:zlib';

/** What is wrong with the drawing operators of a PDF: a token that is no number, name, string or operator. */
export function faultsOfPdf(bytes: Uint8Array): string[] {
  const file = Buffer.from(bytes).toString('latin1');
  const faults: string[] = [];
  if (!file.startsWith('%PDF-1.') || !/%%EOF\s*$/.test(file))
    faults.push('it does not begin or end as a PDF');
  if (/\b(?:NaN|Infinity|undefined)\b/.test(withoutStreams(file))) faults.push('an object holds no number');
  for (const content of contentsOf(file)) {
    const rest = content.replace(STRING, ' ').replace(TOKEN, '');
    if (rest.trim() !== '') faults.push(`content holds "${rest.trim().slice(0, 40)}"`);
  }
  return faults;
}

const STREAM = /<<([\s\S]*?)>>\s*stream\r?\n/g;
/** Parentheses in a string are escaped: what is balanced would be allowed too, and is not written here. */
const STRING = /\((?:[^()\\]|\\[\s\S])*\)|<[0-9A-Fa-f\s]*>/g;
/** Operators of paths, colour, state, text and marked content (ISO 32000), numbers and names. */
const TOKEN =
  /(?<=^|[\s[\]])(?:-?\d+(?:\.\d+)?|-?\.\d+|\/[\w.+-]+|re|cm|gs|[bBfW]\*|BT|ET|BDC|BMC|EMC|Do|T[cdDfJjLmrswz*]|RG|rg|[bBcdfgGhijJklmMnqQsSvwWy])(?=$|[\s[\]])|[[\]]/g;

function withoutStreams(file: string): string {
  return file.replace(/\bstream\r?\n[\s\S]*?\nendstream/g, '').replace(STRING, '');
}

function contentsOf(file: string): string[] {
  return [...file.matchAll(STREAM)].flatMap(({ index, 0: head, 1: dictionary = '' }) => {
    // A font, a table of objects, or a map of characters: not drawn.
    if (/\/(?:Length1|ObjStm|XRef|Type0C|CIDFontType0C|OpenType)\b/.test(dictionary)) return [];
    const length = Number(/\/Length (\d+)/.exec(dictionary)?.[1]);
    const start = index + head.length;
    const data = file.slice(start, start + length);
    const content = /FlateDecode/.test(dictionary)
      ? inflateSync(Buffer.from(data, 'latin1')).toString('latin1')
      : data;
    const isDrawn = !content.includes('\0') && !/begincmap|<\?xpacket/.test(content);
    return isDrawn ? [content] : [];
  });
}
