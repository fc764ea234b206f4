import type { Basics } from './english-basics.ts';

/** What the page for a screen says, beside what the papers say. */
export function englishScreen({ unit }: Basics) {
  return {
    language: 'en',
    contents: 'On this page',
    views: 'How it looks',
    pattern: 'Pattern',
    patternHelp: `Wheel, pinch or + and - to zoom, drag or arrow keys to move, 0 for the whole. Ruler: m, then two points, or Enter at the middle of the picture; lengths in ${unit === 'in' ? 'inches' : unit}.`,
    layers: 'Layers',
    zoomIn: 'larger',
    zoomOut: 'smaller',
    whole: 'whole',
    ruler: 'ruler',
    firstPoint: 'Point at the first place.',
    secondPoint: 'Now at the second.',
    lays: 'Lays',
    layHelp: 'Point at a piece for its name.',
    copy: 'copy',
    mirrored: 'mirrored',
    sheets: 'Sheets',
    sheetsCaption: (paper: string, count: number): string =>
      `${count} ${count === 1 ? 'sheet' : 'sheets'} of ${paper}: how they lie when they are taped, with the page of each.`,
    page: (page: number): string => `page ${page}`,
    findings: 'Findings',
    noFindings: 'Nothing was found that you should look at.',
    levels: { error: 'Wrong', warning: 'Look at this', note: 'To know' },
    buy: 'What to buy',
    buyHeads: ['layers', 'cloth', 'width', 'lay', 'buy', 'cost'],
    buyNote: 'Lay and length to buy with every addition that the spec asks for: shrinkage, end loss, safety.',
    calendar: 'Calendar',
    calendarHeads: ['what', 'date', 'days before'],
    files: 'All files of this draft',
    footer:
      'Worked out from the spec. It has never seen the cloth: measure the test square, make the toile, and let the fitter decide.',
    brokenNow: (file: string): string =>
      `${file} cannot be drafted as it stands now. Below is the last gown that could.`,
    brokenAtFirst: (file: string): string => `${file} cannot be drafted as it stands now.`,
    busy: 'A first picture: lays, papers and how it hangs follow.',
  };
}
