import fc from 'fast-check';
import { stringify } from 'yaml';
import { evenly } from '../evenly.ts';
import type { Tree } from '../outside/plain-gown.ts';

/**
 * Random gowns that a maker could cut: valid by construction, from two gores to nine a half, pegged to full circle.
 * Lengths in mm, angles in degrees; `specText` writes one in any unit and any order of keys.
 */
export interface RandomGown {
  readonly gores: readonly RandomGore[];
  readonly frontFold: boolean;
  readonly backFold: boolean;
  /** Full hem all round in place of every gore's own. */
  readonly sweep?: number;
  readonly hemWidthAt: number;
  readonly drops: readonly number[];
  readonly point?: 'centre-front' | 'centre-back';
  readonly measured: 'finished' | 'cut' | 'to-floor';
  /** By station; undefined where it is left to be filled in. */
  readonly lengths: readonly (number | undefined)[];
  readonly offFloor: number;
  readonly train?: {
    readonly begins: number;
    readonly onFloor: number;
    readonly shape: 'round' | 'pointed' | 'square';
  };
  readonly allowances: Readonly<Record<string, number>>;
  readonly roughCut: readonly number[];
  readonly layers: readonly RandomLayer[];
  /** On a waistband of its own, in place of a bodice. */
  readonly band?: { readonly width: number; readonly overlap: number };
  /** In a seam off the centres, by its number. */
  readonly slit?: { readonly seam: number; readonly aboveHem: number; readonly facing: number };
  readonly pocket?: { readonly seam: number; readonly belowWaist: number; readonly opening: number };
}

export interface RandomGore {
  readonly top: number;
  readonly width:
    | { readonly hem: number }
    | { readonly flare: number }
    | { readonly flares: readonly [number, number] };
  readonly grain: 'centre' | 'front-edge' | 'back-edge';
}

export interface RandomLayer {
  readonly hem: 'turned' | 'faced' | 'bagged' | 'rolled' | 'raw';
  readonly shorter: number;
  readonly hemAllowance?: number;
  /** Depth of its shaped facings. */
  readonly facing?: number;
}

const share = evenly(0, 1);
const shares = fc.array(share, { minLength: 10, maxLength: 10 });

export const gowns: fc.Arbitrary<RandomGown> = fc
  .record({
    count: fc.integer({ min: 2, max: 9 }),
    frontFold: fc.boolean(),
    backFold: fc.boolean(),
    tops: shares,
    flares: shares,
    fullness: fc.constantFrom('pegged', 'straight', 'moderate', 'moderate', 'circle', 'sweep'),
    kinds: fc.array(fc.constantFrom('hem', 'flare', 'flares'), { minLength: 10, maxLength: 10 }),
    grains: fc.array(
      fc.constantFrom('centre' as const, 'centre' as const, 'front-edge' as const, 'back-edge' as const),
      {
        minLength: 10,
        maxLength: 10,
      },
    ),
    drops: fc.option(shares, { nil: undefined }),
    point: fc.constantFrom(undefined, undefined, 'centre-front' as const, 'centre-back' as const),
    base: fc.integer({ min: 350, max: 1200 }),
    walk: shares,
    named: shares,
    shape: fc.constantFrom(
      'level',
      'by hand',
      'some by hand',
      'cut',
      'round',
      'pointed',
      'square',
      'floor round',
      'floor square',
    ),
    begins: share,
    reach: share,
    seam: fc.integer({ min: 6, max: 25 }),
    waist: fc.integer({ min: 6, max: 20 }),
    hem: fc.integer({ min: 4, max: 40 }),
    own: shares,
    layers: fc.array(
      fc.record({
        hem: fc.constantFrom(
          'turned' as const,
          'faced' as const,
          'bagged' as const,
          'rolled' as const,
          'raw' as const,
        ),
        shorter: fc.integer({ min: 0, max: 30 }),
        hemAllowance: fc.option(fc.integer({ min: 3, max: 30 }), { nil: undefined }),
      }),
      { minLength: 1, maxLength: 3 },
    ),
    rough: fc.option(fc.integer({ min: 10, max: 30 }), { nil: undefined }),
    ownWaist: fc.boolean(),
    openings: fc.tuple(share, share, share),
  })
  // A waist of its own is level: nothing above it drops or comes to a point.
  .map((raw) => gownFrom(raw.ownWaist ? { ...raw, drops: undefined, point: undefined } : raw));

/** Shares from 0 to 1 and choices, from which a gown is built. */
interface Raw {
  count: number;
  frontFold: boolean;
  backFold: boolean;
  tops: number[];
  flares: number[];
  fullness: string;
  kinds: string[];
  grains: ('centre' | 'front-edge' | 'back-edge')[];
  drops: number[] | undefined;
  point: 'centre-front' | 'centre-back' | undefined;
  base: number;
  walk: number[];
  named: number[];
  shape: string;
  begins: number;
  reach: number;
  seam: number;
  waist: number;
  hem: number;
  own: number[];
  layers: { hem: RandomLayer['hem']; shorter: number; hemAllowance: number | undefined }[];
  rough: number | undefined;
  ownWaist: boolean;
  openings: [number, number, number];
}

const half = (value: number) => Math.round(value * 2) / 2;

function gownFrom(raw: Raw): RandomGown {
  const n = raw.count;
  const tops = raw.tops.slice(0, n).map((t) => half(60 + 90 * t));
  const drops = dropsFrom(raw, tops);
  const hemWidthAt = raw.base;
  const flares = flaresFrom(raw, tops, drops);
  const widths = tops.map((top, i) => Math.max(30, top + flares[i]! * raw.base));
  const { lengths, measured, offFloor, train } = lengthsFrom(raw, widths);
  const half2 = tops.reduce((sum, top) => sum + top, 0);
  const sweep =
    raw.fullness === 'sweep'
      ? half(2 * (half2 + 0.8 * flares.reduce((a, b) => a + b, 0) * hemWidthAt))
      : undefined;
  const gores = tops.map((top, i): RandomGore => {
    const flare = flares[i]!;
    const degrees = Number(((flare * 180) / Math.PI).toFixed(2));
    const onFold = (i === 0 && raw.frontFold) || (i === n - 1 && raw.backFold);
    const kind = raw.kinds[i]!;
    if (kind === 'hem') return { top, width: { hem: half(top + flare * hemWidthAt) }, grain: raw.grains[i]! };
    if (kind === 'flare' || onFold || degrees <= 0)
      return { top, width: { flare: degrees }, grain: raw.grains[i]! };
    const ahead = Number((degrees * raw.walk[i]!).toFixed(2));
    return { top, width: { flares: [ahead, Number((degrees - ahead).toFixed(2))] }, grain: 'centre' };
  });
  const stations = stationNames(n);
  const allowances: Record<string, number> = { seam: raw.seam, waist: raw.waist, hem: raw.hem };
  for (let i = 0; i <= n; i++)
    if (raw.own[i]! > 0.75) allowances[stations[i]!] = raw.seam + Math.round(10 * raw.own[i]!);
  return {
    gores,
    frontFold: raw.frontFold,
    backFold: raw.backFold,
    ...(sweep === undefined ? {} : { sweep }),
    hemWidthAt,
    drops,
    ...pointOf(raw.point, drops),
    measured,
    lengths,
    offFloor,
    ...(train === undefined ? {} : { train }),
    allowances,
    roughCut: tops.map((_, i) => (raw.rough !== undefined && i > 0 && i % 2 === 1 ? raw.rough : 0)),
    layers: raw.layers.map(({ hem, shorter, hemAllowance }) => ({
      hem,
      shorter,
      ...(hemAllowance === undefined || hem === 'raw' ? {} : { hemAllowance }),
      ...(hem === 'faced' ? { facing: half(20 + 60 * raw.reach) } : {}),
    })),
    ...(raw.ownWaist
      ? { band: { width: half(20 + 40 * raw.openings[2]), overlap: half(10 + 50 * raw.openings[0]) } }
      : {}),
    ...openingsFrom(raw, lengths),
  };
}

/** Where the hip lies that nobody measured (common practice): a slit ends below it. */
const HIP = 200;

/** A slit in one seam and a pocket in another, where the shortest seam has room for them. */
function openingsFrom(
  { count, openings: [slit, pocket, depth], shape }: Raw,
  lengths: readonly (number | undefined)[],
): Pick<RandomGown, 'slit' | 'pocket'> {
  const room = Math.min(...lengths.flatMap((length) => length ?? [])) - HIP - (shape === 'cut' ? 60 : 0) - 30;
  const seams = count - 1;
  if (room < 120 || seams < 1) return {};
  const own = 1 + Math.floor(slit * seams * 0.999);
  const other = 1 + (own % seams);
  return {
    ...(slit < 0.4
      ? { slit: { seam: own, aboveHem: half(40 + (room - 40) * depth), facing: half(20 + 30 * pocket) } }
      : {}),
    // Its bag is as deep as its opening at least, and ends above the hem.
    ...(pocket < 0.3 && other !== own
      ? { pocket: { seam: other, belowWaist: half(30 + 40 * slit), opening: half(90 + 0.3 * room * depth) } }
      : {}),
  };
}

/** A bodice comes to a point only at a centre that has a drop. */
function pointOf(point: RandomGown['point'], drops: readonly number[]): Pick<RandomGown, 'point'> {
  const there = point === 'centre-front' ? drops[0]! : drops.at(-1)!;
  return point === undefined || there === 0 ? {} : { point };
}

/** Steps between neighbours no steeper than about 20°, lowest at 0. */
function dropsFrom(raw: Raw, tops: readonly number[]): number[] {
  if (raw.drops === undefined) return [0, ...tops.map(() => 0)];
  const walk = [0];
  for (const [i, top] of tops.entries())
    walk.push(walk[i]! + (raw.drops[i]! - 0.65) * 0.5 * Math.min(top, tops[i + 1] ?? top));
  const lowest = Math.min(...walk);
  return walk.map((drop) => half(drop - lowest));
}

/** Angles in radians, leaving every ring a radius that a waist allowance can turn about, and at most a full circle. */
function flaresFrom(raw: Raw, tops: readonly number[], drops: readonly number[]): number[] {
  const whole = { pegged: -0.2, straight: 0, moderate: 1.2, circle: Math.PI, sweep: 1 }[raw.fullness]!;
  const sum = tops.reduce((a, b) => a + b, 0);
  return tops.map((top, i) => {
    if (raw.fullness === 'pegged') return -(0.25 * raw.flares[i]! * top) / 2000;
    if (raw.fullness === 'sweep' || raw.fullness === 'straight') return (whole * top) / sum;
    const deepest = Math.max(drops[i]!, drops[i + 1]!) + raw.waist;
    const wanted = ((0.5 + 0.5 * raw.flares[i]!) * whole * top) / sum;
    return Math.min(wanted, (0.6 * top) / deepest);
  });
}

function lengthsFrom(raw: Raw, widths: readonly number[]) {
  const n = widths.length;
  const { base } = raw;
  const at: (number | undefined)[] = [base, ...widths.map(() => undefined)];
  at[n] = base;
  if (raw.shape === 'level') return { lengths: at, measured: 'finished' as const, offFloor: 0 };
  if (raw.shape === 'cut') {
    const cut = base + raw.waist + raw.hem;
    return { lengths: at.map((l) => (l === undefined ? l : cut)), measured: 'cut' as const, offFloor: 0 };
  }
  if (raw.shape === 'by hand' || raw.shape === 'some by hand') {
    const walked = [base];
    for (const [i, width] of widths.entries()) {
      walked.push(
        half(
          Math.max(
            250,
            walked[i]! + (raw.walk[i]! - 0.3) * 0.5 * Math.min(width, widths[i + 1] ?? width, 500),
          ),
        ),
      );
    }
    const all = raw.shape === 'by hand';
    const lengths = walked.map((l, i) => (all || i === 0 || i === n || raw.named[i]! > 0.6 ? l : undefined));
    return { lengths, measured: 'finished' as const, offFloor: 0 };
  }
  const shape = raw.shape.replace('floor ', '') as 'round' | 'pointed' | 'square';
  const begins = Math.max(1, Math.min(n - 1, Math.floor(raw.begins * n)));
  const way = widths.slice(begins).reduce((a, b) => a + b, 0);
  const steep = { round: 0.5, pointed: 0.35, square: 0.3 }[shape];
  const onFloor = 20 + half((0.2 + 0.8 * raw.reach) * Math.min(1000, steep * way));
  if (raw.shape.startsWith('floor')) {
    const lengths = at.map((_, i) => (i === 0 || i === n || i === begins ? base + 20 : undefined));
    return { lengths, measured: 'to-floor' as const, offFloor: 20, train: { begins, onFloor, shape } };
  }
  const lengths = [...at];
  lengths[n] = base + onFloor;
  if (begins > 0) lengths[begins] = base;
  return { lengths, measured: 'finished' as const, offFloor: 0, train: { begins, onFloor, shape } };
}

export const goreNames = (n: number) => Array.from({ length: n }, (_, i) => `g${i + 1}`);

export function stationNames(n: number): string[] {
  const names = goreNames(n);
  return ['centre-front', ...names.slice(1).map((name, i) => `${names[i]}/${name}`), 'centre-back'];
}

/** The spec of a random gown; `order` rearranges the keys of every map. */
export function specText(
  gown: RandomGown,
  units: 'mm' | 'cm' | 'in' = 'mm',
  order = (keys: string[]) => keys,
): string {
  return stringify(reordered(specTree(gown, { mm: 1, cm: 10, in: 25.4 }[units], units), order));
}

function specTree(gown: RandomGown, size: number, units: string): Tree {
  const unit = (mm: number) => Number((mm / size).toPrecision(15));
  const n = gown.gores.length;
  const names = goreNames(n);
  const stations = stationNames(n);
  const byStation = (values: readonly (number | undefined)[]) =>
    Object.fromEntries(
      stations.flatMap((name, i) => (values[i] === undefined ? [] : [[name, unit(values[i]!)]])),
    );
  const all = (values: Readonly<Record<string, number>>) =>
    Object.fromEntries(Object.entries(values).map(([name, value]) => [name, unit(value)]));
  const rough = Object.fromEntries(
    names.flatMap((name, i) => (gown.roughCut[i]! > 0 ? [[name, unit(gown.roughCut[i]!)]] : [])),
  );
  return {
    format: 1,
    gown: 'Random',
    units,
    ...(gown.band === undefined
      ? {
          bodice: {
            'waist-seam': unit(2 * gown.gores.reduce((sum, gore) => sum + gore.top, 0)),
            ...(gown.drops.some((drop) => drop > 0) ? { 'drop-below-waist': byStation(gown.drops) } : {}),
            ...(gown.point === undefined ? {} : { point: gown.point }),
          },
        }
      : { waist: { finish: 'band', cloth: 'calico', ...all({ ...gown.band }) } }),
    ...(gown.slit === undefined
      ? {}
      : {
          slits: [
            {
              seam: stations[gown.slit.seam],
              'above-hem': unit(gown.slit.aboveHem),
              facing: { depth: unit(gown.slit.facing) },
            },
          ],
        }),
    ...(gown.pocket === undefined
      ? {}
      : {
          pockets: [
            {
              seam: stations[gown.pocket.seam],
              'below-waist': unit(gown.pocket.belowWaist),
              opening: unit(gown.pocket.opening),
              depth: unit(gown.pocket.opening + 20),
              width: unit(80),
              cloth: 'calico',
            },
          ],
        }),
    gores: gown.gores.map((gore, i) => goreTree(gown, gore, i, names[i]!, unit)),
    ...(gown.sweep === undefined ? {} : { sweep: unit(gown.sweep) }),
    lengths: {
      measured: gown.measured,
      'hem-width-at': unit(gown.hemWidthAt),
      ...(gown.measured === 'to-floor' ? { 'off-floor': unit(gown.offFloor) } : {}),
      at: byStation(gown.lengths),
    },
    ...(gown.train === undefined
      ? {}
      : {
          train: {
            begins: stations[gown.train.begins],
            'on-floor': unit(gown.train.onFloor),
            shape: gown.train.shape,
          },
        }),
    allowances: all(gown.allowances),
    ...(Object.keys(rough).length === 0 ? {} : { 'rough-cut': rough }),
    layers: gown.layers.map((layer, i) => ({
      name: `layer-${i + 1}`,
      cloth: 'calico',
      hem: layer.hem,
      ...(layer.facing === undefined ? {} : { facing: { depth: unit(layer.facing) } }),
      ...(layer.shorter === 0 ? {} : { shorter: unit(layer.shorter) }),
      ...(layer.hemAllowance === undefined ? {} : { allowances: { hem: unit(layer.hemAllowance) } }),
    })),
    cloths: { calico: { width: unit(3000) } },
  };
}

function goreTree(
  gown: RandomGown,
  gore: RandomGore,
  i: number,
  name: string,
  unit: (mm: number) => number,
): Tree {
  const onFold = (i === 0 && gown.frontFold) || (i === gown.gores.length - 1 && gown.backFold);
  const [top, hem, flare] = onFold ? ['half-top', 'half-hem', 'half-flare'] : ['top', 'hem', 'flare'];
  const width =
    gown.sweep !== undefined
      ? {}
      : 'hem' in gore.width
        ? { [hem!]: unit(gore.width.hem) }
        : {
            [flare!]:
              'flare' in gore.width
                ? `${gore.width.flare}deg`
                : gore.width.flares.map((angle) => `${angle}deg`),
          };
  const grain = onFold || gore.grain === 'centre' ? {} : { grain: gore.grain };
  return { name, ...(onFold ? { 'on-fold': true } : {}), [top!]: unit(gore.top), ...width, ...grain };
}

function reordered(value: unknown, order: (keys: string[]) => string[]): unknown {
  if (Array.isArray(value)) return value.map((item) => reordered(item, order));
  if (typeof value !== 'object' || value === null) return value;
  const map = value as Tree;
  return Object.fromEntries(order(Object.keys(map)).map((key) => [key, reordered(map[key], order)]));
}

/** The same gown with every length multiplied. */
export function scaled(gown: RandomGown, factor: number): RandomGown {
  const by = (mm: number) => mm * factor;
  return {
    ...gown,
    gores: gown.gores.map((gore) => ({
      ...gore,
      top: by(gore.top),
      width: 'hem' in gore.width ? { hem: by(gore.width.hem) } : gore.width,
    })),
    ...(gown.sweep === undefined ? {} : { sweep: by(gown.sweep) }),
    hemWidthAt: by(gown.hemWidthAt),
    drops: gown.drops.map(by),
    lengths: gown.lengths.map((length) => (length === undefined ? undefined : by(length))),
    offFloor: by(gown.offFloor),
    ...(gown.train === undefined ? {} : { train: { ...gown.train, onFloor: by(gown.train.onFloor) } }),
    allowances: Object.fromEntries(Object.entries(gown.allowances).map(([edge, width]) => [edge, by(width)])),
    roughCut: gown.roughCut.map(by),
    ...(gown.band && { band: { width: by(gown.band.width), overlap: by(gown.band.overlap) } }),
    ...(gown.slit && {
      slit: { ...gown.slit, aboveHem: by(gown.slit.aboveHem), facing: by(gown.slit.facing) },
    }),
    ...(gown.pocket && {
      pocket: {
        ...gown.pocket,
        belowWaist: by(gown.pocket.belowWaist),
        opening: by(gown.pocket.opening),
      },
    }),
    layers: gown.layers.map((layer) => ({
      ...layer,
      shorter: by(layer.shorter),
      ...(layer.hemAllowance === undefined ? {} : { hemAllowance: by(layer.hemAllowance) }),
      ...(layer.facing === undefined ? {} : { facing: by(layer.facing) }),
    })),
  };
}
