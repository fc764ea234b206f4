import type { Spec } from '../gown-file/spec.ts';
import type { LayPlan } from '../lay/plan/lay-plan.ts';
import { drawLay, type LayTitle, type LayWords, layFigure } from '../print/lay/lay-drawing.ts';
import type { LayFigure } from '../print/papers/paper-input.ts';
import { writeSvg } from '../print/svg/write-svg.ts';
import { lengthNumber, lengthText } from '../words/length-text.ts';

/** `lay-<layer>.svg` for every layer that can be laid. */
export function layFiles(spec: Spec, lays: readonly LayPlan[]): Map<string, string> {
  return new Map(
    lays.map((lay) => [`lay-${lay.layer}.svg`, writeSvg(drawLay(lay, layTitle(spec, lay), wordsOf(spec)))]),
  );
}

/** Room for a lay on a page of the papers, mm: its width less the margins, and so that two stand on a page. */
const ROOM = { margins: 36, height: 95 };

/** The lays as the job sheet shows them. */
export function layFigures(spec: Spec, lays: readonly LayPlan[], paperWidth: number): LayFigure[] {
  const room = { width: paperWidth - ROOM.margins, height: ROOM.height };
  return lays.map((lay) => ({
    layer: lay.layer,
    drawing: layFigure(lay, wordsOf(spec), room),
    caption: [captionOf(spec, lay), ...lay.remarks].join(' '),
  }));
}

/** What a lay is called, and what it comes to. */
export function layTitle(spec: Spec, lay: LayPlan): LayTitle {
  return { name: `${spec.gown}, ${lay.layer}`, says: captionOf(spec, lay) };
}

function captionOf(spec: Spec, { cloth, facts, way, length, buy, used, cutShort }: LayPlan): string {
  const say = (mm: number): string => lengthText(mm, spec.units);
  const share = `${Math.round(used * 100)} % used`;
  const mark = cutShort ? ' CUT SHORT' : '';
  return `${cloth}, ${say(facts.width)} wide, ${way}; lay ${say(length)}, buy ${say(buy)}${mark}, ${share}.`;
}

function wordsOf({ units }: Spec): LayWords {
  return { number: (mm) => lengthNumber(mm, units).replace(/\.0$/, ''), unit: units };
}
