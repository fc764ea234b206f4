import type { BustlePoint } from '../../making/bustle/bustle.ts';
import type { EdgingOfGore } from '../../making/edging/edging-facts.ts';
import type { Block } from '../page/page-blocks.ts';
import { flounceAtHem } from './join-blocks.ts';
import type { PaperInput } from './paper-input.ts';

/** Hems, strips, edging, petticoat and bustle. */
export function trimBlocks(input: PaperInput): Block[] {
  const { words, workroom } = input;
  const { jobSheet: text } = words;
  return [
    { kind: 'heading', level: 2, text: text.hems },
    hemTable(input),
    ...(workroom.strips.length === 0 ? [] : [stripTable(input)]),
    ...edgingBlocks(input),
    ...walkingBlocks(input),
    ...bustleBlocks(input),
  ];
}

/** Nobody sees less on a hem, mm. */
const LEAST_EASE = 1;

function hemTable({ words, workroom, gown }: PaperInput): Block {
  const { jobSheet: text, length, number } = words;
  return {
    kind: 'table',
    heads: text.hemHeads,
    align: ['start', 'start', 'end', 'end', 'start'],
    rows: workroom.hems.map((hem) => [
      hem.layer,
      flounceAtHem(gown, hem.layer) ?? words.finishes[hem.finish],
      number(hem.length),
      number(hem.allowance),
      [
        hem.shorter > 0 ? text.shorter(length(hem.shorter)) : '',
        hem.surplus === undefined || hem.surplus.toEase < LEAST_EASE
          ? ''
          : text.toEase(length(hem.surplus.toEase), words.percent(hem.surplus.share)),
        hem.partner === undefined ? '' : text.baggedTo(hem.partner),
      ]
        .filter((part) => part !== '')
        .join('; '),
    ]),
  };
}

function stripTable({ words, workroom }: PaperInput): Block {
  const { jobSheet: text, number, length } = words;
  return {
    kind: 'table',
    heads: text.stripHeads,
    align: ['start', 'start', 'end', 'end', 'end'],
    rows: workroom.strips.map((strip) => [
      strip.width === undefined
        ? words.stripName(strip.kind)
        : `${words.stripName(strip.kind)}, ${length(strip.width)}`,
      `${strip.layer}, ${words.edge(strip.along)}`,
      number(strip.length.length),
      strip.isCut ? text.cutOnBias : number(strip.buy),
      strip.length.drawnIn === undefined || strip.length.drawnIn === 0 ? '' : number(strip.length.drawnIn),
    ]),
  };
}

function edgingBlocks(input: PaperInput): Block[] {
  const { words, workroom } = input;
  const { edging } = workroom;
  if (edging === undefined) return [];
  const { edgingRows: text, length } = words;
  const rows: string[][] = [];
  for (const { layer, length: round, plan } of edging.hems) {
    rows.push([text.round(layer), length(round)]);
    if (plan === undefined) continue;
    rows.push([text.repeats, text.repeatsText(plan.repeats, length(edging.repeat!), length(plan.length))]);
    rows.push([text.ease, text.easeWords(length(plan.ease), length(plan.easePerRepeat))]);
  }
  rows.push([text.start, words.station(edging.start, edging.side)]);
  if (edging.repeat !== undefined) rows.push([text.buy, text.buyText(length(edging.buy))]);
  if (edging.own?.supply !== undefined && edging.own.bought !== undefined) {
    const { supply, cloth, bought } = edging.own;
    rows.push([text.supply, text.supplyText(length(supply), cloth, length(bought))]);
  }
  if (edging.scallops !== undefined) {
    rows.push([
      text.scallops,
      text.scallopsText(length(edging.scallops.lowPoints), length(edging.scallops.highPoints)),
    ]);
  }
  return [
    { kind: 'heading', level: 3, text: text.title(edging.name) },
    { kind: 'table', heads: ['', ''], rows, shares: [2, 5] },
    ...edging.hems.flatMap(({ layer, byGore }) => easedByGore(input, layer, byGore)),
  ];
}

/** What the curve of each gore's hem asks of the edging. */
function easedByGore({ words }: PaperInput, layer: string, byGore: readonly EdgingOfGore[]): Block[] {
  if (byGore.length === 0) return [];
  const { edgingRows: text, number } = words;
  return [
    {
      kind: 'table',
      caption: text.byGoreCaption(layer, words.unit),
      heads: text.byGoreHeads,
      align: ['start', 'end', 'end', 'end', 'end'],
      rows: byGore.map(({ gore, side, length, lap, lapPerMotif, easeOuter }) => [
        side === undefined ? gore : `${gore}, ${side}`,
        number(length),
        number(lap),
        lapPerMotif === undefined ? '' : number(lapPerMotif),
        easeOuter < LEAST_EASED ? '' : number(easeOuter),
      ]),
    },
  ];
}

/** Less is not seen, mm. */
const LEAST_EASED = 0.5;

function walkingBlocks({ words, workroom }: PaperInput): Block[] {
  const { petticoat } = workroom;
  if (petticoat === undefined) return [];
  const { walkingRows: text, length } = words;
  const rows: string[][] = [];
  if (petticoat.offFloor !== undefined)
    rows.push([text.offFloor, text.offFloorText(length(petticoat.offFloor))]);
  const { hoop } = petticoat;
  if (hoop !== undefined) {
    rows.push([text.hoop, text.hoopText(length(hoop.round), length(hoop.offFloor))]);
    if (hoop.sweep !== undefined) {
      rows.push([text.sweep, text.sweepText(length(hoop.sweep.sweep), hoop.sweep.ratio.toFixed(2))]);
    }
    rows.push([text.least, text.leastText(length(hoop.least), hoop.withTrain)]);
    if (hoop.slant !== undefined && hoop.height !== undefined) {
      rows.push([text.slant, text.slantText(length(hoop.slant), length(hoop.height))]);
    }
  }
  if (rows.length === 0) return [];
  return [
    {
      kind: 'heading',
      level: 2,
      text: hoop === undefined ? words.jobSheet.walking : words.jobSheet.overHoop,
    },
    { kind: 'table', heads: ['', ''], rows, shares: [2, 5] },
  ];
}

function bustleBlocks(input: PaperInput): Block[] {
  const { words, workroom } = input;
  const { bustle } = workroom;
  if (bustle === undefined || bustle.points.length === 0) return [];
  const { jobSheet: text, length } = words;
  const { more = [] } = bustle;
  const onGore = [...bustle.points, ...more].some(({ gore }) => gore !== undefined);
  return [
    { kind: 'heading', level: 2, text: text.bustle },
    {
      kind: 'paragraph',
      text: text.bustleLine(bustle.kind === 'over', bustle.number, length(bustle.clearance)),
    },
    bustleTable(input, bustle.points, text.bustleCaption),
    ...(more.length === 0 ? [] : [bustleTable(input, more, text.bustleMore)]),
    ...(onGore ? [{ kind: 'paragraph', text: text.bustleOnGore } as const] : []),
    ...(bustle.advised ? [{ kind: 'paragraph', text: text.bustleAdvised } as const] : []),
  ];
}

function bustleTable({ words }: PaperInput, points: readonly BustlePoint[], caption: string): Block {
  const { jobSheet: text, number } = words;
  const onGore = points.some(({ gore }) => gore !== undefined);
  return {
    kind: 'table',
    caption,
    heads: onGore ? [text.bustleWhere, ...text.bustleHeads.slice(1)] : text.bustleHeads,
    align: ['start', 'end', 'end', 'end', 'end', 'end', 'end'],
    rows: points.map((point) => [
      words.closureRows.side(words.bustleAt(point), point.side),
      String(point.copies),
      ...[point.anchor, point.pickUp, point.lift, point.loopBottom, point.aboveHem].map(number),
    ]),
  };
}
