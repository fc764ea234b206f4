import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Source } from '../../src/diagnostics/diagnostic.ts';
import type { DraftedGown } from '../../src/drafted-gown.ts';
import { shapeText, TELLS_NO_SHAPE } from '../../src/gown/shape-text.ts';
import { readSpec } from '../../src/gown-file/read-spec.ts';
import { hangTask } from '../../src/hanging/hang-task.ts';
import { draft, gownAsked } from '../../src/pipeline.ts';

const TEXT = readFileSync('examples/lantern.yaml', 'utf8');

/** The example with texts in it replaced, each of which has to be there. */
function lantern(replaced: readonly (readonly [string, string])[] = []): Source {
  const text = replaced.reduce((left, [from, to]) => {
    expect(left).toContain(from);
    return left.replaceAll(from, to);
  }, TEXT);
  return { name: 'lantern.yaml', text };
}

function drafted(source: Source): DraftedGown {
  const { gown, diagnostics } = draft(source);
  if (gown === undefined) throw new Error(diagnostics.map(({ message }) => message).join('\n'));
  return gown;
}

const hangsAs = (source: Source) => shapeText(gownAsked(readSpec(source).spec!).gown!);

/** By what is left out of what hangs: a change of it wherever the example has it. */
const NO_SHAPE: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  content: [],
  client: [['client: LAN-07', 'client: LAN-08']],
  notes: [
    ['Reception with dancing', 'Dinner'],
    ['The join is at', 'Look at the join at'],
  ],
  labour: [['rate: 23.00', 'rate: 31.50']],
  notions: [['petersham, length: 80', 'petersham, length: 90']],
  currency: [['currency: GBP', 'currency: EUR']],
  dates: [['event: 2027-06-12', 'event: 2027-07-01']],
  paper: [['size: a4', 'size: letter']],
  price: [
    ['24.50', '31.00'],
    ['11.20', '9.80'],
    ['3.40', '2.10'],
  ],
  pricedPer: [['sold-by: 0.25m', 'sold-by: 1/4yd']],
  soldBy: [['sold-by: 0.1m', 'sold-by: 0.5m']],
  supplier: [['supplier: S-4', 'supplier: S-5']],
  colour: [['colour: smoke', 'colour: ash']],
  dyeLot: [['dye-lot: 0417', 'dye-lot: 0518']],
};

const hangs = hangsAs(lantern());

describe('what decides the shape of a gown', () => {
  it('leaves out nothing that the cloth is cut or falls by', () => {
    expect(Object.keys(NO_SHAPE).sort()).toEqual([...TELLS_NO_SHAPE].sort());
    const gown = drafted(lantern());
    const other = drafted(lantern(Object.values(NO_SHAPE).flat()));
    expect(other.asked.content).not.toBe(gown.asked.content);
    expect(shapeText(other.asked) === shapeText(gown.asked)).toBe(true);
    expect(hangTask(other)).toEqual(hangTask(gown));
  });

  it.each([
    ['a flare', 'half-flare: 17deg', 'half-flare: 17.5deg'],
    ['a length', 'centre-back: 176', 'centre-back: 176.1'],
    ['how heavy the cloth is', 'weight: 45', 'weight: 46'],
    ['what is worn under it', 'hoop: 310', 'hoop: 311'],
    ['a loop of the bustle', 'anchor: 14', 'anchor: 15'],
    ['how deep the edging is', 'depth: 6', 'depth: 7'],
    ['which layer is outermost', 'hem: raw, edging: galloon', 'hem: raw, shorter: 1, edging: galloon'],
  ])('tells %s', (_, from, to) => {
    expect(hangsAs(lantern([[from, to]])) === hangs).toBe(false);
  });

  it('tells the panel of a gore that is called like what tells no shape', () => {
    const named = (panel: string) =>
      hangsAs(
        lantern([
          ['side-back: 7.9', `notes: ${panel}`],
          ['side-back', 'notes'],
        ]),
      );
    expect(named('7.9') === named('7.91')).toBe(false);
  });
});
