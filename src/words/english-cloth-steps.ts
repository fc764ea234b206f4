import type { ClothWork } from '../making/order/work-on-cloth.ts';
import { stripWords } from './english-strips.ts';
import { type StepWriters, sentenceStart, text } from './step-text.ts';

/** From the scraps to the marked pieces, in words. */
export const CLOTH_WRITERS: StepWriters<ClothWork> = {
  'test-scraps': ({ cloths }, { list, percent, usual }) =>
    text('On a scrap of each cloth try the marking pen, the needle, the stitch and the steam.', [
      `Cloths: ${list(cloths.map((cloth) => cloth.name))}. Does the mark come out, does the needle pull, does water spot?`,
      `Measure a square of ${usual.swatch} of each before and after steam, along and across.`,
      cloths.some((cloth) => cloth.shrinkage > 0) &&
        `Counted on: ${list(cloths.filter((cloth) => cloth.shrinkage > 0).map((cloth) => `${cloth.name} ${percent(cloth.shrinkage)}`))}. If it is more, buy more before cutting.`,
    ]),
  shrink: ({ cloth, shrinkage }, { percent }) =>
    text(`Shrink the ${cloth} before it is laid; ${percent(shrinkage)} is counted on in the length to buy.`, [
      'Press it flat along the grain and let it cool before it is moved.',
    ]),
  'cut-own-edges': ({ cloth, edging, depth }, { length }) =>
    text(
      `Cut the ${edging} off both edges of the ${cloth} first, inside the selvedge${depth === undefined ? '' : `, ${length(depth)} deep`}.`,
      ['The lay is planned on the narrower cloth that is left.'],
    ),
  cut: ({ cloth, layers, strips, oneWay, bias, stretch, slippery, roughCut }, { length, list }) =>
    text(
      `Cut the ${cloth} by its lay${layers.length === 1 && layers[0] === cloth ? '' : `: ${list(layers)}`}.`,
      [
        strips.length > 0 && `${sentenceStart(list(strips))}: strips, cut as one run.`,
        oneWay && 'One way: all tops point the same way.',
        bias.length > 0 &&
          `${sentenceStart(list(bias))}: on the bias. Let the cloth lie flat overnight; the arrow on each piece along the selvedge, one of each pair turned over, so that both her sides hang alike. Stay its edges before it is lifted.`,
        slippery && 'Slippery: lay it single on paper, pin at the edges, cut through both.',
        stretch && 'Let it lie loose overnight before it is cut, and never pull it to the pattern.',
        ...roughCut.map(
          ({ layers: own, gores, depth }) =>
            `${layers.length === own.length ? sentenceStart(list(gores)) : `${sentenceStart(list(gores))} of ${list(own)}`} ${gores.length === 1 ? 'is' : 'are'} cut ${length(depth)} longer at the hem; that comes off after hanging.`,
        ),
      ],
    ),
  mark: ({ sheers, zipEnds, gaps, bustle }, { bustleAt, length, list, station, number, unit }) =>
    text('Mark every piece before it is lifted: notches, centre front, centre back.', [
      zipEnds !== undefined &&
        `Opening at ${station(zipEnds.at, zipEnds.side)}: ${zipEnds.starts > 0 ? `start ${length(zipEnds.starts)} and ` : ''}stop ${length(zipEnds.stops)} below the waist seam.`,
      ...gaps.map(
        (gap) =>
          `Gap in the ${gap.layer} at ${station(gap.at)}: ${gap.from === undefined ? `${length(gap.length)} long` : `from ${length(gap.from)} to ${length(gap.from + gap.length)} below the waist seam`}.`,
      ),
      bustle.length > 0 &&
        `Bustle, ${unit} below the waist seam: ${bustle.map((point) => `${bustleAt(point)}${point.side === undefined ? '' : `, her ${point.side},`} anchor ${number(point.anchor)}, pick-up ${number(point.pickUp)}`).join('; ')}.`,
      sheers.length > 0 && `On ${list(sheers)} mark inside the allowance, with thread.`,
    ]),
  'stay-edges': ({ tapes }, basics) =>
    text(
      'Stay-stitch the waist edge of every layer just inside its allowance, from the sides towards the centre.',
      tapes.map(
        (tape) => `Sew ${stripWords(tape, basics)}, along the ${tape.layer}’s ${basics.edge(tape.along)}.`,
      ),
    ),
};
