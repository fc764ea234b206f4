import type { KeptPlace } from './kept-places.ts';
import type { Margins } from './sheet-frame.ts';
import type { Scale, SheetOptions } from './sheet-options.ts';

/** What decides how a gown's pieces lie on sheets, apart from the gown: kept in the PDF so that it can be audited. */
export interface SheetSettings {
  /** As `paperNamed` reads it. */
  readonly paper: string;
  readonly margins: Margins;
  readonly lap: number;
  readonly scale: Scale;
  readonly endsOnly: boolean;
  readonly layersApart: boolean;
  /** Where pieces lay in an earlier version, whose sheets are used again. */
  readonly places?: readonly KeptPlace[];
  /** Only these; all when absent. */
  readonly gores?: readonly string[];
  readonly layers?: readonly string[];
}

/** The settings of a plan as one line of text. */
export function settingsText(
  options: SheetOptions,
  only: { readonly gores?: readonly string[]; readonly layers?: readonly string[] } = {},
): string {
  const { paper, margins, lap, scale, endsOnly = false, layersApart = false, places } = options;
  const { left, right, top, bottom } = margins;
  const settings: SheetSettings = {
    paper: paper.name,
    margins: { left, right, top, bottom },
    lap,
    scale: { across: scale.across, down: scale.down },
    endsOnly,
    layersApart,
    ...(places === undefined ? {} : { places }),
    ...(only.gores === undefined ? {} : { gores: only.gores }),
    ...(only.layers === undefined ? {} : { layers: only.layers }),
  };
  return `${MARK}${JSON.stringify(settings)}`;
}

/** The settings that a text names, or undefined where it names none, or none that could be. */
export function settingsIn(text: string): SheetSettings | undefined {
  if (!text.startsWith(MARK)) return undefined;
  try {
    const found: unknown = JSON.parse(text.slice(MARK.length));
    return isSettings(found) ? found : undefined;
  } catch {
    return undefined;
  }
}

const MARK = 'sheets ';

function isSettings(value: unknown): value is SheetSettings {
  if (!isRecord(value)) return false;
  const { paper, margins, lap, scale, endsOnly, layersApart, places, gores, layers } = value;
  return (
    typeof paper === 'string' &&
    hasNumbers(margins, ['left', 'right', 'top', 'bottom'], 0, 60) &&
    hasNumbers({ lap }, ['lap'], 0, 60) &&
    hasNumbers(scale, ['across', 'down'], 0.9, 1.1) &&
    typeof endsOnly === 'boolean' &&
    typeof layersApart === 'boolean' &&
    isPlaces(places) &&
    isNames(gores) &&
    isNames(layers)
  );
}

function hasNumbers(value: unknown, keys: readonly string[], least: number, most: number): boolean {
  return (
    isRecord(value) &&
    keys.every((key) => {
      const own = value[key];
      return typeof own === 'number' && own >= least && own <= most;
    })
  );
}

function isPlaces(value: unknown): boolean {
  if (value === undefined) return true;
  return (
    Array.isArray(value) &&
    value.every(
      (place) =>
        isRecord(place) &&
        typeof place.piece === 'string' &&
        hasNumbers(place, ['turned', 'x', 'y'], -1e5, 1e5),
    )
  );
}

function isNames(value: unknown): boolean {
  return value === undefined || (Array.isArray(value) && value.every((name) => typeof name === 'string'));
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
