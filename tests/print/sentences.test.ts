import { describe, expect, it } from 'vitest';
import { draftLines } from '../../src/words/draft-lines.ts';
import { english } from '../../src/words/english.ts';
import { englishBasics } from '../../src/words/english-basics.ts';
import { ENGLISH_ESTIMATE } from '../../src/words/english-estimate.ts';
import { ENGLISH_LAY, englishLay } from '../../src/words/english-lay.ts';
import { ENGLISH_PATTERN } from '../../src/words/english-pattern.ts';
import { remarkText } from '../../src/words/english-remarks.ts';
import {
  ENGLISH_AUDIT,
  ENGLISH_BUYING,
  ENGLISH_CHECK,
  ENGLISH_SINCE,
} from '../../src/words/english-tables.ts';
import { layRemarks } from '../../src/words/lay-remarks.ts';

/**
 * Sentences that take several figures or names: every one is another letter, so that each stands where it belongs. What
 * is said is read here as a maker would read it.
 */

const mm = english('mm');
const inches = english('in');
const { jobSheet, bench, bodiceSheet, notions, client, measuresForm } = mm;
const rows = mm;
const hours = (numerator: number, denominator: number) => ({
  numerator: BigInt(numerator),
  denominator: BigInt(denominator),
});

describe('small words', () => {
  const { weight, area, metres, wholeMetres, ...small } = englishBasics('cm');
  const inch = englishBasics('in');
  it.each([
    ['a length', small.length(123.4), '12.3 cm'],
    ['in inches', inch.length(25.4 * 3.25), '3 1/4 in'],
    ['to a sixteenth', inch.length(25.4 * (3 + 3 / 16)), '3 3/16 in'],
    ['a share', small.percent(0.12345), '12.3 %'],
    ['exactly', small.percentExact(hours(1, 8)), '12.5 %'],
    ['whole', small.percentExact(hours(3, 10)), '30 %'],
    ['grams', weight(999.4), '999 g'],
    ['kilograms', weight(1000), '1.00 kg'],
    ['ounces', inch.weight(28.349523125 * 15.9), '15.9 oz'],
    ['pounds', inch.weight(453.59237 * 2.5), '2.50 lb'],
    ['a pound', inch.weight(453.59237), '1.00 lb'],
    ['square metres', area(2_345_000), '2.35 m²'],
    ['square yards', inch.area(914.4 ** 2 * 1.5), '1.50 yd²'],
    ['metres', metres(4321), '4.32 m'],
    ['yards', inch.metres(914.4 * 4.75), '4.75 yd'],
    ['whole metres, up', wholeMetres(4001), '5 m'],
    ['whole yards, up', inch.wholeMetres(914.4 * 3 + 1), '4 yd'],
    ['priced by the yard', small.lengthPriced(914.4 * 2.5, 914.4), '2.5 yd'],
    ['priced by the metre', inch.lengthPriced(2500, 1000), '2.5 m'],
    ['hours', small.hours(hours(13, 4)), '3.25'],
    ['whole hours', small.hours(hours(10, 1)), '10'],
    ['a date', small.date('2027-06-12', 5), 'Saturday 12 June 2027'],
    ['without its day', small.date('2027-01-31'), '31 January 2027'],
    ['Monday', small.date('2027-12-06', 0), 'Monday 6 December 2027'],
    ['in short', small.shortDate('2027-06-13', 6), 'Sun 13 Jun 2027'],
    ['a centre', small.station('centre-front'), 'centre front'],
    ['a seam of one side', small.station('front/side', 'right'), 'right front/side'],
    ['an edge of a part', small.station('upper-edge'), 'upper edge'],
    ['an end of one', small.station('other-long-edge'), 'other-long edge'],
    ['a point on a seam', small.bustleAt({ seam: 'centre-back' } as never), 'centre back'],
    ['on a gore', small.bustleAt({ gore: 'back', across: 0.375 } as never), 'back, 37.5 % across'],
    ['one seam', small.seamsOf('centre-back', 1), 'centre back'],
    ['two', small.seamsOf('a/b', 2), 'a/b (2)'],
    ['the hem', small.edge('hem'), 'hem'],
    ['the waist', small.edge('waist'), 'waist'],
    ['a seam', small.edge('centre-back'), 'centre back seam'],
    ['a strip', small.stripName('stay-tape'), 'stay tape'],
    ['for scraps', Object.values(small.usual).join(), '20 cm,7.5 cm,1.3 cm,2 to 3 mm'],
    ['with another tape', Object.values(inch.usual).join(), '8 in,3 in,1/2 in,1/8 in'],
    ['chalk', inch.chalkNumber(25.4 * (2 + 5 / 32)), '2 5/32'],
  ])('%s', (_, said, expected) => expect(said).toBe(expected));

  it('every month and every day by its name', () => {
    const named = Array.from(
      { length: 12 },
      (_, i) => small.shortDate(`2027-${String(i + 1).padStart(2, '0')}-01`, 0).split(' ')[2],
    );
    expect(named.join(' ')).toBe('Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec');
    const days = Array.from({ length: 7 }, (_, i) => small.shortDate('2027-01-01', i).split(' ')[0]);
    expect(days.join(' ')).toBe('Mon Tue Wed Thu Fri Sat Sun');
  });
});

describe('on papers', () => {
  it.each([
    [bench.settle(1), 'One thing to settle before cutting: see the next page.'],
    [bench.settle(4), '4 things to settle before cutting: see the next page.'],
    [bench.wraps('A', 'left', 'B'), 'Wraps at A, her left side on top, edge over edge by B.'],
    [bench.opens('A', 'B'), 'Opens by A at B.'],
    [bench.opensTo('A', 'B', undefined, 'C'), 'Opens by A at B, down to C below the waist seam.'],
    [bench.opensTo('A', 'B', 'C', 'D'), 'Opens by A at B, from C to D below the waist seam.'],
    [bench.shorter('A', 'B'), 'A, B shorter'],
    [bench.atHem('A'), 'at the A’s hem'],
    [bench.above('A', 'B'), 'on the A, B above its hem'],
    [bench.fastened('A', 'B', 'C'), 'A, B to C'],
    [bench.shrinks('A'), 'shrinks A'],
    [
      bench.layersCaption,
      'Layers and parts, the outermost first: what is joined where, and allowances in mm',
    ],
    [
      inches.bench.layersCaption,
      'Layers and parts, the outermost first: what is joined where, and allowances in inches',
    ],
    [jobSheet.waistLine('A', undefined), 'The gores’ tops are A all round.'],
    [jobSheet.waistLine('A', 'B'), 'The gores’ tops are A all round, the bodice edge B.'],
    [jobSheet.hemLine('A'), 'The hem is A round.'],
    [
      jobSheet.footprint('A', 'B'),
      'The train spread flat on the floor, from above: A long behind the skirt, B wide.',
    ],
    [jobSheet.cutSingle(undefined, 3), '3'],
    [jobSheet.cutSingle('left', 2), '2, her left'],
    [jobSheet.allowance('A', 'B'), 'A B'],
    [jobSheet.rough('A'), '+ A rough'],
    [jobSheet.toEase('A', 'B'), 'A to ease when turned up (B)'],
    [jobSheet.withLayers(['A', 'B']), 'as one with A and B'],
    [jobSheet.stationsCaption(true), 'Lengths from the sewn waist edge, mm'],
    [jobSheet.stationsCaption(false), 'Lengths from the bodice’s sewn edge, mm'],
    [
      jobSheet.bustleLine(true, 1, 'A'),
      'Over: loops at the pick-ups, hooks outside; 1 point; the hem then hangs A off the floor.',
    ],
    [
      jobSheet.bustleLine(false, 5, 'A'),
      'Under: ribbons inside; 5 points; the hem then hangs A off the floor.',
    ],
    [jobSheet.threadNote('A'), expect.stringContaining('A m for each metre sewn at a stitch of 2.5 mm')],
    [
      inches.jobSheet.threadNote('A'),
      expect.stringContaining('A yd for each yard sewn at 10 stitches to the inch'),
    ],
    [bodiceSheet.lacing('A', 7, 'B'), 'Lacing at A: 7 eyelets a side, B apart.'],
    [bodiceSheet.lace('A', 'B'), expect.stringContaining('A as it is worn, B with what hangs free')],
    [bodiceSheet.tape('A', 'B'), 'Waist tape: closes at A, cut B with its ends.'],
    [notions.zip('A', 'A'), 'zip A'],
    [notions.zip('A', 'B'), 'zip A, to be shortened to B'],
    [notions.bones('spiral-steel', 'A', 6), 'spiral steel, A: 6'],
    [notions.bones('synthetic', 'A', 6), 'synthetic bone, A in all'],
    [notions.casing('A', 'B'), 'bone casing for bones A wide, B'],
    [notions.strip('A', 'B', 'C', 'D', 'E'), 'A B wide, C: the D’s E'],
    [notions.strip('A', undefined, 'C', 'D', 'E'), 'A, C: the D’s E'],
    [notions.bustle(true, 1, 'A'), '1 hook or button and A of loop for the bustle'],
    [notions.bustle(true, 3, 'A'), '3 hooks or buttons and A of loop for the bustle'],
    [notions.bustle(false, 1, 'A'), '1 pair of ribbon for the bustle'],
    [notions.bustle(false, 3, 'A'), '3 pairs of ribbon for the bustle'],
    [notions.thread('A', 'B'), 'thread for the A, about B'],
    [client.frontLength(true), 'front, from the waist to the hem'],
    [client.frontLength(false), 'front, from the bodice’s edge to the hem'],
    [client.backLength(true), 'back, from the waist to the hem'],
    [client.backLength(false), 'back, from the bodice’s edge to the hem'],
    [client.openingWords('A', 'centre-back', undefined), 'A at centre back'],
    [client.openingWords('A', 'B', 'left'), 'A at B, on your left'],
    [client.stonesWords('A', 'B', 9), 'A on the B, 9'],
    [client.covers('A', undefined), 'The skirt of the gown A: cloth, trimmings, making.'],
    [client.covers('A', 1), 'The skirt of the gown A: cloth, trimmings, making, and 1 fitting.'],
    [client.covers('A', 2), 'The skirt of the gown A: cloth, trimmings, making, and 2 fittings.'],
    [client.incomplete(['A', 'B']), 'Not in the price yet: A and B.'],
    [client.expires('A'), 'This quote holds until A.'],
    [client.changes(2).at(-1), 'more than the 2 fittings included.'],
    [client.changes(1).at(-1), 'more than the 1 fitting included.'],
    [client.changes(undefined).at(-1), 'measures that change by more than the seams can take in or let out.'],
    [
      client
        .changes(undefined)
        .slice(0, -1)
        .every((own) => own.endsWith(';')),
      true,
    ],
    [client.bustleSteps(true, 1)[1], 'Loop over hook at the centre back.'],
    [
      client.bustleSteps(true, 5)[1],
      expect.stringMatching(/^Begin at the centre back: loop over hook.* 5 in all\.$/),
    ],
    [client.bustleSteps(false, 5)[1], expect.stringMatching(/ribbons of one number.* 5 pairs in all\.$/)],
    [client.care('bodice').length, 4],
    [client.care('skirt').length, 3],
    [client.care('wrap')[0], expect.stringContaining('under edge inside first')],
    [client.care('skirt')[0], expect.stringContaining('by its whole waist')],
    [client.care('bodice')[1], expect.stringContaining('by the waist stay')],
    [measuresForm.panel('A', true), 'A, whole panel'],
    [measuresForm.panel('A', false), 'A'],
    [measuresForm.lengthsText(true), expect.stringContaining('from the waist,')],
    [measuresForm.lengthsText(false), expect.stringContaining('from the bodice’s edge,')],
    [mm.units, 'All figures in mm.'],
    [inches.units, 'All figures in inches.'],
    [mm.hung.figure(true), 'The figure is for proportion only.'],
    [mm.hung.figure(false), 'Bodice and figure are for proportion only.'],
    [mm.views.bustled('A'), 'A, bustled'],
  ])('%s', (said, expected) => expect(said).toEqual(expected));
});

describe('rows of what is sewn on, of stones and of the closing', () => {
  const { stones, closureRows, edgingRows, walkingRows } = rows;
  it.each([
    [stones.size(3.14), '3.1 mm'],
    [stones.motif(31.4, 52.6), '31 × 53 mm'],
    [stones.percent(0.3333), '33.3 %'],
    [
      stones.chart('A', '', true),
      'Placing chart of the A: each piece as it is drawn, right side up, her left; on the fold its half. Turn it over for her right.',
    ],
    [
      stones.chart('A', 'B', false),
      'Placing chart of the A, B: each piece as it is drawn, right side up, all round her.',
    ],
    [stones.piece('A', 9, 1, 0), 'A: 9'],
    [stones.piece('A', 9, 2, 0), 'A: 2 × 9'],
    [stones.piece('A', 9, 2, 9), 'A: 9 on the fold'],
    [stones.piece('A', 9, 2, 4), 'A: 2 × 5, 4 on the fold'],
    [stones.piece('A', 9, 1, 4), 'A: 5, 4 on the fold'],
    [closureRows.side('centre-back', undefined), 'centre back'],
    [closureRows.side('A', 'left'), 'A, her left'],
    [closureRows.zipText('A', undefined), 'A'],
    [closureRows.zipText('A', 'B'), 'A, shortened by B'],
    [closureRows.passesText('A'), 'A (waist seam and twice the opening)'],
    [closureRows.room('A', 'B', true), 'A: B to spare'],
    [closureRows.room('A', 'B', false), 'A: B too little'],
    [closureRows.wrapText('A', 'left'), 'A, her left side on top'],
    [closureRows.overlapText('A', 'A'), 'A'],
    [closureRows.overlapText('A', 'B'), 'A at the waist, B at the hem'],
    [closureRows.plies(['A', 'B']), 'plies at the waist, A and B'],
    [closureRows.pliesText(3, 6), '3; 6 where pressed-open seams cross'],
    [closureRows.bonesText('A', 'B', 'C'), 'A (bones end B above, second row C)'],
    [edgingRows.repeatsText(7, 'A', 'B'), '7 of A: B'],
    [edgingRows.easeWords('A', 'B'), 'A, B a repeat'],
    [edgingRows.buyText('A'), 'A, a motif for each join in it'],
    [edgingRows.supplyText('A', 'B', 'C'), 'A from C of B'],
    [edgingRows.scallopsText('A', 'B'), 'low points A, high points B'],
    [walkingRows.offFloorText('A'), 'A (textbook: 25 mm); she walks in it at the fitting before it stays so'],
    [walkingRows.hoopText('A', 'B'), 'A round, B off the floor'],
    [walkingRows.sweepText('A', 'B'), 'A, B times the hoop (common practice: 1.3 or more)'],
    [walkingRows.leastText('A', true), 'A round, with a train (common practice)'],
    [walkingRows.leastText('A', false), 'A round (common practice)'],
    [walkingRows.slantText('A', 'B'), 'A along the cloth, B straight down: measure her to check'],
  ])('%s', (said, expected) => expect(said).toBe(expected));
});

describe('on the pattern, the lays and the terminal', () => {
  const { piece, gap, firstPage, ...pattern } = ENGLISH_PATTERN;
  it.each([
    [pattern.trace(1, 'A'), 'spec format 1, content A'],
    [pattern.sheetOnPage('A', 7), 'A, page 7'],
    [pattern.pageOf(3, 9), 'page 3 of 9'],
    [pattern.overlayTitle('A', 'B', 'C', true), 'A: B and C'],
    [pattern.overlayTitle('A', 'B', 'C', false), 'A: B and C: no piece changes'],
    [pattern.square.slice(0, 2).join(' '), '100.0 mm across and 100.0 mm down'],
    [gap.grain('A', 'B').join('|'), 'grain: A|on to B'],
    [gap.cut('A', 'B', 'C').join('|'), 'straight on A|to B; along the|grain C'],
    [piece.onSide('A', 'left'), 'A, wearer’s left'],
    [piece.single(3), 'cut 3'],
    [piece.layers(['A']), 'layer: A'],
    [piece.layers(['A', 'B']), 'layers: A, B'],
    [piece.hemCut(['A', 'B']), 'A, B: cut'],
    [firstPage.pages(3, 3), 'page 3'],
    [firstPage.pages(3, 9), 'pages 3 to 9'],
    [firstPage.on(1, false, 'A'), 'Pattern on 1 sheet, A.'],
    [firstPage.on(2, false, 'A'), 'Pattern on 2 sheets, A.'],
    [firstPage.on(1, true, 'A'), 'Pattern on 1 length of the roll, A.'],
    [firstPage.on(2, true, 'A'), 'Pattern on 2 lengths of the roll, A.'],
    [firstPage.corrected('A', 'B'), expect.stringContaining('drawn at A across and B down')],
    [firstPage.alongFold('A'), 'along the fold, A to hem'],
    [firstPage.alongEdge('A', 'B'), 'A, B to hem'],
    [ENGLISH_LAY.tooWide('A', 'B', 'C'), 'A takes B, there are C'],
    [ENGLISH_LAY.spare('A', 'B', 'C'), 'spare A × B C'],
    [ENGLISH_LAY.cuttingOrder(['A', 'B']), 'In cutting order, A; B.'],
    [ENGLISH_LAY.lies('up', false, false), 'face up'],
    [ENGLISH_LAY.lies('up', true, false), 'face up, mirrored'],
    [ENGLISH_LAY.lies('down', false, true), 'face down, head down'],
    [ENGLISH_LAY.lies('down', true, true, true), 'face down, mirrored, head down, on the bias'],
    [
      ENGLISH_LAY.caption('A', 'B', 'C', 'D', 'E', 'F', 0.876),
      'A from B, C wide, D; lay E, buy F, 88 % used.',
    ],
    [ENGLISH_LAY.handling({ pieces: 1, double: 0, upperTurned: false } as never), '1 piece to mark'],
    [
      ENGLISH_LAY.handling({ pieces: 9, double: 9, upperTurned: true } as never),
      '9 pieces to mark, all cut double, upper layer cut off and turned round',
    ],
    [
      ENGLISH_LAY.handling({ pieces: 9, double: 4, upperTurned: false } as never),
      '9 pieces to mark, 4 cut double',
    ],
    [englishLay('cm').number(380), '38'],
    [englishLay('in').number(25.4 * 3.5), '3 1/2'],
    [ENGLISH_CHECK.title('A', undefined, 'B', 'C'), 'A: content B, lengths in C\n'],
    [ENGLISH_CHECK.title('A', 'B', 'C', 'D'), 'A, B: content C, lengths in D\n'],
    [ENGLISH_CHECK.waistOf('A', 'B'), 'bodice A, differ B'],
    [ENGLISH_CHECK.edge('A', 'B'), 'A B'],
    [ENGLISH_CHECK.stationHeads(false).join(), 'station,below the waist,given,waist seam to hem'],
    [ENGLISH_CHECK.stationHeads(true).join(), 'station,below the waist,given,as worn,waist seam to hem'],
    [ENGLISH_CHECK.sided('A', 'left'), 'A left'],
    [ENGLISH_CHECK.sided('A', undefined), 'A'],
    [ENGLISH_BUYING.lay('A', 'B', 'C', 'D', true), 'A, from B: C wide, D of it to use, all tops one way'],
    [ENGLISH_BUYING.lay('A', 'B', 'C', 'D', false), 'A, from B: C wide, D of it to use'],
    [ENGLISH_BUYING.cannotBe('A', 'B'), 'A: cannot be, B'],
    [ENGLISH_BUYING.spare('A', 'B'), 'Spare: A × B'],
    [ENGLISH_BUYING.supposed('A', true, 'B'), 'A wide, all tops one way, fold: B'],
    [ENGLISH_BUYING.supposed(undefined, false, undefined), ''],
    [ENGLISH_AUDIT.compared(7, 'A', 'B'), '7 sheets, A m of line compared, farthest B mm off'],
    [ENGLISH_AUDIT.square('A', 'B'), 'test square A mm across, B mm down'],
    [
      ENGLISH_SINCE.some(9, ['A', 'B'], 'C', 'D'),
      'Print again, of 9 sheets, the 2 that changed since C (D): A, B. The others are as they were, but for the content hash.',
    ],
  ])('%s', (said, expected) => expect(said).toEqual(expected));
});

describe('what is done with a piece, as it says on it', () => {
  const say = (own: number) => `${own}`;
  const binding = (joins: number) => ({ kind: 'binding', strip: { width: 1, length: 2, joins }, edge: 'A' });
  const pleats = (own: object) => ({ kind: 'top-pleats', from: 1, to: 2, count: 3, depth: 4, ...own });
  it.each([
    [{ kind: 'godet', seam: 'A', from: 1 }, 'let into A, its point 1 below the waist seam'],
    [
      { kind: 'flounce', sewnTo: 'A', aboveHem: 0, ring: 1, open: false },
      'join to a ring of 1 and sew it flat to the line of the hem of A',
    ],
    [
      { kind: 'flounce', sewnTo: 'A', aboveHem: 2, ring: 1, open: true, gatheredTo: 3 },
      'join to a length of 1, gather it to 3 and sew it to the line 2 above the hem of A',
    ],
    [
      { kind: 'tiers', cuts: [1], yoke: undefined },
      'join end to end, cut off a tier of 1; gather each to the one above, by quarters',
    ],
    [
      { kind: 'tiers', cuts: [1, 2], yoke: 3 },
      'join end to end, cut off tiers of 1, 2; gather the first to the yoke of 3, each other to the one above, by quarters',
    ],
    [
      { kind: 'strap', from: 'A', to: 'B', width: 1 },
      'fold it lengthwise, sew and turn it: 1 wide|from A to B',
    ],
    [{ kind: 'cape', overArm: 0 }, 'sew it to its edge'],
    [
      { kind: 'cape', between: { from: 'A', to: 'B' }, overArm: 1, gatheredTo: 2 },
      'gather it to 2, sew it to the upper edge from A to B, 1 of it free over the arm',
    ],
    [
      { kind: 'hem-facing', faces: 'A', depth: 1 },
      'faces the hem of A, 1 deep|cut smaller at the hem: lay raw edges level',
    ],
    [
      { kind: 'waist-facing', depth: 1 },
      'faces the waist, 1 deep|cut smaller at the waist: lay raw edges level',
    ],
    [
      { kind: 'upper-facing', depth: 1 },
      'faces the upper edge, 1 deep|cut smaller at the upper edge: lay raw edges level',
    ],
    [{ kind: 'edge-facing', edge: 'A', depth: 1 }, 'faces the A, 1 deep'],
    [{ kind: 'yoke', of: 'A', round: 1 }, 'of A: joined to a ring of 1, its lower edge takes the first tier'],
    [
      {
        kind: 'waistband',
        width: 1,
        sewn: 2,
        overlap: 3,
        shaped: false,
        places: [
          { name: 'A', at: 4 },
          { name: 'B', at: 5 },
        ],
      },
      '2 and 3 to overlap long; fold it lengthwise: 1 wide|from its end: A 4, B 5',
    ],
    [
      { kind: 'waistband', width: 1, sewn: 2, overlap: 0, shaped: true, places: [] },
      '2; outside and inside|from its end: ',
    ],
    [{ kind: 'ties', length: 1, width: 2 }, 'fold it lengthwise, sew and turn it: 1 long, 2 wide'],
    [
      { kind: 'placket', opening: 1, width: 2 },
      'one strip down one edge of the opening and up the other, 1 each|folded over it: 2 wide',
    ],
    [{ kind: 'guard', width: 1 }, 'folded lengthwise, 1 wide; behind the zip, sewn to one edge only'],
    [{ kind: 'opening-facing', at: 'A' }, 'faces the edges of the opening at A'],
    [
      { kind: 'slit-facing', seam: 'A' },
      'faces the edges of the slit at A, its lower end cut to the levelled hem',
    ],
    [{ kind: 'slit-stay', seam: 'A' }, 'over the upper end of the slit at A'],
    [{ kind: 'pocket', seam: 'A', opening: 1 }, 'let into A: open 1 between its notches'],
    [
      { kind: 'loops', width: 1, count: 2, length: 3 },
      'one strip, sewn and turned 1 wide, then cut into 2 of 3',
    ],
    [binding(1), 'cut at 45° to the thread, as one spiral or in strips: 2 of bias 1 wide for the A, 1 join'],
    [binding(4), 'cut at 45° to the thread, as one spiral or in strips: 2 of bias 1 wide for the A, 4 joins'],
    [{ kind: 'gathers', from: 1, to: 2 }, 'gather the top from 1 to 2'],
    [pleats({ towards: 'box' }), 'pleat the top from 1 to 2: 3 box pleats, each fold 4 deep'],
    [
      pleats({ towards: 'front', count: 1 }),
      'pleat the top from 1 to 2: 1 pleat, each fold 4 deep, towards the front',
    ],
    [pleats({}), 'pleat the top from 1 to 2: 3 pleats, each fold 4 deep'],
    [
      { kind: 'dart', name: 'A', takesIn: 1, length: 2, towards: 'back' },
      'A: takes in 1 at the waist, 2 long, folded to the back',
    ],
    [
      { kind: 'kick-pleat', name: 'A', at: 'B', aboveHem: 1, depth: 2 },
      'A: kick pleat at B, from 1 above the hem, each fold 2 deep',
    ],
    [
      { kind: 'pleat', name: 'A', lies: 'box', at: 'B', fromSeam: undefined, depth: 1, stitchedDown: 0 },
      'A: box pleat at B, each fold 1 deep, not stitched down',
    ],
    [
      { kind: 'pleat', name: 'A', lies: 'knife', at: 'B', fromSeam: 3, depth: 1, stitchedDown: 2 },
      'A: knife pleat 3 from B as sewn, each fold 1 deep, stitched down 2',
    ],
    [{ kind: 'over-seams', seams: ['A'] }, 'cut over a seam, marked: A'],
    [{ kind: 'over-seams', seams: ['A', 'B'] }, 'cut over seams, marked from the front: A, B'],
    [
      { kind: 'wrap', at: 'A', over: 'left', atWaist: 1, atHem: 2 },
      'wraps 1 past A at the waist, 2 at the hem: that line is marked; her left side lies on top',
    ],
    [{ kind: 'stones-marked', layer: 'A', names: ['B', 'C'] }, 'marked on it, to set on the A: B, C'],
    [
      {
        kind: 'bustle',
        layer: 'A',
        points: [
          { place: { gore: 'B', across: 0.25 }, anchor: 1, pickUp: 2 },
          { place: { seam: 'C' }, anchor: 3, pickUp: 4 },
        ],
      },
      'bustle on the A, down from the waist seam: 25 % across ring 1, cross 2; C ring 3, cross 4',
    ],
    [
      { kind: 'tucks', count: 1, width: 1, longer: 2, folds: [3] },
      'a growth tuck 1 wide, cut 2 longer: fold 3 above the hem line',
    ],
    [
      { kind: 'tucks', count: 2, width: 1, longer: 2, folds: [3, 4] },
      '2 growth tucks 1 wide, cut 2 longer: fold 3, 4 above the hem line',
    ],
  ])('%j', (remark, said) => expect(remarkText(remark as never, say).join('|')).toBe(said));
});

describe('what must be known at the table before the first cut', () => {
  const plan = (own: object = {}) =>
    ({
      facts: { edgingDepth: 0, oneWay: false },
      sections: [{ fold: 'single', from: 0 }],
      joins: [],
      railroaded: [],
      layers: ['shell'],
      buy: 4000,
      ...own,
    }) as never;
  const facts = (own: object) => ({ facts: { edgingDepth: 0, oneWay: false, ...own } });
  const folded = (...folds: string[]) => folds.map((fold, i) => ({ fold, from: 700 * i }));
  it.each([
    [{}, []],
    [{ cutShort: true }, ['CUT SHORT: plan it again before you buy.']],
    [facts({ edgingDepth: 60 }), ['First cut 60 mm of edging off each side inside the selvedge.']],
    [facts({ oneWay: true }), ['One-way cloth: all tops lie towards the arrow.']],
    [{ sections: folded('lengthwise') }, ['Fold lengthwise: right sides together, selvedges together.']],
    [{ sections: folded('crosswise') }, ['Fold crosswise: right sides together, ends together.']],
    [
      { ...facts({ oneWay: true }), sections: folded('crosswise') },
      [
        'One-way cloth: all tops lie towards the arrow.',
        expect.stringMatching(/^Crosswise on one-way cloth: cut along the fold/),
      ],
    ],
    [
      { sections: folded('single', 'single', 'single') },
      ['Cut the cloth straight across at 700 mm and 1400 mm before folding.'],
    ],
    [{ railroaded: ['shell'] }, ['The grain of the pieces runs across this cloth.']],
    [{ railroaded: ['net'], layers: ['shell', 'net'] }, ['The grain of the net runs across this cloth.']],
    [
      { joins: [{ gore: 'side', layer: 'shell', parts: 3 }] },
      ['side is cut in 3 parts: join them along the grain, marks on marks, before anything else.'],
    ],
    [
      { joins: [{ gore: 'side', layer: 'net', parts: 2 }], layers: ['shell', 'net'] },
      ['side of the net is cut in 2 parts: join them along the grain, marks on marks, before anything else.'],
    ],
    [
      facts({ repeatDown: 300 }),
      ['Every piece begins on a whole repeat; look where the motifs lie before cutting.'],
    ],
    [
      facts({ repeatAcross: 300 }),
      ['Every piece begins on a whole repeat; look where the motifs lie before cutting.'],
    ],
    [
      {
        apart: {
          layers: [
            { layer: 'A', length: 1200 },
            { layer: 'B', length: 3100 },
          ],
          buy: 4300,
        },
      },
      ['Laid apart: A 1200 mm and B 3100 mm, 4300 mm to buy; this lay buys 300 mm less.'],
    ],
    [
      { cutShort: true, apart: { layers: [{ layer: 'A', length: 1200 }], buy: 4000 } },
      [
        'CUT SHORT: plan it again before you buy.',
        'Laid apart: A 1200 mm, 4000 mm to buy; this lay buys as much.',
      ],
    ],
  ])('%j', (own, said) => expect(layRemarks(plan(own), 'mm')).toEqual(said));
});

describe('an estimate, a chalk table, the page for a screen', () => {
  const { chalk, screen, missing } = mm;
  const { measures, ...estimate } = ENGLISH_ESTIMATE;
  it.each([
    [estimate.title('A'), 'An estimate, from the template A'],
    [estimate.wide('A'), 'A wide'],
    [estimate.layer('A', 'A'), 'A'],
    [estimate.layer('A', 'B'), 'A (B)'],
    [estimate.together(['A', 'B'], 'C'), 'A + B in one lay (C)'],
    [estimate.sheets(1, 'A'), 'Paper: about 1 sheet of A.'],
    [estimate.sheets(9, 'A'), 'Paper: about 9 sheets of A.'],
    [estimate.hours('A', 'B'), 'Work: A to B hours.'],
    [estimate.price('A', 'B'), 'Price: A to B.'],
    [estimate.noPrice(['A', 'B']), 'Price: none without A and B.'],
    [estimate.size('A', 'B', 'C'), expect.stringContaining('bust A: waist B, hip C')],
    [measures.waist('A'), 'Waist seam A.'],
    [measures.hip('A'), 'Hip A.'],
    [measures.toFloor('A'), 'Bodice edge to the floor at the centre front A.'],
    [measures.train('A'), 'Train on the floor A.'],
    [measures.sweep('A'), 'Hem A round.'],
    [measures.hoop('A'), 'Hoop A round.'],
    [estimate.prices(['A', 'B']), 'Prices for a metre: A, B.'],
    [estimate.rate('A'), 'An hour at A.'],
    [estimate.widest('A'), 'Priced at the cloth that is A wide.'],
    [chalk.shared('A'), 'Of the A; what differs in the others stands below.'],
    [chalk.onSide('A', 'right'), 'A, her right'],
    [chalk.chord('A', 'B', 'C'), 'A–B, C'],
    [chalk.swing('A', 'B', 'C', 'D', 'E'), 'A line of the B: swing C from a point D, E.'],
    [chalk.above('A'), 'A above the top'],
    [chalk.below('A'), 'A down'],
    [chalk.left('A'), 'A left of it'],
    [chalk.right('A'), 'A right of it'],
    [chalk.diagonals(['A', 'B']), 'Diagonals: A; B.'],
    [chalk.copies.pair(), 'cut 2, the second mirrored'],
    [chalk.copies['on-fold'](), 'cut 1 on the fold'],
    [chalk.copies.single(4), 'cut 4'],
    [chalk.levelHeads.columns.join(), 'cut left,seam left,seam right,cut right'],
    [screen.sheetsCaption('A', 1), expect.stringMatching(/^1 sheet of A:/)],
    [screen.sheetsCaption('A', 7), expect.stringMatching(/^7 sheets of A:/)],
    [screen.page(7), 'page 7'],
    [inches.screen.patternHelp, expect.stringMatching(/lengths in inches\.$/)],
    [screen.patternHelp, expect.stringMatching(/lengths in mm\.$/)],
    [missing.price(['A', 'B']), 'price of A and B: not in the costing.'],
    [
      missing['bustle-floor'](['centre-back', 'A']),
      'lengths.to-floor: without it no pick-up for the bustle at centre back and A.',
    ],
    [missing['edging-start'](['centre-back']), 'edging.start: taken as centre back.'],
  ])('%s', (said, expected) => expect(said).toEqual(expected));

  it('what the draft makes of a spec, to a tenth of a millimetre', () => {
    const report = {
      waist: { sewn: 740.04 },
      hem: { sewn: 4210.06 },
      layers: [{ name: 'net', sewnHem: 4300 }],
      stations: [{ name: 'centre-back', length: 1115.25 }],
      gores: [
        { name: 'side', side: 'left' as const, top: 86, hem: 465.5, flareDegrees: 16.504 },
        { name: 'back', top: 67, hem: 470, flareDegrees: 17 },
      ],
    };
    expect(draftLines(report)).toEqual([
      'drafted waist all round: 740 mm',
      'drafted hem all round: 4210.1 mm',
      'drafted hem of net: 4300 mm',
      'drafted centre-back: 1115.3 mm from waist seam to hem',
      'drafted gore side left: top 86 mm, hem 465.5 mm, flare 16.5°',
      'drafted gore back: top 67 mm, hem 470 mm, flare 17°',
    ]);
  });

  it.each([
    ['irons', /^Irons and steam/],
    ['nickel', /^Hooks may hold nickel/],
    ['braid-heat', /^Nylon braid melts/],
    ['flame', /^Net, flounces and sheer cloth catch fast/],
    ['floor-cutting', /^Cutting on the floor/],
    ['blades', /^Rotary blades/],
    ['sequins', /^Sequins and beads/],
    ['needle-zip', /meets zip teeth/],
    ['needle-bone', /meets a bone/],
    ['many-plies', /^Many plies/],
    ['tight-lacing', /^Lacing presses/],
    ['hoop', /^A hoop swings/],
    ['stairs', /^Long hems on steps/],
    ['train-on-stairs', /^Long hems and trains on steps/],
    ['pins', /^A pin left/],
    ['child', /^For a child: cords/],
    ['data', /measures are personal data/],
  ] as const)('the caution of %s is about that, and says who decides', (kind, about) => {
    expect(mm.caution(kind, undefined)).toMatch(about);
    if (kind !== 'pins')
      expect(mm.caution(kind, undefined)).toMatch(/decides?\b|says|has the rules|officer|manual/);
  });

  it.each([
    ['stairs', /^Stairs and escalators: (?!.*train)/],
    ['train-on-stairs', /^Stairs and escalators: .*take off the train/],
    ['dancing', /^Dancing/],
    ['hoop', /^The hoop swings/],
    ['flame-worn', /^Flames/],
    ['nickel', /hold nickel/],
    ['tight-lacing', /^Lacing/],
    ['data', /^Your measures/],
  ] as const)('to the wearer: %s', (kind, about) => expect(mm.wearerCaution(kind, undefined)).toMatch(about));

  it('heads stand over what they name', () => {
    const { legend } = ENGLISH_PATTERN;
    expect([ENGLISH_CHECK.waist, ENGLISH_CHECK.hem, ENGLISH_CHECK.hemOf('A')]).toEqual([
      'waist',
      'hem',
      'hem of A',
    ]);
    expect(ENGLISH_CHECK.seamHeads.slice(0, 4)).toEqual(['seam', 'front side', 'back side', 'differ']);
    expect(ENGLISH_CHECK.seamHeads.slice(4)).toEqual(['waist angles', 'hem angles', 'hem off square']);
    expect(ENGLISH_CHECK.goreHeads.join()).toBe('gore,cut,top,hem,flare,tightest radius');
    expect(measuresForm.straps).toMatch(/^over the shoulder, from the upper edge/);
    expect(ENGLISH_CHECK.cut).toEqual({ onFold: 'half, on fold', single: 'single', pair: 'pair' });
    expect([chalk.corners, chalk.levels, chalk.curves, chalk.swings]).toEqual([
      'Corners',
      'Levels',
      'Curves',
      'Swings',
    ]);
    expect([chalk.cut, chalk.seam, chalk.along, chalk.out]).toEqual(['Cut', 'Seam', 'along', 'off']);
    expect(chalk.onFoldIntro).toMatch(/^On the fold/);
    expect([jobSheet.caution, jobSheet.levelling, jobSheet.hold]).toEqual([
      'Caution',
      'Levelling record',
      'Hold:',
    ]);
    expect([legend.cut, legend.sew]).toEqual(['cut here', 'sew here: the seam line']);
    expect([legend.fold, legend.grain]).toEqual([
      'lay on the fold of the cloth',
      'lay along the straight thread',
    ]);
    expect(legend.bustle).toMatch(
      /a ring where a point is anchored, a cross where the cloth is picked up to it/,
    );
    const { body: _, ...kinds } = measuresForm.levels as Record<string, string>;
    expect(kinds).toMatchObject({
      bust: 'bust',
      underbust: 'underbust',
      waist: 'level waist',
      edge: 'bodice edge',
      hip: 'hip',
      hoop: 'bottom hoop',
    });
    // A depth stands behind the girth that it is the depth of.
    const fields = measuresForm.bodyFields;
    expect(fields[fields.indexOf('hip, at the fullest') + 1]).toBe('hip depth, from the waist down');
    expect(fields[fields.indexOf('high hip') + 1]).toBe('high hip, from the waist down');
  });

  it('what the skirt weighs, for whoever makes it and whoever wears it; nothing where there is nothing to say', () => {
    expect(mm.caution('weight', 2350)).toContain('weighs about 2.35 kg');
    expect(inches.caution('weight', 453.59237 * 3)).toContain('weighs about 3.00 lb');
    expect(mm.caution('weight', undefined)).toContain('is not known');
    expect(mm.wearerCaution('weight', 2350)).toContain('about 2.35 kg');
    expect(mm.wearerCaution('irons', 2350)).toBe('');
    expect(mm.caution('dancing', undefined)).toBe('');
  });
});
