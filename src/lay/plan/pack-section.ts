import { type Kept, keptOrWorked, NOTHING_KEPT } from '../../kept/kept.ts';
import type { Disturbance } from '../pack/disturb.ts';
import { keptPacking, packingToKeep } from '../pack/kept-packing.ts';
import type { Patience, SearchEffort } from '../pack/layout.ts';
import { NoFitTable } from '../pack/no-fit-table.ts';
import { packStrip } from '../pack/pack-strip.ts';
import type { StripPacking } from '../pack/strip-problem.ts';
import type { LayItem, LayShape } from './lay-items.ts';
import type { ClothFacts } from './lay-plan.ts';
import { laidWidth, type SectionStrip, SHARED_LINE, sectionStrip, shapesOf } from './section-strip.ts';
import type { Section } from './ways.ts';

/** A section with its pieces placed. */
export interface PackedSection {
  readonly section: Section;
  readonly strip: SectionStrip;
  readonly packing: StripPacking;
  /** Length of unfolded cloth, mm: twice the lay's where two ends lie on each other. */
  readonly length: number;
}

/** What a section is packed for: to be cut so, or only to compare ways. */
export type SectionUse = 'cutting' | 'comparing';

export interface PackingEffort {
  readonly seed: number;
  /** Work for a strip of so many pieces, of so many layers. */
  readonly work: Readonly<Record<SectionUse, (pieces: number, layers: number) => number>>;
  readonly stopped: () => boolean;
  /** Strips that were packed before. */
  readonly kept?: Kept;
}

/** Few pieces settle or jam within this many passes; waiting longer is better spent on another start. */
const PATIENCE: Patience = { idlePasses: 15, idleRounds: 1 };

/**
 * Few tries a move: on strips of few pieces more moves are worth more than better ones. The lays of five gowns of 9 to 12
 * pieces with three seeds, all with the same work, came to this share of the shortest lays known (2026-11-28): with 20
 * tries touching, 10 anywhere, 3 nearby and 2 improved 98.7 %, with half of each 99.1 %, with 6, 3, 1 and 1 98.5 %.
 */
const SEARCH: SearchEffort = { anywhere: 5, touching: 10, nearby: 2, improved: 1 };

/**
 * A jammed lay of few pieces comes back to the same near misses again and again: part of the time all of it is laid anew. With
 * two like pieces that mirror each other exchanged as well 99.05 % for 99.1 %, counted as at `STARTS`.
 */
const DISTURBANCES: readonly Disturbance[] = ['scatter', 'exchange-far', 'move'];

/**
 * Starts of a lay that may be cut. With one, two seeds gave Lantern's organza 3840 and 3791 mm and its lining 3275 and 3289;
 * with three, as much work in all, 3791 both and 3271 and 3272 (2026-11-28). The ten hardest quick lays of gowns of 8 to 12
 * pieces, eight seeds each, as shares of the shortest known, a mean uncertain by 0.1: three starts 98.95 %, six 98.8 %, six
 * among which all rearranging is divided 98.9 %. More starts of as much work in all do not help: only more work does.
 */
const STARTS = 3;

/**
 * Share of the work that rearranges: few pieces are soon as tight as they get. With three quarters the ten hardest lays came to
 * 98.95 % of the shortest known, with this to 99.2 and, the descent counting a little less work, 99.1 %, counted as at `STARTS`.
 */
const REARRANGING = 0.9;

/**
 * Cells of a no-fit polygon: few, as a gown's regions are used too little to repay a fine grid. Lantern's three lays, quick, took
 * 4.03 s of the processor with 400, 4.11 with 200, 4.19 with 800 and 4.37 with 1600, the better of two (2026-11-28).
 */
const CELLS = 400;

/** Packs the sections of one lay; what is asked twice is packed once. */
export class SectionPacker {
  private readonly facts: ClothFacts;
  private readonly effort: PackingEffort;
  private readonly shapes: readonly LayShape[];
  private readonly table: NoFitTable;
  private readonly packed = new Map<string, PackedSection>();
  private readonly items: readonly LayItem[];

  constructor(items: readonly LayItem[], facts: ClothFacts, effort: PackingEffort) {
    this.items = items;
    this.facts = facts;
    this.effort = effort;
    this.shapes = shapesOf(items);
    this.table = new NoFitTable(
      this.shapes.map(({ working }) => working),
      -SHARED_LINE,
      CELLS,
    );
  }

  /** A piece of the section that the cloth is too narrow for, and the width that it takes. */
  tooWide({ fold, items }: Section): { readonly item: LayItem; readonly width: number } | undefined {
    const width = laidWidth(this.facts, fold) + SHARED_LINE;
    for (const item of items) {
      const own = fold === 'lengthwise' ? (item.half ?? item.whole) : item.whole;
      if (own.width > width) return { item, width: own.width };
    }
    return undefined;
  }

  pack(section: Section, use: SectionUse, onBetter?: (length: number) => void): PackedSection {
    const items = section.items.map((item) => this.items.indexOf(item));
    const key = `${use} ${section.fold} ${items.join(' ')}`;
    const known = this.packed.get(key);
    if (known !== undefined) return known;
    const strip = sectionStrip(section.items, section.fold, this.facts, this.shapes);
    const packed = this.finished(section, strip, this.search(strip, undefined, use, onBetter));
    this.packed.set(key, packed);
    return packed;
  }

  /**
   * Packs a section to be cut from a packing that is known to fit: never longer than it. Of several layers their lays end
   * to end are such a one: to start from them alone gave nine lays of 14 to 18 pieces 99.6 % of the thorough ones on average,
   * from one or three random layouts as well 99.3 and 99.2 % (2026-11-28).
   */
  better(
    section: Section,
    startOf: (strip: SectionStrip) => StripPacking,
    onBetter?: (length: number) => void,
  ): PackedSection {
    const strip = sectionStrip(section.items, section.fold, this.facts, this.shapes);
    return this.finished(section, strip, this.search(strip, startOf(strip), 'cutting', onBetter));
  }

  private search(
    { problem, pieces }: SectionStrip,
    start: StripPacking | undefined,
    use: SectionUse,
    onBetter: ((length: number) => void) | undefined,
  ): StripPacking {
    const limit = this.effort.work[use](pieces.length, new Set(pieces.map(({ item }) => item.layer)).size);
    const settings = {
      seed: this.effort.seed,
      patience: PATIENCE,
      search: SEARCH,
      disturbances: DISTURBANCES,
      rearranging: REARRANGING,
      starts: use === 'comparing' ? 1 : STARTS,
    };
    let cutShort = false;
    // Asked only while there is work left: a search that has done all of its own was not cut short.
    const spent = (done: number): number => {
      const stops = done < limit && this.effort.stopped();
      cutShort ||= stops;
      return stops ? 1 : done / limit;
    };
    const work = () =>
      packStrip(problem, {
        ...settings,
        spent,
        table: this.table,
        ...(onBetter === undefined ? {} : { onBetter: ({ length }) => onBetter(length) }),
        ...(start === undefined ? {} : { start }),
      });
    return keptOrWorked(this.effort.kept ?? NOTHING_KEPT, {
      what: 'strip',
      from: [problem, settings, limit, CELLS, start && packingToKeep(problem, start)],
      read: (kept) => keptPacking(problem, kept),
      write: (packing) => (cutShort ? undefined : packingToKeep(problem, packing)),
      work,
    });
  }

  private finished(section: Section, strip: SectionStrip, packing: StripPacking): PackedSection {
    const laid = wholeRepeats(packing.length, this.facts.repeatDown);
    return { section, strip, packing, length: section.fold === 'crosswise' ? 2 * laid : laid };
  }
}

/** A pattern is bought in whole repeats, so that the next piece begins on it. */
function wholeRepeats(length: number, repeat: number | undefined): number {
  return repeat === undefined ? length : Math.ceil(length / repeat - 1e-6) * repeat;
}
