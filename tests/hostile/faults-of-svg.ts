import { Resvg } from '@resvg/resvg-js';
import { readXml } from '../outside/measure/pattern.ts';

type Element = ReturnType<typeof readXml>;

/** What is wrong with an SVG as a file: whether strangers can read it, and whether every number in it is one. */
export function faultsOfSvg(svg: string): string[] {
  const faults: string[] = [];
  try {
    // A strict reader of XML 1.0 that shares no code with the writer.
    new Resvg(svg, { font: { loadSystemFonts: false } });
  } catch (error) {
    faults.push(`a stranger cannot read it: ${String(error)}`);
  }
  if (UNFIT.test(svg)) faults.push('it holds controls or marks that turn the reading direction');
  try {
    faultsOfElement(readXml(svg), faults);
  } catch (error) {
    faults.push(`it is not well formed: ${String(error)}`);
  }
  return faults;
}

/** Line ends stand between elements; XML allows no other control, and hidden marks would forge what is read. */
const UNFIT = /(?!\n)[\p{Cc}\u202a-\u202e\u2066-\u2069\ufffe\uffff]|\p{Cs}/u;
const ELEMENTS = new Set(['svg', 'g', 'path', 'text', 'title']);
/** Attributes that hold words: the rest hold numbers. */
const WORDS =
  /^(class|data-[a-z-]+|xmlns|version|fill|stroke|stroke-linejoin|font-family|font-weight|text-anchor|overflow|preserveAspectRatio)$/;
const NUMBERS = /^(?:[MLCAZ, ]|rotate\(|\)|mm|-?\d+(?:\.\d+)?)*$/;

function faultsOfElement(element: Element, faults: string[]): void {
  if (!ELEMENTS.has(element.name)) faults.push(`there is an element <${element.name}>`);
  for (const [name, value] of Object.entries(element.attributes)) {
    if (!WORDS.test(name) && (!NUMBERS.test(value) || !/\d/.test(value)))
      faults.push(`<${element.name}> has ${name}="${value.slice(0, 60)}"`);
  }
  for (const child of element.children) faultsOfElement(child, faults);
}
