/** What the tables on the command line say. Figures come written out. */
export const ENGLISH_CHECK = {
  title: (gown: string, client: string | undefined, content: string, units: string): string =>
    `${gown}${client === undefined ? '' : `, ${client}`}: content ${content}, lengths in ${units}\n`,
  overskirt: (name: string): string => `${name}: an overskirt\n`,
  goreHeads: ['gore', 'cut', 'top', 'hem', 'flare', 'tightest radius'] as readonly string[],
  cut: { onFold: 'half, on fold', single: 'single', pair: 'pair' },
  straight: 'straight',
  seamHeads: [
    'seam',
    'front side',
    'back side',
    'differ',
    'waist angles',
    'hem angles',
    'hem off square',
  ] as readonly string[],
  roundHeads: ['all round', 'sewn'] as readonly string[],
  waist: 'waist',
  waistOf: (bodice: string, difference: string): string => `bodice ${bodice}, differ ${difference}`,
  hem: 'hem',
  hemOf: (layer: string): string => `hem of ${layer}`,
  partHeads: ['part', 'in layer', 'copies', 'edges of each'] as readonly string[],
  edge: (name: string, length: string): string => `${name} ${length}`,
  filledIn: 'filled in',
  stationHeads: (worn: boolean): readonly string[] => [
    'station',
    'below the waist',
    'given',
    ...(worn ? ['as worn'] : []),
    'waist seam to hem',
  ],
  /** `side left` where her two sides differ. */
  sided: (name: string, side: 'left' | 'right' | undefined): string =>
    side === undefined ? name : `${name} ${side}`,
};

export const ENGLISH_BUYING = {
  lay: (layers: string, cloth: string, width: string, usable: string, oneWay: boolean): string =>
    `${layers}, from ${cloth}: ${width} wide, ${usable} of it to use${oneWay ? ', all tops one way' : ''}`,
  wayHeads: ['  way', 'length', 'used', 'buy', 'cost', ''] as readonly string[],
  taken: 'taken',
  cannotBe: (way: string, why: string): string => `${way}: cannot be, ${why}`,
  spare: (across: string, along: string): string => `Spare: ${across} × ${along}`,
  heads: ['to buy', 'length', 'cost'] as readonly string[],
  inAll: 'in all',
  unpriced: (cloths: readonly string[]): string => `Not in it, as no price is given: ${cloths.join(', ')}.\n`,
  /** What a cloth is supposed to be; empty for the spec's own. */
  supposed: (width: string | undefined, oneWay: boolean, fold: string | undefined): string =>
    [
      ...(width === undefined ? [] : [`${width} wide`]),
      ...(oneWay ? ['all tops one way'] : []),
      ...(fold === undefined ? [] : [`fold: ${fold}`]),
    ].join(', '),
  ifCloth: (supposed: string): string => `If the cloth were ${supposed}:\n\n`,
};

/** What an audit of a pattern's PDF found, in figures. */
export const ENGLISH_AUDIT = {
  compared: (sheets: number, metres: string, farthest: string): string =>
    `${sheets} sheets, ${metres} m of line compared, farthest ${farthest} mm off`,
  square: (across: string, down: string): string => `test square ${across} mm across, ${down} mm down`,
  madeFrom: (trace: string): string => `made from ${trace}`,
};

/** Which sheets to print again. */
export const ENGLISH_SINCE = {
  none: (since: string): string => `No sheet has changed since ${since}.`,
  nothing: (since: string): string => `Nothing to print again since ${since}.`,
  every: (since: string): string => `Every sheet has changed since ${since}: print the whole pattern.`,
  some: (count: number, again: readonly string[], since: string, file: string): string =>
    `Print again, of ${count} sheets, the ${again.length} that changed since ${since} (${file}): ${again.join(', ')}. The others are as they were, but for the content hash.`,
  gone: (labels: readonly string[]): string => `Throw away: ${labels.join(', ')}.`,
};
