import { inWords } from '../diagnostics/in-words.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { Gown } from '../gown/gown.ts';
import type { LayPlan, PlacedPiece } from '../lay/plan/lay-plan.ts';
import { drawLay, type LayTitle, layFigure } from '../print/lay/lay-drawing.ts';
import { sideOf } from '../print/lay/lay-piece-drawing.ts';
import type { LayFigure } from '../print/papers/paper-input.ts';
import { writeSvg } from '../print/svg/write-svg.ts';
import { ENGLISH_LAY, englishLay } from '../words/english-lay.ts';
import { layRemarks } from '../words/lay-remarks.ts';

/** `lay-<cloth>.svg` for every cloth, or `lay-<cloth>-<layer>.svg` where its layers are kept apart. */
export function layFiles(gown: Gown, lays: readonly LayPlan[]): Map<string, string> {
  return new Map(
    lays.map((lay) => [
      `lay-${lay.name}.svg`,
      writeSvg(drawLay(lay, layTitle(gown, lay), englishLay(gown.units))),
    ]),
  );
}

/** Room for a lay on a page of the papers, mm: its width less the margins, and so that two stand on a page. */
const ROOM = { margins: 36, height: 95 };

/** The lays as the job sheet shows them. */
export function layFigures(gown: Gown, lays: readonly LayPlan[], paperWidth: number): LayFigure[] {
  const room = { width: paperWidth - ROOM.margins, height: ROOM.height };
  return lays.map((lay) => ({
    name: lay.name,
    cloth: lay.cloth,
    layers: lay.layers,
    buy: lay.buy,
    drawing: layFigure(lay, englishLay(gown.units), room),
    caption: [captionOf(gown, lay), ...layRemarks(lay, gown.units), ...cuttingOrder(lay)].join(' '),
  }));
}

/** Of several layers: the number of each piece, as the smaller ones have no room for their name. */
function cuttingOrder({ layers, pieces }: LayPlan): string[] {
  if (layers.length < 2) return [];
  const order = layers.map((layer) => {
    const cuts = new Map<number, PlacedPiece[]>();
    for (const piece of pieces.filter((one) => one.layer === layer))
      cuts.set(piece.number, [...(cuts.get(piece.number) ?? []), piece]);
    return `${layer}: ${[...cuts].map(([number, plies]) => `${number} ${cutName(plies)}`).join(', ')}`;
  });
  return [ENGLISH_LAY.cuttingOrder(order)];
}

/** `side left`, or `side left and right` where both are cut at once. */
function cutName(plies: readonly PlacedPiece[]): string {
  const { gore, part } = plies[0]!;
  const sides = plies.flatMap((ply) => sideOf(ply) ?? []);
  const side = sides.length === 0 ? [] : [inWords(sides)];
  return [gore, ...side, ...(part === undefined ? [] : [`(${part})`])].join(' ');
}

/** What a lay is called, and what it comes to. */
export function layTitle(gown: Gown, lay: LayPlan): LayTitle {
  return { name: `${gown.name}, ${lay.name}`, says: captionOf(gown, lay) };
}

function captionOf(
  { units }: Gown,
  { cloth, layers, facts, way, length, buy, used, cutShort }: LayPlan,
): string {
  const say = (mm: number): string => tapeText(mm, units);
  return ENGLISH_LAY.caption(
    inWords(layers),
    cloth,
    say(facts.width),
    ENGLISH_LAY.way(way),
    say(length),
    `${say(buy)}${cutShort ? ENGLISH_LAY.cutShort : ''}`,
    used,
  );
}
