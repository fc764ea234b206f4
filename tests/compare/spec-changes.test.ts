import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { comparisonJson } from '../../src/compare/comparison-json.ts';
import { specChanges } from '../../src/compare/spec-changes.ts';
import { comparisonText } from '../../src/words/comparison-text.ts';
import { gowns, specText } from '../properties/gowns.ts';
import { compared, cone, drafted, draftedWithSpec } from './versions.ts';

const changes = (old: string, now: string) =>
  specChanges(draftedWithSpec(old).spec, draftedWithSpec(now).spec);
const paths = (old: string, now: string) => changes(old, now).map(({ path }) => path);

describe('what is no change', () => {
  it('units, the order of keys and comments, over random gowns', () => {
    fc.assert(
      fc.property(gowns, fc.constantFrom('cm' as const, 'in' as const), (gown, units) => {
        const plain = specText(gown);
        const other = `# the same gown\n${specText(gown, units, (keys) => [...keys].reverse())}`;
        expect(changes(plain, other)).toEqual([]);
        expect(drafted(other).report.content).toBe(drafted(plain).report.content);
      }),
      { numRuns: 25, seed: 6 },
    );
  });

  it('40in is 1016mm, 24.5 is 24.50, and what is assumed may be written out', () => {
    const priced = (price: string, more = {}) => ({ cloths: { calico: { width: '300cm', price, ...more } } });
    const old = cone({
      lengths: { at: { 'centre-front': '40in', 'centre-back': '40in' } },
      ...priced('24.50'),
    });
    const now = cone({
      lengths: { measured: 'finished', at: { 'centre-front': '1016mm', 'centre-back': '101.6cm' } },
      symmetry: 'mirrored',
      ...priced('24.5', { shrinkage: '0%', fold: 'any' }),
    });
    expect(changes(old, now)).toEqual([]);
  });
});

describe('what changed, by its path as the spec writes it', () => {
  it.each([
    [
      'a length at a station',
      cone(),
      cone({ lengths: { at: { 'centre-front': 1000, 'centre-back': 1010 } } }),
      ['lengths.at.centre-back'],
    ],
    [
      'an allowance by a station',
      cone(),
      cone({ allowances: { seam: 15, waist: 15, hem: 10, 'side/back': 25 } }),
      ['allowances.side/back'],
    ],
    ['a note', cone({ notes: 'heels' }), cone({ notes: 'flat shoes' }), ['notes']],
    [
      'a layer by its name',
      cone(),
      cone({ layers: [{ name: 'shell', cloth: 'calico', hem: 'faced', shorter: 20 }] }),
      ['layers.shell.shorter'],
    ],
    ['a record of what is cut', cone(), cone({ cut: { shell: '12ab34cd' } }), ['cut.shell']],
  ])('%s', (_what, old, now, expected) => {
    expect(paths(old, now)).toEqual(expected);
  });

  it('the order of layers, which is from the inside out', () => {
    const layers = [
      { name: 'lining', cloth: 'calico', hem: 'faced' },
      { name: 'shell', cloth: 'calico', hem: 'faced' },
    ];
    expect(paths(cone({ layers }), cone({ layers: [...layers].reverse() }))).toEqual(['layers']);
  });

  it('a gore that is put in or taken out brings all its values', () => {
    const two = cone({
      bodice: { 'waist-seam': 720 },
      gores: [
        { name: 'front', 'on-fold': true, 'half-top': 80, 'half-flare': '8deg' },
        { name: 'side', top: 280, flare: '18deg' },
      ],
    });
    const found = changes(two, cone());
    expect(found.filter(({ old }) => old === undefined).map(({ path }) => path)).toContain(
      'gores.back.flare',
    );
    expect(changes(cone(), two).find(({ path }) => path === 'gores.back.flare')?.now).toBeUndefined();
  });
});

describe('in words and for scripts', () => {
  const old = cone({
    units: 'cm',
    bodice: { 'waist-seam': '720mm' },
    notes: 'heels',
    gores: goresOf(),
    lengths: lengthsOf(100),
  });
  const now = cone({
    units: 'cm',
    bodice: { 'waist-seam': '720mm' },
    notes: 'flat',
    gores: goresOf(),
    lengths: lengthsOf(98),
  });

  it('lengths in the units of the new spec with their difference, notes as notes', () => {
    const text = comparisonText(compared(old, now));
    expect(text).toContain('lengths.at.centre-back: 100 cm → 98 cm, 2 cm less');
    expect(text).toContain('notes: the note reads differently; no measure changes by it');
    expect(text).toContain('hem: 20 mm comes off all along');
    expect(text).not.toContain('heels');
  });

  it('says that nothing changed, and nothing else', () => {
    const text = comparisonText(compared(old, old));
    expect(text.trim().split('\n')).toHaveLength(3);
    expect(text).toContain('Both say the same: nothing changes.');
  });

  it('JSON has mm, degrees, and the two values', () => {
    const json = JSON.parse(JSON.stringify(comparisonJson(compared(old, now))));
    expect(json.spec).toContainEqual({ path: 'lengths.at.centre-back', kind: 'length', old: 1000, new: 980 });
    expect(json.spec).toContainEqual({ path: 'notes', kind: 'note', old: 'heels', new: 'flat' });
    expect(json.pieces).toHaveLength(3);
    expect(json.pieces[1]).toMatchObject({ gore: 'side', layer: 'shell', verdict: 're-mark', mm: 20 });
    expect(json.pieces.map((piece: { verdict: string }) => piece.verdict)).toEqual([
      're-mark',
      're-mark',
      're-mark',
    ]);
  });

  it('an angle is told in degrees', () => {
    const json = JSON.parse(
      JSON.stringify(comparisonJson(compared(cone(), cone({ gores: goresOf('20deg') })))),
    );
    expect(json.spec).toEqual([{ path: 'gores.side.flare', kind: 'angle', old: 18, new: 20 }]);
  });
});

describe('cloth on the table, by what the spec records as cut', () => {
  const layers = [
    { name: 'lining', cloth: 'calico', hem: 'faced' },
    { name: 'shell', cloth: 'calico', hem: 'faced' },
  ];
  const old = cone({ layers });
  const { content } = drafted(old).report;
  const shorter = { layers, lengths: { at: { 'centre-front': 980, 'centre-back': 980 } } };

  it('the record does not change the hash that it holds', () => {
    expect(drafted(cone({ layers, cut: { shell: content } })).report.content).toBe(content);
  });

  it('tells cloth that is cut from cloth that is not', () => {
    const comparison = compared(old, cone({ ...shorter, cut: { shell: content } }));
    expect(Object.fromEntries(comparison.cloth)).toEqual({ lining: 'not-cut', shell: 'cut-from-old' });
    const text = comparisonText(comparison);
    expect(text).toContain('Cloth on the table: shell');
    expect(text).toContain('Not cut yet: lining\n  cut by the new lines: front, side, back');
  });

  it('knows cloth that was cut from the new version, and from a third', () => {
    const { content: newer } = drafted(cone(shorter)).report;
    const comparison = compared(old, cone({ ...shorter, cut: { shell: newer, lining: '00000000' } }));
    expect(comparison.cloth.get('shell')).toBe('cut-from-new');
    expect(comparison.cloth.get('lining')).toEqual({ cutFrom: '00000000' });
    expect(comparisonText(comparison)).toContain('Cut from another version (00000000)');
  });

  it('without a record it speaks of the old file', () => {
    expect(comparisonText(compared(old, cone(shorter)))).toContain(
      'If it was cut from old.yaml: lining, shell',
    );
  });
});

function goresOf(flare = '18deg') {
  return [
    { name: 'front', 'on-fold': true, 'half-top': '80mm', 'half-flare': '8deg' },
    { name: 'side', top: '150mm', flare },
    { name: 'back', top: '130mm', flare: '16deg' },
  ];
}

function lengthsOf(length: number) {
  return { measured: 'finished', at: { 'centre-front': length, 'centre-back': length } };
}
