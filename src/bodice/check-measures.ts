import type { BodiceFault, BodicePlace } from './bodice-fault.ts';
import { type BodiceMeasures, bodiceStations, CENTRE_BACK, CENTRE_FRONT } from './bodice-measures.ts';

/** What contradicts itself before anything is drafted. */
export function measureFaults(measures: BodiceMeasures): BodiceFault[] {
  return [...panelFaults(measures), ...levelFaults(measures), ...stationFaults(measures)];
}

const DRAFT: BodicePlace = ['bodice', 'draft'];

function panelFaults({ panels }: BodiceMeasures): BodiceFault[] {
  if (panels.length === 0) return [{ code: 'no-panels', place: [...DRAFT, 'panels'] }];
  return panels.flatMap(({ name, onFold }, i): BodiceFault[] => {
    const place = [...DRAFT, 'panels', i];
    const isTwice = panels.findIndex((other) => other.name === name) < i;
    const isInside = i > 0 && i < panels.length - 1;
    return [
      ...(isTwice ? [{ code: 'panel-twice', place, panel: name } as const] : []),
      ...(onFold && isInside ? [{ code: 'fold-not-at-centre', place, panel: name } as const] : []),
    ];
  });
}

/** Levels whose names say on which side of the waist they lie. */
const ABOVE = ['high-bust', 'bust', 'underbust'];
const BELOW = ['high-hip', 'hip'];

function levelFaults({ girths, panels, sideSeam, reduce, lacings }: BodiceMeasures): BodiceFault[] {
  const faults: BodiceFault[] = [];
  const names = girths.map(({ at }) => at);
  const body = (i: number): BodicePlace => ['body', 'girths', i];
  for (const [i, { at, above, girth, front }] of girths.entries()) {
    const other = girths.slice(0, i).find((one) => one.at === at || one.above === above);
    if (other !== undefined)
      faults.push({ code: 'level-twice', place: body(i), level: at, other: other.at, above });
    const wants = ABOVE.includes(at) ? 'above' : BELOW.includes(at) ? 'below' : undefined;
    if ((wants === 'above' && !(above > 0)) || (wants === 'below' && !(above < 0)))
      faults.push({ code: 'level-out-of-place', place: body(i), level: at, wants, of: 'waist' });
    if (front !== undefined && !(front < girth))
      faults.push({ code: 'front-exceeds-girth', place: body(i), level: at, front, girth });
    if (front !== undefined && sideSeam === undefined)
      faults.push({ code: 'front-without-side-seam', place: body(i), level: at });
  }
  faults.push(...outOfOrder(girths, 'bust', 'underbust'), ...outOfOrder(girths, 'high-bust', 'bust'));
  faults.push(...outOfOrder(girths, 'high-hip', 'hip'));
  if (!girths.some(({ above }) => above === 0))
    faults.push({ code: 'waist-missing', place: ['body', 'girths'] });
  else if (!girths.some(({ above }) => above > 0))
    faults.push({ code: 'nothing-above-waist', place: ['body', 'girths'] });
  const named = [
    ...Object.keys(reduce).map((level) => ({ level, place: [...DRAFT, 'reduce', level] })),
    ...panels.flatMap(({ widths }, i) =>
      Object.keys(widths).map((level) => ({ level, place: [...DRAFT, 'panels', i, 'widths', level] })),
    ),
    ...lacings.flatMap(({ gap }) =>
      typeof gap === 'number'
        ? []
        : Object.keys(gap).map((level) => ({ level, place: ['bodice', 'closing', 'gap', level] })),
    ),
  ];
  for (const { level, place } of named)
    if (!names.includes(level)) faults.push({ code: 'unknown-level', place, level, levels: names });
  return faults;
}

function outOfOrder(girths: BodiceMeasures['girths'], upper: string, lower: string): BodiceFault[] {
  const [a, b] = [upper, lower].map((name) => girths.findIndex(({ at }) => at === name));
  if (a! < 0 || b! < 0 || girths[a!]!.above > girths[b!]!.above) return [];
  return [
    { code: 'level-out-of-place', place: ['body', 'girths', a!], level: upper, wants: 'above', of: lower },
  ];
}

function stationFaults(measures: BodiceMeasures): BodiceFault[] {
  const { panels, sideSeam, upperEdge, lowerEdge, lacings } = measures;
  const stations = bodiceStations(panels);
  const inside = stations.slice(1, -1);
  const draft = [...DRAFT];
  const edges = [
    { edge: upperEdge, place: [...draft, 'upper-edge'], point: [...draft, 'upper-point'] },
    { edge: lowerEdge, place: ['bodice', 'drop-below-waist'], point: ['bodice', 'point'] },
  ];
  const named = edges.flatMap(({ edge, place, point }) => [
    ...Object.keys(edge.above).map((station) => ({ station, place: [...place, station] })),
    ...edge.points.map((station) => ({ station, place: point })),
  ]);
  const all = [...named, ...lacings.map(({ at }) => ({ station: at, place: ['bodice', 'closing', 'at'] }))];
  const unknown = all
    .filter(({ station }) => !stations.includes(station))
    .map(({ station, place }): BodiceFault => ({ code: 'unknown-bodice-station', place, station, stations }));
  if (sideSeam !== undefined && !inside.includes(sideSeam))
    unknown.push({
      code: 'unknown-bodice-station',
      place: [...draft, 'side-seam'],
      station: sideSeam,
      stations: inside,
    });
  const missing = [CENTRE_FRONT, CENTRE_BACK]
    .filter((station) => upperEdge.above[station] === undefined)
    .map((station): BodiceFault => {
      return { code: 'edge-height-missing', place: [...draft, 'upper-edge'], edge: 'upper-edge', station };
    });
  const pointless = edges.flatMap(({ edge, point }) =>
    edge.points
      .filter((station) => stations.includes(station) && edge.above[station] === undefined)
      .map((station): BodiceFault => ({ code: 'point-without-height', place: point, station })),
  );
  const folded = lacings
    .filter(({ at }) => isFold(panels, at))
    .map(({ at }): BodiceFault => ({ code: 'laced-fold', place: ['bodice', 'closing', 'at'], station: at }));
  return [...unknown, ...missing, ...pointless, ...folded];
}

function isFold(panels: BodiceMeasures['panels'], station: string): boolean {
  if (station === CENTRE_FRONT) return panels[0]?.onFold === true;
  return station === CENTRE_BACK && panels.length > 1 && panels[panels.length - 1]!.onFold;
}
