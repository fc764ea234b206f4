import { childOf, isScalar, type Written, type WrittenList, type WrittenMap } from './written.ts';

/**
 * A spec over the one that it is based on: sections merge key by key, lists of named things name by name, and all else
 * is replaced. Every value keeps its own place and its own file's units.
 */
export function mergeWritten(base: Written, own: Written): Written {
  if (base.kind === 'map' && own.kind === 'map') return mergeMaps(base, own);
  if (base.kind === 'list' && own.kind === 'list' && isNamed(base) && isNamed(own))
    return mergeLists(base, own);
  return own;
}

/** What a gown records of its own cloth and money, which no other gown based on it has. */
export function withoutRecords(root: WrittenMap): WrittenMap {
  const cloths = childOf(root, 'cloths');
  const used =
    cloths?.kind === 'map' ? [...cloths.entries.keys()].map((name) => ['cloths', name, 'used']) : [];
  return [['cut'], ['labour', 'actual'], ['labour', 'paid'], ...used].reduce(without, root);
}

/**
 * Prices that do not say what they are for go by their file's units: a yard or a metre. Under a spec in other units they
 * must go on to mean the same.
 */
export function pricedAsWritten(base: WrittenMap): WrittenMap {
  const unit = base.file.units === 'in' ? 'yd' : 'm';
  const priced = (written: Written): Written => {
    if (written.kind === 'list') return { ...written, items: written.items.map(priced) };
    if (written.kind !== 'map') return written;
    const price = written.entries.get('price');
    if (price === undefined || ['priced-per', 'sold-by'].some((key) => written.entries.has(key)))
      return written;
    const per: Written = { ...price, kind: 'text', text: unit, label: 'priced-per' };
    return { ...written, entries: new Map([...written.entries, ['priced-per', per]]) };
  };
  const entries = [...base.entries].map(([key, value]): [string, Written] => {
    if (key === 'cloths' && value.kind === 'map')
      return [
        key,
        { ...value, entries: new Map([...value.entries].map(([name, cloth]) => [name, priced(cloth)])) },
      ];
    return [key, ['edging', 'trims', 'notions'].includes(key) ? priced(value) : value];
  });
  return { ...base, entries: new Map(entries) };
}

/** The tree less what stands at a path; the items of a list go by their names. */
export function without(root: WrittenMap, [step, ...rest]: readonly string[]): WrittenMap {
  const child = step === undefined ? undefined : root.entries.get(step);
  if (step === undefined || child === undefined) return root;
  const entries = new Map(root.entries);
  const left = rest.length === 0 ? undefined : withoutBelow(child, rest);
  if (left === undefined) entries.delete(step);
  else entries.set(step, left);
  return { ...root, entries };
}

function withoutBelow(written: Written, path: readonly string[]): Written {
  if (written.kind === 'map') return without(written, path);
  if (written.kind !== 'list') return written;
  const [name, ...rest] = path;
  const items = written.items.flatMap((item) => {
    if (nameOf(item) !== name) return [item];
    return rest.length === 0 ? [] : [withoutBelow(item, rest)];
  });
  return { ...written, items };
}

/** What a layer that is left out was sewn as one with goes on without it, and a stack of nothing else is gone. */
export function withoutInStacks(root: WrittenMap, layer: string): WrittenMap {
  const sewn = childOf(root, 'sewn-as-one');
  if (sewn?.kind !== 'map') return root;
  const isIt = (item: Written) => isScalar(item) && item.text.trim() === layer;
  const lessIt = (written: Written): Written =>
    written.kind === 'list'
      ? { ...written, items: written.items.filter((item) => !isIt(item)).map(lessIt) }
      : written;
  const entries = [...sewn.entries].map(([key, value]): [string, Written] => {
    const less = lessIt(value);
    if (less.kind !== 'list') return [key, less];
    return [
      key,
      { ...less, items: less.items.filter((item) => item.kind !== 'list' || item.items.length > 0) },
    ];
  });
  const left = entries.filter(([, value]) => value.kind !== 'list' || value.items.length > 0);
  if (left.length === 0) return without(root, ['sewn-as-one']);
  return {
    ...root,
    entries: new Map([...root.entries, ['sewn-as-one', { ...sewn, entries: new Map(left) }]]),
  };
}

/** Whether anything stands at such a path. */
export function standsAt(written: Written, [step, ...rest]: readonly string[]): boolean {
  if (step === undefined) return true;
  const child =
    written.kind === 'list' ? written.items.find((item) => nameOf(item) === step) : childOf(written, step);
  return child !== undefined && standsAt(child, rest);
}

function mergeMaps(base: WrittenMap, own: WrittenMap): WrittenMap {
  const entries = new Map(base.entries);
  for (const [key, value] of own.entries) {
    const below = base.entries.get(key);
    entries.set(key, below === undefined ? value : mergeWritten(below, value));
  }
  return { ...own, entries };
}

/**
 * Where the list of its own names everything, its order holds, which lets a gore be put between two others; else the
 * base's order stays and what is new follows.
 */
function mergeLists(base: WrittenList, own: WrittenList): WrittenList {
  const merged = (item: Written) => {
    const below = base.items.find((other) => nameOf(other) === nameOf(item));
    return below === undefined ? item : mergeWritten(below, item);
  };
  const named = new Set(own.items.map(nameOf));
  if (base.items.every((item) => named.has(nameOf(item)))) return { ...own, items: own.items.map(merged) };
  const kept = base.items.map((item) => {
    const over = own.items.find((other) => nameOf(other) === nameOf(item));
    return over === undefined ? item : mergeWritten(item, over);
  });
  const known = new Set(base.items.map(nameOf));
  return { ...own, items: [...kept, ...own.items.filter((item) => !known.has(nameOf(item)))] };
}

function isNamed(list: WrittenList): boolean {
  return list.items.length > 0 && list.items.every((item) => nameOf(item) !== undefined);
}

function nameOf(written: Written): string | undefined {
  const name = written.kind === 'map' ? childOf(written, 'name') : undefined;
  return name !== undefined && isScalar(name) ? name.text : undefined;
}
