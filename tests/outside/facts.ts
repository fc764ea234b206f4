import { parse } from 'yaml';

/**
 * What a spec says, read by a second and simpler reader: the outside tests measure the pattern against these, never
 * against the tool's own reading. Lengths in mm, angles in radians. Only for specs without errors.
 */
export interface GownFacts {
  /** The gores run all the way round: each is cut once, and the last station is the first again. */
  readonly closed: boolean;
  readonly waistSeam: number;
  readonly gores: readonly GoreFacts[];
  /** One more than the gores: centre front, each seam, centre back. */
  readonly stations: readonly StationFacts[];
  readonly measured: 'finished' | 'cut' | 'to-floor';
  readonly hemWidthAt?: number;
  readonly train?: {
    readonly begins: number;
    readonly full: number;
    readonly ends?: number;
    readonly onFloor: number;
    readonly shape: 'round' | 'pointed' | 'square';
  };
  readonly point?: string;
  readonly layers: readonly LayerFacts[];
  /** What is cut beside the gores, by name: flounces, tiers, godets, gores of overskirts. */
  readonly beside: readonly string[];
  readonly godets: readonly GodetFacts[];
  /** Of a skirt on a waistband: by how much that is longer than the waist. */
  readonly band?: { readonly overlap: number };
  readonly slits: readonly { readonly seam: string; readonly aboveHem: number; readonly facing: boolean }[];
  readonly pockets: readonly {
    readonly seam: string;
    readonly belowWaist: number;
    readonly opening: number;
  }[];
}

export interface GodetFacts {
  readonly name: string;
  readonly copies: number;
  readonly layers?: readonly string[];
}

export interface GoreFacts {
  readonly name: string;
  /** Which edge lies on the fold. */
  readonly fold?: 'front' | 'back';
  /** Sewn top and hem of the piece: of the half where it lies on the fold. */
  readonly top: number;
  readonly hem?: number;
  /** The whole angle of the piece. */
  readonly flare?: number;
  /** Angles in front of and behind the grain. */
  readonly flares?: readonly [number, number];
  readonly grain: string;
  readonly frontEdge: string;
  readonly backEdge: string;
  readonly roughCut: number;
  /** Its seams follow the petticoat's girths, so they are not straight. */
  readonly shaped: boolean;
  /** On a closed ring, its middle lies in the second half of the waist: the ring's next gore is nearer to the front. */
  readonly onRight: boolean;
}

export interface StationFacts {
  readonly name: string;
  readonly drop: number;
  /** Finished length of the longest layer where the spec fixes it. */
  readonly length?: number;
}

export interface LayerFacts {
  readonly name: string;
  readonly hem: string;
  readonly shorter: number;
  readonly gores: readonly string[];
  readonly acrossFactor: number;
  readonly alongFactor: number;
  /** French seams and their like lie to one side: no allowance is pressed open. */
  readonly pressedOpen: boolean;
  /** Degrees from where the thread would run on the straight grain. */
  readonly threadTurned: number;
  allowance(edge: string): number;
  /** Cloth for one of the sewn top of a gore, and for one of its width where hem widths hold. */
  fullness(gore: string): { readonly top: number; readonly width: number };
}

type Tree = Record<string, unknown>;

/** @param edge the bodice's edge as it was measured on its panels, where the spec has it drafted */
export function factsOf(yaml: string, edge: Tree = {}): GownFacts {
  const spec = parse(yaml) as Tree;
  const mm = quantities(spec.units as string);
  const bodice = { ...(spec.bodice as Tree), ...edge };
  const lengths = spec.lengths as Tree;
  const goreList = spec.gores as Tree[];
  const names = goreList.map((gore) => String(gore.name));
  const closed = spec.symmetry === 'none';
  const stationNames = stationsOf(spec);
  const panels = (bodice.panels ?? {}) as Tree;
  const rough = (spec['rough-cut'] ?? {}) as Tree;
  const number = (value: unknown) => (value === undefined ? undefined : mm(value));
  const tops = goreList.map((gore, i) => {
    const onFold = gore['on-fold'] === true;
    const panel = panels[names[i]!];
    return mm(gore['half-top'] ?? gore.top ?? (onFold ? `${mm(panel) / 2}mm` : panel));
  });
  const wholeTop = tops.reduce((sum, top) => sum + top, 0);
  const gores = goreList.map((gore, i): GoreFacts => {
    const onFold = gore['on-fold'] === true;
    const flare = gore['half-flare'] ?? gore.flare;
    const flares = Array.isArray(flare) ? ([mm(flare[0]), mm(flare[1])] as const) : undefined;
    const half = closed ? 1 : 2;
    const shared = spec.sweep === undefined ? undefined : ((mm(spec.sweep) / half) * tops[i]!) / wholeTop;
    const before = tops.slice(0, i).reduce((sum, top) => sum + top, 0);
    const fold = onFold ? (i === 0 ? 'front' : 'back') : undefined;
    return defined({
      name: names[i]!,
      fold,
      top: tops[i]!,
      hem: number(gore['half-hem'] ?? gore.hem) ?? (flare === undefined ? shared : undefined),
      flare: flares === undefined ? number(flare) : flares[0] + flares[1],
      flares,
      grain: String(gore.grain ?? 'centre'),
      frontEdge: fold === 'front' ? 'fold' : stationNames[i]!,
      backEdge: fold === 'back' ? 'fold' : stationNames[i + 1]!,
      shaped:
        (spec.petticoat as Tree | undefined)?.girths !== undefined &&
        gore.hem === undefined &&
        gore['half-hem'] === undefined &&
        flare === undefined &&
        spec.sweep === undefined,
      roughCut: rough[names[i]!] === undefined ? 0 : mm(rough[names[i]!]),
      onRight: closed && before + tops[i]! / 2 > wholeTop / 2 + 1e-6,
    }) as GoreFacts;
  });
  const train = spec.train as Tree | undefined;
  return defined({
    closed,
    // A skirt with a waist of its own is as wide there as the tops of its gores.
    waistSeam: spec.waist === undefined ? mm(bodice['waist-seam']) : wholeTop * (closed ? 1 : 2),
    gores,
    stations: stationNames.map((name) => stationOf(name, spec, mm)),
    measured: (lengths.measured ?? 'finished') as GownFacts['measured'],
    hemWidthAt: number(lengths['hem-width-at']),
    train:
      train === undefined
        ? undefined
        : {
            begins: stationNames.indexOf(String(train.begins)),
            full: stationNames.indexOf(String(train.full ?? 'centre-back')),
            ends: train.ends === undefined ? undefined : stationNames.lastIndexOf(String(train.ends)),
            onFloor: mm(train['on-floor'] ?? 0),
            shape: train.shape as 'round',
          },
    point: bodice.point as string | undefined,
    layers: (spec.layers as Tree[]).map((layer) => layerOf(layer, spec, mm, names)),
    beside: besideOf(spec),
    band: bandOf(spec, mm),
    // Told from the waist, or on one side of her, they are tested by themselves.
    slits: onBothSides(spec.slits, 'above-hem').map((slit) => ({
      seam: String(slit.seam),
      aboveHem: mm(slit['above-hem']),
      facing: slit.facing !== undefined,
    })),
    pockets: onBothSides(spec.pockets, 'opening').map((pocket) => ({
      seam: String(pocket.seam),
      belowWaist: mm(pocket['below-waist']),
      opening: mm(pocket.opening),
    })),
    godets: ((spec.godets ?? []) as Tree[]).map((godet) => ({
      name: String(godet.name),
      copies: closed || String(godet.seam).startsWith('centre-') ? 1 : 2,
      ...(godet.layers === undefined ? {} : { layers: godet.layers as string[] }),
    })),
  }) as GownFacts;
}

function bandOf(spec: Tree, mm: (value: unknown) => number): GownFacts['band'] {
  const waist = spec.waist as Tree | undefined;
  return waist?.finish === 'band' && spec.wrap === undefined
    ? { overlap: mm(waist.overlap ?? '30mm') }
    : undefined;
}

function onBothSides(list: unknown, key: string): Tree[] {
  return ((list ?? []) as Tree[]).filter(
    ({ seam, side, ...rest }) =>
      rest[key] !== undefined && side === undefined && !/^centre-/.test(String(seam)),
  );
}

function stationsOf(spec: Tree): string[] {
  const names = (spec.gores as Tree[]).map((gore) => String(gore.name));
  const seams = names.slice(1).map((name, i) => `${names[i]}/${name}`);
  const closing = `${names.at(-1)}/${names[0]}`;
  return spec.symmetry === 'none' ? [closing, ...seams, closing] : ['centre-front', ...seams, 'centre-back'];
}

function besideOf(spec: Tree): string[] {
  const list = (key: string) => (spec[key] ?? []) as Tree[];
  const tiers = list('tiers').flatMap(({ name }) => [name, ...[1, 2, 3, 4].map((i) => `${name}-${i}`)]);
  const gores = list('overskirts').flatMap((overskirt) =>
    (overskirt.gores as Tree[]).map(({ name }) => name),
  );
  return [
    ...list('flounces').map(({ name }) => name),
    ...tiers,
    ...list('godets').map(({ name }) => name),
    ...gores,
  ].map(String);
}

/** Only where the design fixes it: not inside a train whose length comes from its shape. */
function stationOf(name: string, spec: Tree, mm: (value: unknown) => number): StationFacts {
  const lengths = spec.lengths as Tree;
  const given = (lengths.at as Tree)[name];
  const drops = ((spec.bodice as Tree | undefined)?.['drop-below-waist'] ?? {}) as Tree;
  const allowances = (spec.allowances ?? {}) as Tree;
  const train = spec.train as Tree | undefined;
  let length = given === undefined ? undefined : mm(given);
  // Worked out by geometry where the petticoat or the shoes move it: tests of their own hold that.
  const petticoat = spec.petticoat as Tree | undefined;
  if (
    lengths['measured-in'] !== undefined ||
    (petticoat?.measured === 'vertical' && lengths.measured === 'to-floor')
  )
    length = undefined;
  if (length !== undefined && lengths.measured === 'cut') length -= mm(allowances.waist) + mm(allowances.hem);
  if (length !== undefined && lengths.measured === 'to-floor') {
    const off = mm(lengths['off-floor'] ?? 0);
    if (train === undefined) length -= off;
    else if (name === (train.full ?? 'centre-back')) length += mm(train['on-floor'] ?? 0);
    else if (isBeforeTrain(name, String(train.begins), spec)) length -= off;
    else length = undefined;
  }
  return defined({ name, drop: drops[name] === undefined ? 0 : mm(drops[name]), length }) as StationFacts;
}

function isBeforeTrain(name: string, begins: string, spec: Tree): boolean {
  const order = stationsOf(spec);
  const ends = (spec.train as Tree).ends;
  const hasRisen = ends !== undefined && order.indexOf(name) >= order.lastIndexOf(String(ends));
  return hasRisen || order.indexOf(name) <= order.indexOf(begins);
}

function layerOf(layer: Tree, spec: Tree, mm: (value: unknown) => number, names: string[]): LayerFacts {
  const own = (layer.allowances ?? {}) as Tree;
  const shared = (spec.allowances ?? {}) as Tree;
  const pick = (...choices: unknown[]) => {
    const found = choices.find((choice) => choice !== undefined);
    return found === undefined ? Number.NaN : mm(found);
  };
  // A length that was cut has the layer's own turnings in it; the gown's lines count on the gown's.
  const turned =
    (spec.lengths as Tree).measured === 'cut'
      ? pick(own.waist, shared.waist) +
        (layer.hem === 'raw' ? pick(own.hem, 0) : pick(own.hem, shared.hem)) -
        (mm(shared.waist) + mm(shared.hem))
      : 0;
  return {
    name: String(layer.name),
    hem: String(layer.hem),
    shorter: mm(layer.shorter ?? 0) + turned,
    gores: (layer.gores as string[] | undefined) ?? names,
    acrossFactor: 1 - mm(layer['cut-smaller-across'] ?? 0),
    alongFactor: 1 - mm(layer['cut-smaller-along'] ?? 0),
    pressedOpen: layer.seams === undefined || layer.seams === 'open',
    threadTurned: layer.grain === 'bias' ? 45 : 0,
    fullness: (name) => {
      const gore = (spec.gores as Tree[]).find((one) => one.name === name);
      const both = [gore?.fullness, layer.fullness].map((full) => {
        if (full === undefined) return { top: 1, width: 1 };
        const { ratio, where } = (typeof full === 'object' ? full : { ratio: full }) as Tree;
        const times = Number(String(ratio).replace(/:1$/, ''));
        return { top: times, width: where === 'waist' ? 1 : times };
      });
      return { top: both[0]!.top * both[1]!.top, width: both[0]!.width * both[1]!.width };
    },
    // What names the edge goes before what names all seams; the layer before the gown.
    allowance: (edge) => {
      if (edge === 'fold') return 0;
      if (edge === 'waist') return pick(own.waist, shared.waist);
      if (edge === 'hem') return layer.hem === 'raw' ? pick(own.hem, 0) : pick(own.hem, shared.hem);
      return pick(own[edge], shared[edge], own.seam, shared.seam);
    },
  };
}

/** A bare number is in the file's units; text may carry its own, fractions too. */
export function quantities(units: string): (value: unknown) => number {
  const sizes: Record<string, number> = { mm: 1, cm: 10, m: 1000, in: 25.4, deg: Math.PI / 180, '%': 0.01 };
  return (value) => {
    if (typeof value === 'number') return value * sizes[units]!;
    const match = /^\s*(-?)(?:(\d+(?:\.\d+)?)\s+)?(\d+(?:\.\d+)?|\.\d+)(?:\/(\d+))?\s*([a-z%]*)\s*$/.exec(
      String(value),
    );
    if (match === null) throw new Error(`not a quantity: ${value}`);
    const [, sign, whole, top, bottom, unit] = match;
    const amount = Number(whole ?? 0) + Number(top) / Number(bottom ?? 1);
    return (sign === '-' ? -1 : 1) * amount * sizes[unit === '' ? units : unit!]!;
  };
}

function defined(fields: object): object {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}
