import type { Block } from '../page/page-blocks.ts';
import type { PaperInput } from './paper-input.ts';

/** The order of making: a box to tick for each step, where to hold, and cautions where the step is. */
export function orderBlocks({ words, workroom }: PaperInput): Block[] {
  const { jobSheet: text } = words;
  return [
    { kind: 'heading', level: 2, text: text.order },
    ...workroom.order.flatMap((step): Block[] => {
      const { does, notes, holds } = words.step(step.work);
      const item: Block = {
        kind: 'item',
        tick: true,
        number: String(step.number),
        text: does,
        notes: [...notes, ...holds.map((hold) => `${text.hold} ${hold}`)],
      };
      const cautions = step.cautions.map(
        (caution): Block => ({
          kind: 'caution',
          lead: text.caution,
          text: words.caution(caution, workroom.weight.inAll),
        }),
      );
      // One column, so that no page end parts a step from its cautions.
      return cautions.length === 0 ? [item] : [{ kind: 'columns', columns: [[item, ...cautions]] }];
    }),
  ];
}

/** Pins on the hem lie this far apart when it is levelled, mm (textbook: 7.5 cm). */
const PIN_SPACING = { mm: 75, cm: 75, in: 76.2 } as const;

/** Columns of the record side by side. */
const RECORD_COLUMNS = 3;

/** A blank record of the levelled hem: every 7.5 cm from the centre front, on both sides of her. */
export function levellingBlocks({ words, workroom, gown }: PaperInput): Block[] {
  const { jobSheet: text } = words;
  const half = workroom.skirt.hem / 2;
  const spacing = PIN_SPACING[gown.units];
  const pins = Array.from({ length: Math.floor(half / spacing + 1e-9) + 1 }, (_, i) => i * spacing);
  const rows = Math.ceil(pins.length / RECORD_COLUMNS);
  const cell = (index: number): string[] => {
    const pin = pins[index];
    return pin === undefined ? ['', '', ''] : [words.number(pin), '', ''];
  };
  return [
    { kind: 'heading', level: 2, text: text.levelling },
    {
      kind: 'table',
      // In the caption, which no page end parts from the table.
      caption: `${text.levellingText} ${words.units}`,
      heads: Array.from({ length: RECORD_COLUMNS }, () => text.levellingHeads).flat(),
      align: Array.from({ length: RECORD_COLUMNS }, () => ['end', 'end', 'end'] as const).flat(),
      shares: Array.from({ length: 3 * RECORD_COLUMNS }, () => 1),
      rows: Array.from({ length: rows }, (_, row) =>
        Array.from({ length: RECORD_COLUMNS }, (_unused, column) => cell(row + column * rows)).flat(),
      ),
    },
  ];
}
