import type { GoreFacts, LayerFacts } from '../facts.ts';
import { type Gore, placedIn, sectorOf } from '../measure/gore.ts';
import type { MeasuredGown } from '../measure/gown.ts';
import { areaOf, samplesOf } from '../measure/path.ts';
import { cross, dot, minus, mix, type Point, unitOf } from '../measure/segment.ts';

/** Lengths and widths keep to their closed forms within this, mm. */
const MEASURE = 0.1;
/** Angles of a gore and of its grain, degrees: 0.1 mm over half a metre. */
const FLARE = 0.012;
/** The bodice's edge against all tops, mm: a specialist's tolerance (design, section 3). */
const WAIST = 1.5;

/** Tops, lengths at the stations, widths, flares, grain and area are what the spec says. */
export function measureUntruths(gown: MeasuredGown): string[] {
  const { facts } = gown;
  return gown.layers.flatMap(({ layer, gores }) => {
    const found = gores.flatMap((gore, i) => {
      if (gore === undefined || layer.acrossFactor !== 1 || layer.alongFactor !== 1) return [];
      const where = `${layer.name}, ${facts.gores[i]!.name}`;
      const [front, back] = [facts.stations[i]!, facts.stations[i + 1]!];
      return [
        ...differs(
          `${where}: top`,
          gore.waist.length,
          facts.gores[i]!.top * layer.fullness(facts.gores[i]!.name).top,
        ),
        ...differs(`${where}: length at ${front.name}`, gore.front.length, less(front.length, layer.shorter)),
        ...differs(`${where}: length at ${back.name}`, gore.back.length, less(back.length, layer.shorter)),
        ...(facts.gores[i]!.shaped ? [] : sectorUntruths(where, gore, facts, i, layer)),
      ];
    });
    if (layer.acrossFactor !== 1 || gores.includes(undefined)) return found;
    const sewn = gores.map((gore, i) => gore!.waist.length / layer.fullness(facts.gores[i]!.name).top);
    const around = (facts.closed ? 1 : 2) * sewn.reduce((sum, top) => sum + top, 0);
    return [...found, ...differs(`${layer.name}: waist all round`, around, facts.waistSeam, WAIST)];
  });
}

function sectorUntruths(
  where: string,
  gore: Gore,
  facts: MeasuredGown['facts'],
  i: number,
  layer: LayerFacts,
): string[] {
  const full = layer.fullness(facts.gores[i]!.name).width;
  const [front, back] = [facts.stations[i]!.drop, facts.stations[i + 1]!.drop];
  return [
    ...widthUntruths(where, gore, fuller(facts.gores[i]!, full), front, back, facts.hemWidthAt),
    ...grainUntruths(where, gore, facts.gores[i]!, layer.threadTurned),
    ...areaUntruths(where, gore, front),
  ];
}

/** A gore as full as its layer is gathered down to the hem. */
function fuller(asked: GoreFacts, by: number): GoreFacts {
  const { hem, flare } = asked;
  return {
    ...asked,
    ...(hem === undefined ? {} : { hem: hem * by }),
    ...(flare === undefined ? {} : { flare: flare * by }),
  };
}

function widthUntruths(
  where: string,
  gore: Gore,
  asked: GoreFacts,
  frontDrop: number,
  backDrop: number,
  hemWidthAt: number | undefined,
): string[] {
  const sector = sectorOf(gore, frontDrop, backDrop);
  const found = differs(`${where}: level of the two seams`, sector.levelError(0), 0);
  if (asked.flare !== undefined) {
    found.push(...differs(`${where}: flare in degrees`, degrees(sector.flare), degrees(asked.flare), FLARE));
  }
  if (asked.hem !== undefined && asked.flare === undefined && hemWidthAt !== undefined) {
    found.push(...differs(`${where}: width at ${hemWidthAt}`, sector.widthAt(hemWidthAt), asked.hem));
  }
  return found;
}

/** On the straight grain the thread halves a gore, or runs by an edge, or lies between its two flares; a fold is on it. */
function grainUntruths(where: string, gore: Gore, asked: GoreFacts, turned: number): string[] {
  const lines = gore.piece.grain.flatMap((path) => path.segments);
  if (lines.length === 0) return [`${where}: no grain line`];
  const longest = lines.reduce((best, line) => (line.length > best.length ? line : best));
  const raw = unitOf(minus(longest.to, longest.from));
  const { frontDown, backDown, flare } = sectorOf(gore, 0, 0);
  const down = dot(raw, mix(frontDown, backDown, 0.5)) < 0 ? { x: -raw.x, y: -raw.y } : raw;
  const ahead = angle(frontDown, down);
  const share = grainShare(asked);
  return [
    ...differs(
      `${where}: degrees from front edge to grain`,
      Math.abs(degrees(ahead)),
      Math.abs(turned - degrees(flare) * share),
      FLARE,
    ),
    ...differs(
      `${where}: degrees from grain to back edge`,
      Math.abs(degrees(angle(down, backDown))),
      Math.abs(turned + degrees(flare) * (1 - share)),
      FLARE,
    ),
  ];
}

/** Part of the flare that lies before the grain as the piece is drawn: on the wearer's right that is its back part. */
function grainShare(asked: GoreFacts): number {
  const share = shareInFront(asked);
  return asked.onRight ? 1 - share : share;
}

function shareInFront(asked: GoreFacts): number {
  if (asked.fold === 'front' || asked.grain === 'front-edge') return 0;
  if (asked.fold === 'back' || asked.grain === 'back-edge') return 1;
  const flares = asked.flares;
  return flares === undefined || flares[0] + flares[1] === 0 ? 0.5 : flares[0] / (flares[0] + flares[1]);
}

/** The outline's area by Green's theorem against the integral of width over the slant, taken across the grain. */
function areaUntruths(where: string, gore: Gore, frontDrop: number): string[] {
  const flare = sectorOf(gore, 0, 0).flare;
  if (Math.abs(flare) < 1e-4) return [];
  const half = (edge: 'waist' | 'hem') => {
    const points = samplesOf(gore[edge], 1).map((sample) => sample.point);
    const placed = placedIn(gore, frontDrop, points);
    const radius = topRadius(gore);
    let sum = 0;
    for (let i = 1; i < placed.length; i++) {
      const [a, b] = [placed[i - 1]!, placed[i]!];
      const middle = radius + Math.sign(flare) * ((a.slant + b.slant) / 2 - frontDrop);
      sum += (middle * middle * Math.abs(flare) * (b.share - a.share)) / 2;
    }
    return sum;
  };
  const integral = Math.abs(half('hem') - half('waist'));
  return differs(
    `${where}: area in cm²`,
    areaOf(gore.outline) / 100,
    integral / 100,
    1e-4 * (integral / 100) + 0.01,
  );
}

function topRadius(gore: Gore): number {
  const { frontDown, backDown } = sectorOf(gore, 0, 0);
  const way = cross(minus(gore.back.from, gore.front.from), backDown) / cross(frontDown, backDown);
  return Math.abs(way);
}

export function differs(
  what: string,
  measured: number,
  expected: number | undefined,
  tolerance = MEASURE,
): string[] {
  if (expected === undefined || Math.abs(measured - expected) <= tolerance) return [];
  return [`${what}: ${measured.toFixed(4)}, expected ${expected.toFixed(4)} ± ${tolerance}`];
}

const less = (length: number | undefined, by: number) => (length === undefined ? undefined : length - by);
const degrees = (radians: number) => (radians * 180) / Math.PI;
const angle = (a: Point, b: Point) => Math.atan2(Math.abs(cross(a, b)), dot(a, b));
