import { describe, expect, it } from 'vitest';
import { layWords } from '../../src/diagnostics/lay-words.ts';
import { english } from '../../src/words/english.ts';
import { ENGLISH_LAY } from '../../src/words/english-lay.ts';
import { ENGLISH_PATTERN } from '../../src/words/english-pattern.ts';
import { ENGLISH_BUYING } from '../../src/words/english-tables.ts';

/**
 * Words that say which way, where and which of two: each turned round would spoil cloth or hurt, and none of them has a
 * figure that would show it. What is right follows from how pieces are drawn, notched, taped and worn.
 */

const mm = english('mm');
const { chalk, client, jobSheet, measuresForm, notions, bodiceSheet, bench, screen } = mm;
const { firstPage, legend, piece } = ENGLISH_PATTERN;
const step = (work: object) => {
  const { does, notes, holds } = mm.step(work as never);
  return [does, ...notes, ...holds].join(' ');
};
const seams = { kind: 'sew-seams', layer: 'A', seams: [], godets: [], slits: [], pockets: [] };

describe('which way, where, and which of two', () => {
  it.each<[string, string | readonly string[]]>([
    // A table's “across” grows to the right of the grain line, “down” from the top; out is away from the piece.
    ['from the top of the cut line, “across” square from it: + to the right, - to the left', chalk.intro],
    ['Mark the corners first, check the two diagonals, then the levels, then the curves', chalk.intro],
    ['+ away from the piece, - into it', chalk.intro],
    ['Capitals are corners of the cut line, small letters of the seam line', chalk.intro],
    ['at 45° to the selvedge, as a corner of the cloth folded over to it shows', chalk.biasIntro],
    ['Of a pair turn the second over', chalk.biasIntro],
    // One notch at a front edge, two at a back one: a seam lies between the front edge of the gore behind and the back
    // edge of the one before it.
    ['One notch on a front edge meets two on a back edge; pin from the waist down', step(seams)],
    [
      'notches: one at a front edge, two at a back edge; at a seam one meets two, as far from the waist',
      legend.notches ?? Object.values(legend).join(' '),
    ],
    ['Waist marks on waist marks', step({ kind: 'bodice-seams', layers: ['A'] })],
    [
      'A stay tape along the front edge of its opening',
      step({ kind: 'pocket', seam: 'a', from: 1, to: 2, layer: 'A', outermost: 'B' }),
    ],
    ['Leg on leg, from the waist to the point', step({ kind: 'darts', layer: 'A', darts: [] })],
    ['sew its two legs to each other, down to the point; the middle line is its fold', legend.dart],
    ['a ring where a point is anchored, a cross where the cloth is picked up to it', legend.bustle],
    // Sheets are trimmed at the left and at the top of the frame and laid on the neighbour's right and lower margin.
    [
      'Trim each sheet along the lines at its left and top, and lay it on its neighbours’ margins',
      Object.values(firstPage)
        .flat()
        .filter((own) => typeof own === 'string'),
    ],
    [
      'Pages run down each column of the map, then on to the next',
      Object.values(firstPage)
        .flat()
        .filter((own) => typeof own === 'string'),
    ],
    ['along the arrows', piece.grain],
    [
      'the arrows along the straight thread, single cloth; of a pair one is the other turned over',
      piece.bias,
    ],
    ['lay along the straight thread', legend.grain],
    ['lay on the fold of the cloth', legend.fold],
    // From her waist.
    ['hip depth, from the waist down', measuresForm.bodyFields],
    ['high hip, from the waist down', measuresForm.bodyFields],
    ['knee, from the waist down', measuresForm.bodyFields],
    ['over both shoulders, arms down', measuresForm.bodyFields],
    ['upper edge, above the waist', measuresForm.upperEdge],
    ['over the shoulder, from the upper edge in front to behind', measuresForm.straps],
    ['bones end above the edge', measuresForm.bones],
    ['edge, below the level waist', measuresForm.drop],
    ['measure up and down from it', measuresForm.dropText],
    ['how far below the waist along the body', measuresForm.girthsBelowText],
    ['The front goes from side seam to side seam', measuresForm.girthsText],
    ['From the waist down, at each level', measuresForm.underText],
    ['The sewn lower edge of each panel, on the seam line', measuresForm.edgeText],
    ['train on the floor at the centre back', measuresForm.train],
    ['hem off the floor in front', measuresForm.offFloor],
    ['A code, never a name', measuresForm.data],
    [
      'over the edge until its tip comes down to a line drawn 41.5° below the level (22 down for 25 along)',
      measuresForm.stiffnessText,
    ],
    ['Half of what hangs over is the bending-length', measuresForm.stiffnessText],
    ['other hoops: how far down, how far round', measuresForm.petticoatFields],
    ['layers, from the inside out', client.layers],
    ['train on the floor at the centre back', client.train],
    ['hem off the floor in front', client.offFloor],
    ['Fasten the waist stay first, then the closure', client.care('bodice')],
    ['Fasten the under edge inside first, then the upper one', client.care('wrap')],
    ['Press from the inside through a cloth', client.care('skirt')],
    ['then outwards, left and right in turn', client.bustleSteps(true, 5)],
    ['then outwards, 5 pairs in all', client.bustleSteps(false, 5)],
    [
      'Distances along the hem from the centre front, on her left and on her right; up is +, down is -',
      Object.values(jobSheet).filter((own) => typeof own === 'string'),
    ],
    [
      'of the gore’s width at that level, or of its half’s on the fold, from its front edge',
      Object.values(jobSheet).filter((own) => typeof own === 'string'),
    ],
    [
      'how far the bodice’s edge lies below the level waist',
      Object.values(bench).filter((own) => typeof own === 'string'),
    ],
    ['Layers and parts, the outermost first', bench.layersCaption],
    ['Eyelets from the upper end of the edge', bodiceSheet.eyelets('A')],
    [
      'A of it above the waist seam',
      Object.values(notions)
        .flatMap((own) =>
          typeof own === 'function' ? [String((own as (...names: string[]) => unknown)('A', 'B'))] : [],
        )
        .join('\n'),
    ],
    [
      'zip through bodice and skirt, A from the upper edge down',
      Object.values(notions)
        .flatMap((own) =>
          typeof own === 'function' ? [String((own as (...names: string[]) => unknown)('A', 'B'))] : [],
        )
        .join('\n'),
    ],
    ['hook and bar, 1, above the zip', notions.hook],
  ])('%s', (says, all) => expect([all].flat().join('\n')).toContain(says));

  it('every way of fastening a wrap has two at its upper edge and one inside', () => {
    const said = JSON.stringify(notions).match(
      /for the wrap: two at the upper edge and one inside for the under edge/g,
    );
    expect(said).toHaveLength(3);
  });

  it('heads stand in the order of what is under them', () => {
    expect(chalk.cornerHeads).toEqual(['', 'down', 'across']);
    expect(chalk.levelHeads).toEqual({
      down: 'down',
      columns: ['cut left', 'seam left', 'seam right', 'cut right'],
    });
    expect(chalk.inner.heads).toEqual(['line', 'from: down', 'across', 'to: down', 'across']);
    expect(chalk.bustle.heads).toEqual(['bustle: down, across', 'anchor', 'pick-up']);
    expect(chalk.inner.names).toEqual({
      'fold-line': 'fold',
      'placement-line': 'bring the outer fold here',
      'dart-leg-line': 'leg of a dart',
      'dart-fold-line': 'fold of a dart',
      'tuck-fold-line': 'fold of a tuck',
      'tuck-stitch-line': 'stitching of a tuck',
    });
    expect(jobSheet.levellingHeads).toEqual(['along', 'left', 'right']);
    expect(jobSheet.cuttingHeads.slice(0, 4)).toEqual(['piece', 'layers', 'cut', 'across × down']);
    expect(jobSheet.bustleHeads).toEqual([
      'seam',
      'points',
      'anchor',
      'pick-up',
      'lift',
      'loop ends',
      'above the hem',
    ]);
    expect(bench.clothHeads).toEqual(['cloth', 'wide', 'to buy', 'for', 'to know']);
    expect(bodiceSheet.levelHeads).toEqual([
      'level',
      'above the waist',
      'body',
      'laced in',
      'left open',
      'sewn',
    ]);
    expect(bodiceSheet.boneHeads).toEqual(['along', 'casing', 'bone', 'count']);
    expect([bodiceSheet.upper, bodiceSheet.lower]).toEqual(['upper edge', 'waist seam']);
    expect(measuresForm.girthHeads).toEqual(['level', 'all round', 'over the front', 'from the waist']);
    expect(measuresForm.underHeads).toEqual(['level', 'down from the waist', 'all round']);
    expect(measuresForm.who).toEqual(['code', 'date', 'unit', 'measured by']);
    expect(client.approved).toEqual(['approved', 'date']);
    expect(client.priceHeads).toEqual(['what', 'amount']);
    expect(ENGLISH_BUYING.wayHeads).toEqual(['  way', 'length', 'used', 'buy', 'cost', '']);
    expect(ENGLISH_BUYING.heads).toEqual(['to buy', 'length', 'cost']);
    expect(screen.buyHeads).toEqual(['layers', 'cloth', 'width', 'lay', 'buy', 'cost']);
    expect(screen.calendarHeads).toEqual(['what', 'date', 'days before']);
    expect([screen.zoomIn, screen.zoomOut, screen.copy, screen.mirrored]).toEqual([
      'larger',
      'smaller',
      'copy',
      'mirrored',
    ]);
    expect(screen.levels).toEqual({ error: 'Wrong', warning: 'Look at this', note: 'To know' });
  });

  it('how a cloth lies is called alike in every place', () => {
    expect(ENGLISH_LAY.folds).toEqual({
      single: 'single',
      lengthwise: 'folded lengthwise',
      crosswise: 'folded crosswise',
    });
    const ways = ['single', 'lengthwise', 'crosswise'] as const;
    expect(ways.map((fold) => layWords([{ fold, gores: [] }]))).toEqual([
      'single throughout',
      'folded lengthwise throughout',
      'folded crosswise throughout',
    ]);
    expect(
      layWords([
        { fold: 'lengthwise', gores: ['a', 'b', 'c'] },
        { fold: 'single', gores: ['d', 'e'] },
      ]),
    ).toBe('a to c folded lengthwise, then d and e single');
    expect(layWords('layers-end-to-end')).toBe('each layer by itself, end to end');
    expect([ENGLISH_LAY.topsThisWay, ENGLISH_LAY.topsEitherWay]).toEqual([
      'tops this way',
      'tops either way',
    ]);
  });
});
