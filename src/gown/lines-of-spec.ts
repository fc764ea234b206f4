import type { DartSpec, GoreSpec, LengthsSpec, Spec, TrainSpec } from '../gown-file/spec.ts';
import { stationsOf } from '../gown-file/stations.ts';
import type { Dart } from './cloth.ts';
import type { Gore, GownLines, LengthRule, Round, Train, WidthLevel, WidthRule, WrapLines } from './lines.ts';
import type { PlaceIn } from './placed.ts';
import type { Petticoat } from './sections.ts';
import { type GirthLevel, slantLevels } from './slant-levels.ts';
import type { Station } from './station.ts';
import { type Tape, wornLengths } from './worn-lengths.ts';

/** Of a gown or an overskirt: all that decides its lines. */
export interface LinesAsked {
  readonly name: string;
  readonly round: 'mirrored' | 'ring';
  readonly gores: readonly GoreSpec[];
  readonly lengths: LengthsSpec;
  readonly train?: TrainSpec;
  readonly sweep?: number;
  /** Its girths decide the widths of gores that have none. */
  readonly petticoat?: Petticoat;
  /** So do those of her body, as far as they go; below them the sweep. */
  readonly fitted?: FittedTo;
  /** Darts at the waist of its gores. */
  readonly darts?: readonly DartSpec[];
  readonly waistSeam: number;
  readonly panels: Readonly<Record<string, number>>;
  /** The sewn edge below the level waist, by station. */
  readonly drops: Readonly<Record<string, number>>;
  readonly point?: string;
  /** What is taken off a length that was measured with its turnings. */
  readonly turnings: number;
  readonly roughCut: Readonly<Record<string, number>>;
  /** Stations in order; all the way round without the first one again. */
  readonly names: readonly string[];
  readonly free: readonly string[];
  readonly wrap?: WrapLines;
  readonly tape: Tape;
  readonly place: PlaceIn<[]>;
}

export function linesOf(asked: LinesAsked): GownLines {
  const { name, round, train, point, waistSeam } = asked;
  const names = round === 'ring' ? [...asked.names, asked.names[0]!] : asked.names;
  const tops = asked.gores.map((gore) => topOf(asked, gore));
  const gores = asked.gores.map((gore, index) => goreOf(asked, gore, index, tops));
  const worn = wornLengths(asked.tape);
  const own = train === undefined ? undefined : trainOf(train, names);
  const stations = asked.names.map((station, i) =>
    stationOf({ ...asked, built: gores, train: own, trainAsked: train }, worn, station, i),
  );
  const pointedAt = point === undefined ? -1 : names.indexOf(point);
  return {
    name,
    round,
    gores,
    stations: round === 'ring' ? [...stations, stations[0]!] : stations,
    ...(pointedAt >= 0 ? { pointedAt } : {}),
    lengths: lengthRule(asked.lengths, worn.offFloor),
    ...(own === undefined ? {} : { train: own }),
    waistSeam,
    ...(asked.wrap && { wrapped: wrapLines(asked.wrap) }),
  };
}

function wrapLines({ at, overlap, overlapAtHem }: WrapLines): WrapLines {
  return { at, overlap, overlapAtHem };
}

/** Her girths below the waist that the gores follow, their ease in them, from the waist down; mm. */
export interface FittedTo {
  readonly levels: readonly (GirthLevel & { readonly front?: number })[];
  /** Where front and back girths part, where that is known. */
  readonly sideSeam?: string;
}

/** The names of the gown's stations, in order. */
export function namesOfStations({ gores, symmetry }: Pick<Spec, 'gores' | 'symmetry'>): string[] {
  return stationsOf(
    gores.map((gore) => gore.name),
    symmetry,
  );
}

interface StationAsked extends LinesAsked {
  readonly built: readonly Gore[];
  readonly trainAsked: TrainSpec | undefined;
}

function stationOf(
  asked: Omit<StationAsked, 'train'> & { readonly train: Train | undefined },
  worn: ReturnType<typeof wornLengths>,
  name: string,
  i: number,
): Station {
  const { lengths, train, turnings } = asked;
  const [given, asWorn, toFloor] = [lengths.at[name], worn.at[name], worn.toFloor?.[name]];
  const onFloor = train?.full === i ? asked.trainAsked?.onFloor : undefined;
  return {
    name,
    seams: seamsAt(asked.round, asked.built, i),
    ...(asked.free.includes(name) ? { free: true } : {}),
    drop: asked.drops[name] ?? 0,
    ...(asWorn === undefined ? {} : { length: asWorn - (lengths.measured === 'cut' ? turnings : 0), asWorn }),
    ...(given === undefined ? {} : { given }),
    ...(toFloor === undefined ? {} : { toFloor }),
    inTrain: train !== undefined && i > train.begins && i < (train.ends ?? asked.names.length),
    ...(onFloor === undefined ? {} : { onFloor }),
    place: (...path) => asked.place('lengths', 'at', name, ...path),
  };
}

/** Seams of the whole skirt at a station: none on a fold. */
export function seamsAt(round: Round, gores: readonly Gore[], station: number): 0 | 1 | 2 {
  // All the way round a fold at a centre lies between two gores.
  if (round !== 'mirrored')
    return gores[station]?.fold === 'front' || gores[station - 1]?.fold === 'back' ? 0 : 1;
  if (station === 0) return gores[0]!.fold === 'front' ? 0 : 1;
  if (station === gores.length) return gores[gores.length - 1]!.fold === 'back' ? 0 : 1;
  return 2;
}

/** Which side of a gore lies on the fold; one gore alone is folded at the centre front. */
function foldOf({ onFold }: GoreSpec, index: number): 'front' | 'back' | undefined {
  if (!onFold) return undefined;
  return index === 0 ? 'front' : 'back';
}

function lengthRule({ measured }: LengthsSpec, offFloor: number | undefined): LengthRule {
  return measured === 'to-floor'
    ? { measured: 'to-floor', offFloor: offFloor ?? 0 }
    : { measured: 'finished' };
}

function trainOf({ begins, full, ends, onFloor, shape }: TrainSpec, names: readonly string[]): Train {
  const last = names.length - 1;
  return {
    begins: names.indexOf(begins),
    full: full === undefined ? last : names.indexOf(full),
    ...(ends === undefined ? {} : { ends: ends === names[last] ? last : names.indexOf(ends) }),
    onFloor: onFloor ?? 0,
    shape,
  };
}

/** On a ring, gores whose middle lies in the second half of the waist are on the wearer's right. */
function sideOf(round: Round, index: number, tops: readonly number[]): Gore['side'] {
  if (round === 'mirrored') return undefined;
  const all = tops.reduce((sum, top) => sum + top, 0);
  const before = tops.slice(0, index).reduce((sum, top) => sum + top, 0);
  return before + tops[index]! / 2 > (all / 2) * (1 + 1e-9) ? 'right' : 'left';
}

function goreOf(asked: LinesAsked, gore: GoreSpec, index: number, tops: readonly number[]): Gore {
  const fold = foldOf(gore, index);
  const side = sideOf(asked.round, index, tops);
  const panel = panelOf(asked.panels, gore);
  const top = tops[index]!;
  const { round } = asked;
  const { name, fullness, notes } = gore;
  return {
    name,
    ...(fold === undefined ? {} : { fold }),
    ...(side === undefined ? {} : { side }),
    top,
    ...(panel === undefined ? {} : { panel }),
    width: widthRuleOf(asked, gore, index, tops),
    ...fullnessOf(
      fullness,
      (asked.darts ?? [])
        .filter((dart) => dart.gore === name)
        .map((dart) => ({
          ...dart,
          towards: dart.towards ?? nearerCentre(round, dart, { index, side, tops }),
        })),
      top,
    ),
    grain: grainOf(gore, fold, side),
    roughCut: asked.roughCut[name] ?? 0,
    ...(notes === undefined ? {} : { notes }),
    place: (...path) => asked.place('gores', index, ...path),
  };
}

/** A dart is folded towards the centre that it lies nearer to (common practice), as its gore lies round her. */
function nearerCentre(
  round: Round,
  { at }: Pick<DartSpec, 'at'>,
  { index, side, tops }: { index: number; side: Gore['side']; tops: readonly number[] },
): 'front' | 'back' {
  const whole = tops.reduce((sum, top) => sum + top, 0);
  const before = tops.slice(0, index).reduce((sum, top) => sum + top, 0);
  const way = before + (side === 'right' ? 1 - at : at) * tops[index]!;
  const half = round === 'mirrored' ? whole : whole / 2;
  return Math.min(way, 2 * half - way) < half / 2 ? 'front' : 'back';
}

/** Darts are cloth at the waist that is sewn away, and gone at their points. */
function fullnessOf(
  own: GoreSpec['fullness'],
  darts: readonly (DartSpec & Pick<Dart, 'towards'>)[],
  top: number,
): Pick<Gore, 'fullness'> {
  if (own !== undefined) return { fullness: own };
  if (darts.length === 0) return {};
  const taken = darts.reduce((sum, { takesIn }) => sum + takesIn, 0);
  return {
    fullness: {
      ratio: (top + taken) / top,
      where: 'waist',
      by: 'darts',
      darts: darts.map(({ name, at, takesIn, length, towards }) => ({ name, at, takesIn, length, towards })),
    },
  };
}

/** The bodice edge that a gore's top meets; of the half, on a fold. */
function panelOf(panels: LinesAsked['panels'], { name, onFold }: GoreSpec): number | undefined {
  const whole = panels[name];
  return whole === undefined || !onFold ? whole : whole / 2;
}

/** A gore's sewn top, mm; of its half on a fold. */
export function topOf({ panels }: Pick<LinesAsked, 'panels'>, gore: GoreSpec): number {
  const top = (gore.onFold ? gore.halfTop : gore.top) ?? panelOf(panels, gore);
  if (top === undefined) throw new Error(`gore ${gore.name} has no top`);
  return top;
}

function widthRuleOf(asked: LinesAsked, gore: GoreSpec, index: number, tops: readonly number[]): WidthRule {
  const top = tops[index]!;
  const flare = gore.onFold ? gore.halfFlare : gore.flare;
  if (flare !== undefined)
    return { kind: 'flare', angle: typeof flare === 'number' ? flare : flare[0] + flare[1] };
  const { sweep, petticoat, fitted } = asked;
  const share = top / asked.waistSeam;
  if (fitted !== undefined && sweep !== undefined)
    return { kind: 'girths', levels: fittedLevels(asked, fitted, tops, index, sweep) };
  const hem = (gore.onFold ? gore.halfHem : gore.hem) ?? (sweep === undefined ? undefined : sweep * share);
  if (hem !== undefined) return { kind: 'hem', width: hem, at: asked.lengths.hemWidthAt ?? 0 };
  if (petticoat === undefined) throw new Error(`gore ${gore.name} has no width below its top`);
  const levels = slantLevels(petticoat).filter((level) => level.down > 0);
  const shareAt = (level: number): number =>
    typeof gore.share === 'object' ? (gore.share[level] ?? share) : (gore.share ?? share);
  return {
    kind: 'girths',
    levels: levels.map(({ down, girth }, i) => ({ down, width: girth * shareAt(i) })),
  };
}

/** Of each girth a gore has the part that its top has of the waist: of the front's where the front is known, or of the back's. */
function fittedLevels(
  asked: LinesAsked,
  { levels, sideSeam }: FittedTo,
  tops: readonly number[],
  index: number,
  sweep: number,
): WidthLevel[] {
  const whole = tops.reduce((sum, top) => sum + top, 0);
  const side = sideSeam === undefined ? -1 : asked.names.indexOf(sideSeam);
  const isFront = index < side;
  const part = tops.slice(isFront ? 0 : side, isFront ? side : undefined).reduce((sum, top) => sum + top, 0);
  const own = tops[index]!;
  const halves = asked.round === 'mirrored' ? 2 : 1;
  const widthOf = ({ girth, front }: FittedTo['levels'][number]): number =>
    side <= 0 || front === undefined
      ? (girth / halves) * (own / whole)
      : ((isFront ? front : girth - front) / halves) * (own / part);
  const hem = { down: asked.lengths.hemWidthAt ?? 0, width: (sweep / halves) * (own / whole) };
  return [...levels.map((level) => ({ down: level.down, width: widthOf(level) })), hem];
}

/** The ring runs from the front edge to the back edge of a gore on the wearer's left, and the other way on her right. */
function grainOf(gore: GoreSpec, fold: Gore['fold'], side: Gore['side']): Gore['grain'] {
  if (fold !== undefined) return { frontPart: fold === 'front' ? 0 : 1 };
  const [first, second] = side === 'right' ? ['back-edge', 'front-edge'] : ['front-edge', 'back-edge'];
  if (typeof gore.flare === 'object') {
    const [front, back] = gore.flare;
    return side === 'right' ? { front: back, back: front } : { front, back };
  }
  return { frontPart: gore.grain === first ? 0 : gore.grain === second ? 1 : 0.5 };
}
