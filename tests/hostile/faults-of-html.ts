import { type DefaultTreeAdapterMap, parse } from 'parse5';

type Node = DefaultTreeAdapterMap['node'];
type Element = DefaultTreeAdapterMap['element'];

/** What is wrong with a page: what a browser would take for more than text and drawings, and numbers that are none. */
export function faultsOfHtml(page: string): string[] {
  const faults: string[] = [];
  // The standard's own way of reading: what a browser makes of the page, not what its writer meant.
  const elements = elementsOf(
    parse(page, { onParseError: ({ code }) => faults.push(`it is not well formed: ${code}`) }),
  );
  for (const element of elements) faults.push(...faultsOfElement(element));
  for (const once of ['html', 'head', 'body', 'h1', 'style', 'script'])
    if (elements.filter(({ tagName }) => tagName === once).length !== 1)
      faults.push(`it has not one <${once}>`);
  const words = elements.flatMap(wordsOf).join('\n');
  if (UNFIT.test(words)) faults.push('it holds controls or marks that turn the reading direction');
  // A gown may be called anything; a figure may not.
  const figures = elements
    .filter(({ attrs }) => attrs.some(({ value }) => value === 'figure'))
    .flatMap(wordsOf);
  if (figures.some((figure) => /\b(?:NaN|undefined|null|Infinity)\b/.test(figure)))
    faults.push('it holds a figure that is none');
  return faults;
}

const UNFIT = /(?![\n\t])[\p{Cc}\u202a-\u202e\u2066-\u2069\ufffe\uffff]|\p{Cs}/u;

const ELEMENTS = new Set(
  (
    'html head meta title style body script header nav main footer section h1 h2 h3 p b br span ul li a div figure ' +
    'figcaption code fieldset legend label input button output table thead tbody tr th td svg g path text'
  ).split(' '),
);

function faultsOfElement({ tagName, attrs }: Element): string[] {
  return [
    ...(ELEMENTS.has(tagName) ? [] : [`there is an element <${tagName}>`]),
    ...attrs.flatMap(({ name, value }) => {
      if (/^on/i.test(name)) return [`<${tagName}> has ${name}`];
      if (name === 'href' && !/^(#[\w-]+|[\w.%~!*'()-]+)$/.test(value)) return [`a link leads to ${value}`];
      if (name === 'src') return [`<${tagName}> loads ${value}`];
      if (name === 'style' && !/^aspect-ratio: [\d.]+ \/ [\d.]+$/.test(value))
        return [`<${tagName}> is styled ${value}`];
      return [];
    }),
  ];
}

function elementsOf(node: Node): Element[] {
  const children = 'childNodes' in node ? node.childNodes : [];
  return [...('tagName' in node ? [node] : []), ...children.flatMap(elementsOf)];
}

/** Text that is shown, and words in attributes. */
function wordsOf({ tagName, childNodes, attrs }: Element): string[] {
  if (tagName === 'script' || tagName === 'style') return [];
  return [
    ...childNodes.flatMap((child) => ('value' in child ? [child.value] : [])),
    ...attrs.map(({ value }) => value),
  ];
}
