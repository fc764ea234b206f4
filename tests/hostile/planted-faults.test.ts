import { deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { faultsOfCsv } from './faults-of-csv.ts';
import { faultsOfFindings } from './faults-of-findings.ts';
import { faultsOfHtml } from './faults-of-html.ts';
import { faultsOfPdf } from './faults-of-pdf.ts';
import { faultsOfReport } from './faults-of-report.ts';
import { faultsOfSvg } from './faults-of-svg.ts';

/** What looks through the outputs is itself given outputs with a fault in each, and one without. */

const svg = (inside: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="10mm" height="10mm" viewBox="0 0 10 10">\n${inside}\n</svg>\n`;

describe('SVG', () => {
  it('as it should be', () => {
    expect(
      faultsOfSvg(
        svg('<g class="piece" data-gore="a &lt; b"><path d="M0 0L1.5 -2Z" stroke-width="0.3"/></g>'),
      ),
    ).toEqual([]);
  });

  it.each([
    ['<text x="1" y="1" font-size="3">a < b</text>'],
    ['<text x="1" y="1" font-size="3">a & b</text>'],
    ['<text x="1" y="1" font-size="3">&lt;</txt>'],
    ['<text x="1" y="1" font-size="3">\u001b[2J</text>'],
    ['<text x="1" y="1" font-size="3">\u202eback</text>'],
    ['<g data-gore="a"b"/>'],
    ['<path d="M0 0LNaN 1"/>'],
    ['<path d="M0 0L1e-7 1"/>'],
    ['<path d="M0 0L1 1" stroke-width="Infinity"/>'],
    ['<text x="undefined" y="1" font-size="3">a</text>'],
    ['<script>alert(1)</script>'],
    ['<path d="M0 0L1 1" onclick="x()"/>'],
  ])('%s', (inside) => expect(faultsOfSvg(svg(inside))).not.toEqual([]));
});

describe('page', () => {
  const page = (inside: string) =>
    `<!doctype html><html><head><meta charset="utf-8"><title>a</title><style></style></head><body><h1>a</h1>${inside}<script></script></body></html>`;

  it('as it should be', () => {
    expect(
      faultsOfHtml(page('<a href="#views">a</a><p class="figure">2.0</p><a href="lay-a%20b.svg">b</a>')),
    ).toEqual([]);
  });

  it.each([
    ['<script>alert(1)</script>'],
    ['<img src="x">'],
    ['<p onclick="x()">a</p>'],
    ['<a href="https://elsewhere.example/">a</a>'],
    ['<a href="javascript:x()">a</a>'],
    ['<p style="background: red">a</p>'],
    ['<p>a\u202eb</p>'],
    ['<p class="figure">NaN</p>'],
    ['<p class="a" class="b">a</p>'],
    ['<h1>another</h1>'],
  ])('%s', (inside) => expect(faultsOfHtml(page(inside))).not.toEqual([]));
});

describe('PDF', () => {
  const pdf = (content: string, pack: boolean) => {
    const data = pack ? deflateSync(Buffer.from(content, 'latin1')) : Buffer.from(content, 'latin1');
    const filter = pack ? '/Filter /FlateDecode\n' : '';
    const parts = [
      `%PDF-1.7\n1 0 obj\n<<\n${filter}/Length ${data.length}\n>>\nstream\n`,
      data,
      '\nendstream\nendobj\n%%EOF\n',
    ];
    return Buffer.concat(
      parts.map((part) => (typeof part === 'string' ? Buffer.from(part, 'latin1') : part)),
    );
  };
  const GOOD = 'q 1 0 0 1 0.5 -3 cm [2 1] 0 d 0 0 m 10 10 l S BT /F1 8 Tf (a \\(b\\)) Tj <0a1F> Tj ET Q\n';

  it('as it should be', () => {
    for (const pack of [false, true]) expect(faultsOfPdf(pdf(GOOD, pack))).toEqual([]);
  });

  it.each([
    'NaN 0 m 10 10 l S\n',
    '0 Infinity m S\n',
    '1e-7 0 m S\n',
    '0 undefined m S\n',
    'BT (a)) Tj ET\n',
    'BT ((a) Tj ET\n',
    'BT (a) Tj) ET alert\n',
  ])('%s', (content) => {
    for (const pack of [false, true]) expect(faultsOfPdf(pdf(content, pack))).not.toEqual([]);
  });

  it('cut short', () => expect(faultsOfPdf(pdf(GOOD, true).subarray(0, -6))).not.toEqual([]));
});

describe('CSV', () => {
  const HEADS = 'gore,layers,side,line,edge,kind,from,to,down,across,along,out,length\r\n';
  const table = (row: string) => `${HEADS}${row}\r\n`;

  it('as it should be', () => {
    expect(faultsOfCsv(table('front,"a, b",,cut,waist,corner,A,,-1.5,3,,,'))).toEqual([]);
  });

  it.each([
    '=front,shell,,cut,waist,corner,A,,1,2,,,',
    '"@front",shell,,cut,waist,corner,A,,1,2,,,',
    ' +front,shell,,cut,waist,corner,A,,1,2,,,',
    'front,shell,,cut,waist,corner,A,,NaN,2,,,',
    'front,shell,,cut,waist,corner,A,,1e-7,2,,,',
    'front,shell,,cut,waist,corner,A,,=1,2,,,',
    'front,she,ll,,cut,waist,corner,A,,1,2,,,',
    'fro\u001bnt,shell,,cut,waist,corner,A,,1,2,,,',
  ])('%s', (row) => expect(faultsOfCsv(table(row))).not.toEqual([]));
});

describe('the report', () => {
  const report = (area: unknown, length: unknown) => ({
    gores: [{ name: 'front', area, edges: { waist: length } }],
  });

  it('as it should be', () => expect(faultsOfReport(report(12.5, 3))).toEqual([]));

  it.each([
    [Number.NaN, 3],
    [-1, 3],
    [0, 3],
    [1, Infinity],
    [1, 0],
    [undefined, 3],
  ])('an area of %s, an edge of %s', (area, length) =>
    expect(faultsOfReport(report(area, length))).not.toEqual([]),
  );
});

describe('findings', () => {
  const source = { name: 'gown.yaml', text: 'format: 1\ngown: A\n' };
  const finding = {
    code: 'hem-low',
    level: 'note' as const,
    span: { source, start: 0, end: 6 },
    message: 'the hem is low',
    why: 'she may tread on it',
    hint: 'walk it in',
  };

  it('as they should be', () => expect(faultsOfFindings([finding], source.text)).toEqual([]));

  it.each([
    { span: { source, start: 0, end: 99 } },
    { span: { source, start: 9, end: 3 } },
    { span: { source: { name: 'other.yaml', text: 'other' }, start: 0, end: 1 } },
    { why: '' },
    { message: 'the hem is NaN cm low' },
    { hint: 'give undefined' },
    { message: 'x'.repeat(2000) },
  ])('%j', (wrong) => expect(faultsOfFindings([{ ...finding, ...wrong }], source.text)).not.toEqual([]));
});
