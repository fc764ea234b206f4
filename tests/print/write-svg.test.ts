import { Resvg } from '@resvg/resvg-js';
import SVGPathCommander from 'svg-path-commander';
import { expect, test } from 'vitest';
import type { Drawing } from '../../src/print/drawing.ts';
import { writeSvg } from '../../src/print/svg/write-svg.ts';

const HOSTILE = `</text><script>alert(1)</script>&"'\u0000\u0007\u202eevil\ud800]]>`;

function drawing(marks: Drawing['marks']): Drawing {
  return { x: -5, y: 10, width: 210, height: 297, marks };
}

test('width and height in mm are the numbers of the viewBox', () => {
  const svg = writeSvg(drawing([]));
  expect(svg).toContain('width="210mm" height="297mm" viewBox="-5 10 210 297"');
});

test('arcs stay arcs and end where they should', () => {
  const arc = { kind: 'arc', centre: { x: 0, y: 0 }, radius: 300, start: 0.2, sweep: -0.7 } as const;
  const svg = writeSvg(drawing([{ kind: 'path', runs: [[arc]], closed: false, line: { width: 0.3 } }]));
  const d = / d="([^"]+)"/.exec(svg)![1]!;
  expect(d).toMatch(/^M[-\d. ]+A300 300 0 0 0 [-\d. ]+$/);
  // Length of an arc is radius times angle; measured by another library.
  expect(SVGPathCommander.getTotalLength(d)).toBeCloseTo(300 * 0.7, 2);
  const end = SVGPathCommander.getPointAtLength(d, 300 * 0.7);
  expect(end.x).toBeCloseTo(300 * Math.cos(-0.5), 3);
  expect(end.y).toBeCloseTo(300 * Math.sin(-0.5), 3);
});

test('a whole circle is drawn whole', () => {
  const circle = { kind: 'arc', centre: { x: 50, y: 50 }, radius: 20, start: 1, sweep: 2 * Math.PI } as const;
  const svg = writeSvg(drawing([{ kind: 'path', runs: [[circle]], closed: true, line: { width: 0.3 } }]));
  const d = / d="([^"]+)"/.exec(svg)![1]!;
  expect(SVGPathCommander.getTotalLength(d)).toBeCloseTo(2 * Math.PI * 20, 2);
});

test('an arc that is nearly straight becomes a cubic that lies on it', () => {
  // Sagitta of a chord c on radius R is c²/8R: 1000 mm on 200 m, 0.625 mm.
  const arc = {
    kind: 'arc',
    centre: { x: 0, y: 200_000 },
    radius: 200_000,
    start: -Math.PI / 2 - 0.0025,
    sweep: 0.005,
  } as const;
  const svg = writeSvg(drawing([{ kind: 'path', runs: [[arc]], closed: false, line: { width: 0.3 } }]));
  const d = / d="([^"]+)"/.exec(svg)![1]!;
  expect(d).toContain('C');
  const box = SVGPathCommander.getPathBBox(d);
  expect(box.height).toBeCloseTo(0.625, 3);
  expect(box.width).toBeCloseTo(1000, 2);
});

test('a spec’s text can neither break out nor hide: escaped, its controls and direction marks gone', () => {
  const svg = writeSvg({
    ...drawing([
      { kind: 'text', text: HOSTILE, at: { x: 0, y: 0 }, size: 4, anchor: 'start' },
      { kind: 'group', marks: [], class: 'piece', data: { gore: HOSTILE } },
    ]),
    title: HOSTILE,
  });
  expect(svg).not.toContain('<script');
  expect(svg).not.toMatch(/[^\P{Cc}\n]|[\u202a-\u202e]/u);
  expect(svg.match(/&lt;script&gt;/g)).toHaveLength(3);
  // Another library parses it as XML.
  expect(new Resvg(svg, { font: { loadSystemFonts: false } }).width).toBeGreaterThan(700);
});

test('a number that is no number stops the drawing rather than spoiling it', () => {
  const line = { kind: 'line', from: { x: 0, y: 0 }, to: { x: Number.NaN, y: 1 } } as const;
  expect(() =>
    writeSvg(drawing([{ kind: 'path', runs: [[line]], closed: false, line: { width: 1 } }])),
  ).toThrow('NaN');
});

test('a drawing within a drawing is scaled, moved and clipped', () => {
  const black: Drawing = {
    x: 0,
    y: 0,
    width: 10,
    height: 10,
    marks: [
      {
        kind: 'path',
        closed: true,
        fill: 0,
        line: { width: 0 },
        runs: [
          [
            { kind: 'line', from: { x: 0, y: 0 }, to: { x: 10, y: 0 } },
            { kind: 'line', from: { x: 10, y: 0 }, to: { x: 10, y: 10 } },
            { kind: 'line', from: { x: 10, y: 10 }, to: { x: 0, y: 10 } },
          ],
        ],
      },
    ],
  };
  const svg = writeSvg({
    x: 0,
    y: 0,
    width: 100,
    height: 100,
    marks: [
      {
        kind: 'use',
        drawing: black,
        offset: { x: 20, y: 30 },
        scale: { x: 4, y: 2 },
        clip: { x: 20, y: 30, width: 30, height: 40 },
      },
    ],
  });
  const image = new Resvg(svg, { fitTo: { mode: 'width', value: 100 }, background: 'white' }).render();
  const isBlack = (x: number, y: number) => image.pixels[4 * (y * image.width + x)]! < 128;
  expect(isBlack(21, 31)).toBe(true);
  expect(isBlack(48, 48)).toBe(true);
  expect(isBlack(52, 48)).toBe(false);
  expect(isBlack(48, 52)).toBe(false);
  expect(isBlack(18, 40)).toBe(false);
});
