import { remarkText } from './english-remarks.ts';

const CUTTING = {
  lead: 'Cutting on the floor:',
  text: 'mind knees, back and open blades; your workplace-safety body has the rules.',
};

/** What the pattern says: its sheets, its pieces, and the page before them. Lengths come written out. */
export const ENGLISH_PATTERN = {
  cutting: CUTTING,
  title: (gown: string): string => `${gown}: pattern`,
  /** So that paper can be traced to its spec. */
  trace: (format: number, content: string): string => `spec format ${format}, content ${content}`,
  sheetOnPage: (sheet: string, page: number): string => `${sheet}, page ${page}`,
  pageOf: (page: number, pages: number): string => `page ${page} of ${pages}`,
  overlayTitle: (gown: string, old: string, now: string, changed: boolean): string =>
    `${gown}: ${old} and ${now}${changed ? '' : ': no piece changes'}`,
  overlay: 'dashed: as it was cut. solid: the new lines. The inner lines are the seam lines. Full size.',
  squareLayer: 'Test square, 100 mm: set the projector by it',
  square: ['100.0 mm across and', '100.0 mm down', '(3 15/16 in, nearly)'] as readonly [
    string,
    string,
    string,
  ],
  legend: {
    title: 'The lines',
    cut: 'cut here',
    sew: 'sew here: the seam line',
    fold: 'lay on the fold of the cloth',
    grain: 'lay along the straight thread',
    notches:
      'notches: one at a front edge, two at a back edge; at a seam one meets two, as far from the waist',
    pleatFold: 'pleat: fold here, outer and inner fold',
    placement:
      'pleat: bring the outer fold to the dotted line, as the arrow points; a tick ends the stitching',
    dart: 'dart: sew its two legs to each other, down to the point; the middle line is its fold',
    tuck: 'growth tuck: fold here, and stitch the dotted lines on either side of it to each other',
    stone: 'stones, a dot each; motifs, a dashed outline each: mark and set them, do not cut',
    bustle: 'bustle: a ring where a point is anchored, a cross where the cloth is picked up to it',
    mark: 'mark, do not cut; the text on the piece says what it is',
  },
  gap: {
    grain: (length: string, sheet: string): string[] => [`grain: ${length}`, `on to ${sheet}`],
    cut: (length: string, sheet: string, alongGrain: string): string[] => [
      `straight on ${length}`,
      `to ${sheet}; along the`,
      `grain ${alongGrain}`,
    ],
  },
  piece: {
    onSide: (name: string, side: string): string => `${name}, wearer’s ${side}`,
    onFold: 'cut 1 on fold',
    pair: 'cut 1 pair',
    single: (copies: number): string => `cut ${copies}`,
    layers: (layers: readonly string[]): string =>
      `${layers.length === 1 ? 'layer' : 'layers'}: ${layers.join(', ')}`,
    grain: 'grain: along the arrows',
    bias: 'on the bias: the arrows along the straight thread, single cloth; of a pair one is the other turned over',
    besideFold: 'on the fold',
    allowances: (parts: readonly string[]): string => `allowances included: ${parts.join(', ')}`,
    none: (edge: string): string => `${edge} none`,
    remark: remarkText,
    seams: 'seams',
    hemOf: (layers: readonly string[]): string => `hem of ${layers.join(', ')}`,
    rough: (length: string): string => ` and ${length} rough-cut extra`,
    hemCut: (layers: readonly string[]): string => `${layers.join(', ')}: cut`,
  },
  firstPage: {
    title: 'Print and check this page first',
    pages: (first: number, last: number): string =>
      first === last ? `page ${first}` : `pages ${first} to ${last}`,
    on: (count: number, roll: boolean, pages: string): string =>
      `Pattern on ${count} ${roll ? (count === 1 ? 'length of the roll' : 'lengths of the roll') : count === 1 ? 'sheet' : 'sheets'}, ${pages}.`,
    printing: 'Print at 100 %, no fit to page',
    print: [
      'Print this page first, at 100 % (actual size): no “fit to page”, no “shrink”.',
      'Measure the square both ways. 94.1 or 97.3 mm means that the page was fitted: turn that off. Another figure is your printer’s own error: write both into the spec under paper, measured, and draft again.',
    ] as readonly string[],
    corrected: (across: string, down: string): string =>
      `The sheets are corrected for your printer: drawn at ${across} across and ${down} down, so that they come out true.`,
    tape: [
      'Trim each sheet along the lines at its left and top, and lay it on its neighbours’ margins so that line meets line and the diamonds close.',
      'Pages run down each column of the map, then on to the next; arrows name the neighbours.',
    ] as readonly string[],
    gaps: 'Straight stretches are left out. At each cut-off stands how far the line runs on, and to which sheet: lay a long ruler along it, and keep the grain lines in one line.',
    measureTaped: 'When the sheets are taped, measure before cutting',
    measure: 'Measure before cutting',
    checkHeads: ['piece', 'from seam line to seam line', 'should be'] as readonly string[],
    chord: 'hem line, straight from corner to corner',
    alongFold: (top: string): string => `along the fold, ${top} to hem`,
    alongEdge: (edge: string, top: string): string => `${edge}, ${top} to hem`,
    cautions: [
      CUTTING,
      {
        lead: 'A client’s measures',
        text: 'are personal data, on paper too: your data-protection authority says how long you may keep them.',
      },
    ],
  },
};

export type PatternWords = typeof ENGLISH_PATTERN;
