import { beforeAll, describe, expect, it } from 'vitest';
import { draftedTrue } from './drafted.ts';
import { factsOf } from './facts.ts';
import { LANTERN } from './lantern-spec.ts';
import type { Report } from './measure/gown.ts';
import { untruths } from './truth/untruths.ts';

/** Changes the numbers of the first path after a mark: the number's place in `d`, the number, the new number. */
function redrawn(
  svg: string,
  marks: readonly string[],
  change: (place: number, value: number) => number,
): string {
  let at = 0;
  for (const mark of marks) at = svg.indexOf(mark, at);
  const start = svg.indexOf(' d="', at) + 4;
  const end = svg.indexOf('"', start);
  let place = 0;
  const d = svg.slice(start, end).replace(/-?\d+(?:\.\d+)?/g, (n) => String(change(place++, Number(n))));
  return svg.slice(0, start) + d + svg.slice(end);
}

/** Moves the first path after a mark to the right; an arc's radii and flags stay. */
function aside(svg: string, marks: readonly string[], by: number): string {
  let at = 0;
  for (const mark of marks) at = svg.indexOf(mark, at);
  const start = svg.indexOf(' d="', at) + 4;
  const end = svg.indexOf('"', start);
  const d = svg.slice(start, end).replace(/([MLCA])([^MLCAZ]*)/g, (_, command: string, rest: string) => {
    const numbers = rest.match(/-?\d+(?:\.\d+)?/g)!.map(Number);
    const moved = numbers.map((n, i) =>
      command === 'A' ? (i === 5 ? n + by : n) : i % 2 === 0 ? n + by : n,
    );
    return `${command}${moved.join(' ')}`;
  });
  return svg.slice(0, start) + d + svg.slice(end);
}

const path = (kind: string, edge: string) => [`class="${kind}"`, `data-edge="${edge}"`];

describe('faults planted in a true pattern', () => {
  let svg = '';
  let report: Report;
  const facts = factsOf(LANTERN);
  beforeAll(async () => {
    ({ svg, report } = await draftedTrue(LANTERN));
  });

  const faults: readonly [string, (svg: string) => string, RegExp][] = [
    [
      'a seam 0.3 mm long',
      (s) =>
        redrawn(s, ['data-gore="side"', ...path('sew', 'side/side-back')], (place, n) =>
          place === 3 ? n + 0.3 : n,
        ),
      /corners|seam|length/,
    ],
    [
      'a hem a quarter of a degree off at a seam',
      (s) => redrawn(s, ['data-gore="side"', ...path('sew', 'hem')], turnedStart(0.25)),
      /hem angles/,
    ],
    [
      'a waist a quarter of a degree off at a seam',
      (s) => redrawn(s, ['data-gore="side-front"', ...path('sew', 'waist')], turnedStart(0.25)),
      /waist angles/,
    ],
    ['a cut line 0.2 mm aside', (s) => aside(s, ['data-gore="back"', 'class="cut"'], 0.2), /allowance/],
    [
      'a notch half a millimetre low',
      (s) =>
        redrawn(s, ['data-gore="back"', ...path('notch', 'side-back/back')], (place, n) =>
          place % 2 === 1 ? n + 0.5 : n,
        ),
      /notch/,
    ],
    [
      'a grain half a degree aslant',
      (s) => redrawn(s, ['data-gore="side"', 'class="grain"'], (place, n) => (place === 2 ? n + 6 : n)),
      /grain/,
    ],
    [
      'a piece in the wrong order',
      (s) =>
        s
          .replaceAll('data-gore="back"', 'data-gore="x"')
          .replaceAll('data-gore="front"', 'data-gore="back"')
          .replaceAll('data-gore="x"', 'data-gore="front"'),
      /edge/,
    ],
  ];
  for (const [what, spoil, complaint] of faults) {
    it(`shows ${what}`, () => {
      const bad = spoil(svg);
      expect(bad).not.toBe(svg);
      const found = attempt(() => untruths(bad, report, facts));
      expect(found.join('\n')).toMatch(complaint);
    });
  }

  it('shows a report that differs from the drawing', () => {
    const lied = {
      ...report,
      seams: report.seams.map((seam) => ({ ...seam, hemAngle: seam.hemAngle + 0.2 })),
    };
    expect(untruths(svg, lied, facts).join('\n')).toMatch(/hem angle/);
  });

  it('shows a top that is not what the spec says', () => {
    const other = factsOf(LANTERN.replace('top: 8.6', 'top: 8.62'));
    expect(untruths(svg, report, other).join('\n')).toMatch(/side: top/);
  });
});

/** Turns the first control point of a cubic about its start. */
function turnedStart(degrees: number) {
  let [x, y, along] = [0, 0, 0];
  const angle = (degrees * Math.PI) / 180;
  return (place: number, n: number) => {
    if (place === 0) x = n;
    if (place === 1) y = n;
    if (place === 2) along = n - x;
    if (place === 2) return n;
    return place === 3 ? y + (n - y) + along * Math.tan(angle) : n;
  };
}

function attempt(measure: () => string[]): string[] {
  try {
    return measure();
  } catch (error) {
    return [String(error)];
  }
}
