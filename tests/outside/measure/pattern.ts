import { type CurvePath, readPath, readPaths } from './path.ts';

/** `pattern.svg` as a stranger would read it: the markup only, no knowledge of how it was made. */
export interface Pattern {
  /** As written on the root element. */
  readonly width: string;
  readonly height: string;
  readonly viewBox: readonly number[];
  readonly pieces: readonly PatternPiece[];
  readonly hasTransform: boolean;
}

export interface PatternPiece {
  readonly gore: string;
  /** What it belongs to, where it is no part of the skirt: a bodice's panel has the name of its gore. */
  readonly part: string | undefined;
  readonly layers: readonly string[];
  readonly cut: CurvePath;
  readonly sew: ReadonlyMap<string, CurvePath>;
  readonly grain: readonly CurvePath[];
  /** One tick an entry. */
  readonly notches: readonly { readonly edge: string; readonly ticks: readonly CurvePath[] }[];
  readonly text: string;
}

interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: Element[];
  text: string;
}

export function readPattern(svg: string): Pattern {
  const root = readXml(svg);
  return {
    width: root.attributes.width ?? '',
    height: root.attributes.height ?? '',
    viewBox: (root.attributes.viewBox ?? '').split(/[\s,]+/).map(Number),
    pieces: all(root, (e) => e.name === 'g' && classes(e).includes('piece')).map(readPiece),
    hasTransform: all(root, (e) => 'transform' in e.attributes).length > 0,
  };
}

function readPiece(group: Element): PatternPiece {
  const paths = (name: string) => all(group, (e) => e.name === 'path' && classes(e).includes(name));
  const cuts = paths('cut');
  if (cuts.length !== 1)
    throw new Error(`${cuts.length} cut lines on piece ${group.attributes['data-gore']}`);
  const cut = cuts[0]!.attributes.d ?? '';
  if (!/[zZ]\s*$/.test(cut))
    throw new Error(`the cut line of ${group.attributes['data-gore']} is not closed`);
  const sew = new Map<string, CurvePath>();
  for (const edge of paths('sew')) {
    const name = edge.attributes['data-edge'] ?? '';
    if (sew.has(name)) throw new Error(`edge ${name} twice on piece ${group.attributes['data-gore']}`);
    sew.set(name, readPath(edge.attributes.d ?? ''));
  }
  return {
    gore: group.attributes['data-gore'] ?? '',
    part: group.attributes['data-part'],
    layers: (group.attributes['data-layers'] ?? '').split(/[\s,;]+/).filter((name) => name !== ''),
    cut: readPath(cut),
    sew,
    grain: paths('grain').flatMap((e) => readPaths(e.attributes.d ?? '')),
    notches: paths('notch').map((e) => ({
      edge: e.attributes['data-edge'] ?? '',
      ticks: readPaths(e.attributes.d ?? ''),
    })),
    text: all(group, (e) => e.name === 'text' || e.name === 'tspan')
      .map((e) => e.text)
      .join('\n'),
  };
}

const classes = (element: Element) => (element.attributes.class ?? '').split(/\s+/);

function all(element: Element, wanted: (element: Element) => boolean): Element[] {
  return [...(wanted(element) ? [element] : []), ...element.children.flatMap((child) => all(child, wanted))];
}

/** Enough of XML for a drawing: elements, attributes, text, comments and the five named entities. */
export function readXml(source: string): Element {
  const top: Element = { name: '', attributes: {}, children: [], text: '' };
  const open: Element[] = [top];
  const token =
    /<\?[\s\S]*?\?>|<!--[\s\S]*?-->|<!\[CDATA\[([\s\S]*?)\]\]>|<!DOCTYPE[^>]*>|<\/([^\s>]+)\s*>|<([^\s/>]+)((?:\s+[^\s=]+\s*=\s*(?:"[^"]*"|'[^']*'))*)\s*(\/?)>|([^<]+)|</g;
  for (const [whole, literal, closing, opening, attributes, empty, text] of source.matchAll(token)) {
    const parent = open.at(-1)!;
    if (whole === '<') throw new Error('markup that is not well formed');
    if (literal !== undefined) parent.text += literal;
    else if (text !== undefined) parent.text += unescaped(text);
    else if (closing !== undefined) {
      if (open.pop()!.name !== closing) throw new Error(`</${closing}> closes another element`);
    } else if (opening !== undefined) {
      const element: Element = {
        name: opening,
        attributes: readAttributes(attributes ?? ''),
        children: [],
        text: '',
      };
      parent.children.push(element);
      if (empty !== '/') open.push(element);
    }
  }
  if (open.length !== 1 || top.children.length !== 1) throw new Error('markup with an element left open');
  return top.children[0]!;
}

function readAttributes(source: string): Record<string, string> {
  const found: Record<string, string> = {};
  for (const [, name, double, single] of source.matchAll(/([^\s=]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g)) {
    if (name! in found) throw new Error(`attribute ${name} twice`);
    found[name!] = unescaped(double ?? single ?? '');
  }
  return found;
}

function unescaped(text: string): string {
  const named: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };
  return text.replace(/&(#x?[0-9a-fA-F]+|\w+);/g, (_, name: string) => {
    if (name.startsWith('#x')) return String.fromCodePoint(Number.parseInt(name.slice(2), 16));
    if (name.startsWith('#')) return String.fromCodePoint(Number(name.slice(1)));
    const character = named[name];
    if (character === undefined) throw new Error(`entity &${name};`);
    return character;
  });
}
