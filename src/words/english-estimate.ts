/** What an estimate says. Figures come written out. */
export const ENGLISH_ESTIMATE = {
  title: (template: string): string => `An estimate, from the template ${template}`,
  notice:
    'Nobody was measured: this is for a first talk, not for buying cloth or for a price that binds. No legal or tax advice; an accountant decides.',
  cloth: 'cloth to buy',
  wide: (width: string): string => `${width} wide`,
  layer: (layer: string, cloth: string): string => (layer === cloth ? layer : `${layer} (${cloth})`),
  together: (layers: readonly string[], cloth: string): string =>
    `${layers.join(' + ')} in one lay (${cloth})`,
  cannot: 'too narrow',
  sheets: (count: number, paper: string): string =>
    `Paper: about ${count} ${count === 1 ? 'sheet' : 'sheets'} of ${paper}.`,
  hours: (least: string, most: string): string => `Work: ${least} to ${most} hours.`,
  price: (least: string, most: string): string => `Price: ${least} to ${most}.`,
  noPrice: (missing: readonly string[]): string => `Price: none without ${missing.join(' and ')}.`,
  assumed: 'What it assumes',
  size: (bust: string, waist: string, hip: string): string =>
    `Body: EN 13402-3, bust ${bust}: waist ${waist}, hip ${hip} (the standard's figures from memory).`,
  measures: {
    waist: (value: string): string => `Waist seam ${value}.`,
    hip: (value: string): string => `Hip ${value}.`,
    toFloor: (value: string): string => `Bodice edge to the floor at the centre front ${value}.`,
    train: (value: string): string => `Train on the floor ${value}.`,
    sweep: (value: string): string => `Hem ${value} round.`,
    hoop: (value: string): string => `Hoop ${value} round.`,
  },
  rest: (template: string): string =>
    `All else as in the template ${template}: gores, layers, allowances, directions of cloth.`,
  work: 'Hours: by the metres sewn, with a toile and its fittings; common practice, without a source. Put your own into labour.',
  prices: (prices: readonly string[]): string => `Prices for a metre: ${prices.join(', ')}.`,
  rate: (rate: string): string => `An hour at ${rate}.`,
  widest: (width: string): string => `Priced at the cloth that is ${width} wide.`,
  without: 'Not in it: notions, edging, facings, handwork, overhead, tax.',
};
