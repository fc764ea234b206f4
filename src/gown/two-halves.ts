import type { Gown } from './gown.ts';
import type { Gore, GownLines } from './lines.ts';
import { stationNamed, stationsNamed } from './lines.ts';
import type { Closure, Edging } from './sections.ts';
import type { Side, Station } from './station.ts';

/**
 * A mirrored gown whose sides came to differ: the left half from the centre front to the centre back, then the right
 * half back again. Every station off the centres is one of two now, and keeps its name.
 */
export function twoHalves(left: GownLines, right: GownLines): GownLines {
  const last = 2 * left.gores.length;
  const { train } = left;
  return {
    ...left,
    round: 'two-halves',
    gores: [
      ...left.gores.map((gore): Gore => ({ ...gore, side: 'left' })),
      ...[...right.gores].reverse().map(mirroredGore),
    ],
    stations: [
      ...left.stations.map((station) => sided(station, 'left')),
      ...[...right.stations]
        .reverse()
        .slice(1)
        .map((station) => sided(station, 'right')),
    ],
    ...(train === undefined ? {} : { train: { ...train, ends: last - train.begins } }),
  };
}

function sided(station: Station, side: Side): Station {
  return station.seams === 2 ? { ...station, seams: 1, side } : station;
}

function mirroredGore(gore: Gore): Gore {
  const { grain, fold } = gore;
  return {
    ...gore,
    side: 'right',
    ...(fold === undefined ? {} : { fold: fold === 'front' ? 'back' : 'front' }),
    grain:
      'frontPart' in grain ? { frontPart: 1 - grain.frontPart } : { front: grain.back, back: grain.front },
  };
}

/**
 * The gown on other lines: what stood at a station stands at the stations of that name, a closure and the join of an
 * edging on their own side.
 */
export function onLines(gown: Gown, lines: GownLines): Gown {
  const { closure, edging, bustle } = gown;
  const moved = closure && { ...closure, station: stationNamed(lines, closure.station.name, closure.side)! };
  return {
    ...gown,
    ...lines,
    ...(moved && { closure: moved }),
    ...(edging && { edging: { ...edging, start: startOn(lines, edging, moved) } }),
    ...(bustle && {
      bustle: {
        ...bustle,
        points: bustle.points.flatMap((point) =>
          'gore' in point.at
            ? [point]
            : stationsNamed(lines, point.at.name).map((station) => ({ ...point, at: station })),
        ),
      },
    }),
    godets: gown.godets.map((godet) => ({ ...godet, stations: stationsNamed(lines, godet.seam) })),
    trims: gown.trims.map((trim) => ({ ...trim, stations: stationsNamed(lines, trim.along) })),
  };
}

function startOn(lines: GownLines, { start }: Edging, closure: Closure | undefined): Station {
  return stationNamed(lines, start.name, closure?.side)!;
}
