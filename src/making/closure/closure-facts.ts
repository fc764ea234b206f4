import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Closure } from '../../gown/sections.ts';
import { isSame, type Station } from '../../gown/station.ts';
import type { Bench, Found } from '../findings.ts';
import * as problems from '../problems.ts';
import { type Entry, type Passage, passageOf, STOCK_ZIPS, type ZipToBuy, zipToBuy } from './closure.ts';

/** The closure as it is made. mm below the waist seam. */
export interface ClosureFacts {
  readonly kind: Closure['kind'];
  /** Its seam, on its side. */
  readonly station: Station;
  readonly at: string;
  /** The wearer's side, at a seam that there are two of. */
  readonly side: 'left' | 'right' | undefined;
  readonly starts: number;
  readonly opening: number | undefined;
  readonly stops: number | undefined;
  readonly entry: Entry | undefined;
  readonly passage: Passage | undefined;
  readonly zip: ZipToBuy | undefined;
  /** Layers that it is sewn through as one; the others stay free of it and are felled to it. */
  readonly takes: readonly string[];
  readonly felled: readonly string[];
  readonly beside: NonNullable<Closure['beside']>;
  readonly finish: Closure['finish'];
}

export function closureFacts(bench: Bench): Found<ClosureFacts | undefined> {
  const { gown, skirt, say } = bench;
  const { closure } = gown;
  if (closure === undefined) return { facts: undefined, findings: [] };
  const { opening } = closure;
  const at = closure.station.name;
  const seam = skirt.stations.find(({ station }) => isSame(station, closure.station));
  const passage = opening === undefined ? undefined : passageOf(skirt.waist, opening, closure);
  const layers = gown.layers.map((layer) => layer.name);
  const takes = gown.sewnAsOne?.closure ?? layers;
  const beside = closure.beside ?? (closure.kind === 'lacing' ? 'laced' : 'sewn');
  const facts: ClosureFacts = {
    kind: closure.kind,
    station: closure.station,
    at,
    side: closure.side,
    starts: closure.starts,
    opening,
    stops: opening === undefined ? undefined : closure.starts + opening,
    entry: closure.entry,
    passage,
    zip: closure.kind === 'zip' && opening !== undefined ? zipToBuy(opening) : undefined,
    takes,
    felled: layers.filter((layer) => !takes.includes(layer)),
    beside,
    finish: closure.finish,
  };
  const findings: Diagnostic[] = [];
  if (seam !== undefined && facts.stops !== undefined && facts.stops >= seam.finished) {
    findings.push(
      problems.openingLongerThanSeam(closure.place('opening'), say(facts.stops), at, say(seam.finished)),
    );
  }
  findings.push(...entryFindings(bench, facts));
  if (beside !== 'sewn' && closure.finish === undefined) {
    findings.push(problems.edgeUnfinished(closure.place(), beside));
  }
  return { facts, findings };
}

function entryFindings({ gown, skirt, say }: Bench, facts: ClosureFacts): Diagnostic[] {
  const place = gown.closure!.place('opening');
  if (facts.opening === undefined || facts.passage === undefined) {
    const girths = passageOf(skirt.waist, 0, gown.closure ?? {});
    return [problems.openingNotGiven(place, girths.needed === undefined ? undefined : say(girths.needed))];
  }
  const findings: Diagnostic[] = [];
  const { clear, against, passes, needed } = facts.passage;
  if (clear === false && needed !== undefined) {
    const closest = against.reduce((best, one) => (one.girth < best.girth ? one : best));
    const over = closest.entry === 'steps-in' ? 'hip' : 'shoulders';
    findings.push(
      problems.openingTooSmall(place, {
        passes: say(passes),
        girth: say(closest.girth),
        over,
        needed: say(needed),
      }),
    );
  }
  if (facts.kind === 'zip' && facts.zip === undefined) {
    findings.push(problems.noStockZip(place, say(facts.opening), say(STOCK_ZIPS[STOCK_ZIPS.length - 1]!)));
  }
  return findings;
}
