import type { LayerDraft } from '../draft/draft-layers.ts';
import { upright } from '../draft/grain-line.ts';
import type { Part } from '../draft/part.ts';
import type { Piece } from '../draft/piece.ts';
import { sectorFrame } from '../draft/sector-frame.ts';
import { wrappedPieces } from '../draft/wrapped.ts';
import type { Line } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { reversedRun } from '../geometry/split.ts';
import type { Gown } from '../gown/gown.ts';
import { hasGore, type Layer } from '../gown/layer.ts';
import { type GownLines, goresOnce, stationsOnce } from '../gown/lines.ts';
import type { WaistFinish } from '../gown/waist.ts';
import { notchesOfFacing } from './facing-notches.ts';
import { cutFacings, facingsOfWaist, type TooDeep } from './facings-of-hem.ts';
import { joinedFacings } from './joined-facings.ts';

type GownWithWaist = GownLines & Pick<Gown, 'waist' | 'closure'>;

/** What finishes the waist of a skirt without a bodice; a stay is bought. @param drafts of all layers, from the inside out */
export function waistParts(gown: GownWithWaist, drafts: readonly LayerDraft[]): readonly Part[] | TooDeep {
  const { waist } = gown;
  if (waist?.layer === undefined) return [];
  if (waist.finish === 'band') return [bandPart(gown, waist, waist.layer)];
  const outermost = drafts[drafts.length - 1]!;
  const { draft } = outermost;
  const facings = facingsOfWaist({ ...draft, pieces: wrappedPieces(draft) }, waist.width);
  if ('gore' in facings) return facings;
  const own = cutFacings(draft, facings).filter(({ gore }) => hasGore(outermost.layer, { name: gore }));
  return joinedFacings(own, waist.layer, gown.closure === undefined ? [] : [gown.closure.station.name]).map(
    ({ piece, seams }): Part => ({
      ...partOf(waist, waist.layer!),
      of: { kind: 'waist-facing', depth: waist.width },
      piece: { ...piece, layers: [waist.layer!.name] },
      notches: notchesOfFacing(piece),
      marks: seams,
    }),
  );
}

function partOf({ place }: WaistFinish, layer: Layer) {
  return {
    layer,
    allowances: {},
    notches: new Map<string, readonly number[]>(),
    quartered: false,
    roughCut: 0,
    place: () => place(),
  };
}

/** Edges of a waistband: `waist` is sewn to the skirt. */
const [END, OVERLAP_END, INSIDE] = ['end', 'overlap-end', 'inside-edge'];

function bandPart(gown: GownWithWaist, waist: WaistFinish, layer: Layer): Part {
  const { width, upper } = waist;
  const sewn = gown.waistSeam;
  const overlap = gown.wrapped?.overlap ?? waist.overlap;
  const own = { ...waist, overlap };
  const piece = upper === undefined ? straightBand(own, sewn) : shapedBand(own, sewn, upper);
  const places = seamPlaces(gown);
  const ends = gown.wrapped === undefined && overlap > 0 ? [sewn] : [];
  return {
    ...partOf(waist, layer),
    of: { kind: 'waistband', width, sewn, overlap, shaped: upper !== undefined, places },
    piece: { ...piece, layers: [layer.name] },
    notches: new Map([['waist', [...places.map(({ at }) => at), ...ends]]]),
    lowerSewn: true,
    marks: upper === undefined ? [{ name: 'fold', curves: [foldLine(sewn + overlap)] }] : [],
  };
}

function foldLine(length: number): Line {
  return { kind: 'line', from: { x: 0, y: 0 }, to: { x: 0, y: length } };
}

/** Folded along its middle, its length along the thread: as long as the waist and its overlap, twice as wide as it is sewn. */
function straightBand({ width, overlap }: WaistFinish, sewn: number): Piece {
  const length = sewn + overlap;
  const frame = sectorFrame(2 * width, 0, 0);
  const edges: Edge[] = [
    { name: END!, curves: frame.levelAt(0) },
    { name: INSIDE!, curves: frame.sideFrom('back', 0, length) },
    { name: OVERLAP_END!, curves: reversedRun(frame.levelAt(length)) },
    { name: 'waist', curves: reversedRun(frame.sideFrom('front', 0, length)) },
  ];
  return {
    gore: 'waistband',
    part: 'waistband',
    layers: [],
    edges,
    frontEdge: 'waist',
    backEdge: INSIDE!,
    grain: upright(frame.pointAt(length / 2, 0.5), edges),
    cut: 'single',
    bySize: true,
  };
}

/** A sector of a ring, outside and inside alike: its lower edge is the waist, its upper one what it is to lie on. */
function shapedBand({ width, overlap }: WaistFinish, sewn: number, upper: number): Piece {
  const flare = (sewn - upper) / width;
  const frame = sectorFrame(upper + overlap, flare / 2, flare / 2);
  const edges: Edge[] = [
    { name: INSIDE!, curves: frame.levelAt(0) },
    { name: OVERLAP_END!, curves: frame.sideFrom('back', 0, width) },
    { name: 'waist', curves: reversedRun(frame.levelAt(width)) },
    { name: END!, curves: reversedRun(frame.sideFrom('front', 0, width)) },
  ];
  return {
    gore: 'waistband',
    part: 'waistband',
    layers: [],
    edges,
    frontEdge: END!,
    backEdge: OVERLAP_END!,
    grain: upright(frame.pointAt(width / 2, 0.5), edges),
    cut: 'single',
    copies: 2,
  };
}

/** Where the skirt's seams and centres meet the band, from the opening round to it again: mm from the band's end. */
function seamPlaces(gown: GownWithWaist): { readonly name: string; readonly at: number }[] {
  const round = stationsRound(gown);
  const opens = gown.wrapped?.at ?? gown.closure?.station.name ?? 'centre-back';
  const open = round.findIndex(({ name }) => name === opens);
  const start = round[Math.max(0, open)]!.at;
  const places = round
    .map(({ name, at }) => ({ name, at: (at - start + gown.waistSeam) % gown.waistSeam }))
    .filter(({ at }) => at > 1)
    .sort((a, b) => a.at - b.at);
  if (gown.wrapped === undefined) return places;
  // The line that both edges lie past is met twice, by half of the overlap from either end.
  const { at: name, overlap } = gown.wrapped;
  const moved = places.map((own) => ({ ...own, at: own.at + overlap / 2 }));
  return [{ name, at: overlap / 2 }, ...moved, { name, at: gown.waistSeam + overlap / 2 }];
}

/** Every station of the whole skirt, from the centre front round her left and back over her right. */
function stationsRound(gown: GownLines): { readonly name: string; readonly at: number }[] {
  const stations = stationsOnce(gown);
  let at = 0;
  const left = stations.map(({ name }, i) => {
    if (i > 0) at += (gown.round === 'mirrored' ? goresOnce(gown) : gown.gores)[i - 1]!.top;
    return { name, at };
  });
  if (gown.round !== 'mirrored') return left;
  const right = left.slice(1, -1).map((own) => ({ name: own.name, at: 2 * at - own.at }));
  return [...left, ...right.reverse()];
}
