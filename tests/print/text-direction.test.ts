import { expect, test } from 'vitest';
import { visualRuns } from '../../src/print/text/text-direction.ts';

// Expected orders by hand from the Unicode bidirectional algorithm (UAX #9), rules W2, N0, L2.
const SHALOM = 'שלום';
const OLAM = 'עולם';

test('text that runs from left to right is one run', () => {
  expect(visualRuns('Lantern (LAN-07)')).toEqual([{ text: 'Lantern (LAN-07)', rightToLeft: false }]);
});

test('a name from right to left keeps its place in the line', () => {
  expect(visualRuns(`gown ${SHALOM} ${OLAM}, front`).map((run) => run.text)).toEqual([
    'gown ',
    `${SHALOM} ${OLAM}`,
    ', front',
  ]);
});

test('numbers within it keep their own order and stand to the left of what comes before', () => {
  expect(visualRuns(`${SHALOM} 12.5 ${OLAM}`).map((run) => run.text)).toEqual([
    ` ${OLAM}`,
    '12.5',
    `${SHALOM} `,
  ]);
});

test('brackets turn with the text that they stand in, and only then', () => {
  expect(visualRuns(`${SHALOM} (${OLAM})`).map((run) => run.text)).toEqual([`${SHALOM} )${OLAM}(`]);
  expect(visualRuns(`x (${SHALOM}) y`).map((run) => run.text)).toEqual(['x (', SHALOM, ') y']);
});
