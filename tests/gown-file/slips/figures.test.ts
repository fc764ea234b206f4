import { describe, expect, it } from 'vitest';
import * as z from 'zod/mini';
import { readSpec } from '../../../src/gown-file/read-spec.ts';
import { specShape } from '../../../src/gown-file/shape/spec-shape.ts';
import { FIGURES } from '../../../src/gown-file/slips/usual-figures.ts';

/** By row: a figure, one that is usual there and one that its neighbour in the table would let pass, in cm. */
const ROWS: readonly (readonly [section: string, key: string, usual: string, slips: readonly string[]])[] = [
  ['lengths', 'off-floor', '2.5', ['25', '0.25', '7.5']],
  ['cloths.shell', 'width', '140', ['14', '55.1', '410']],
  ['cloths.shell', 'selvedge', '1', ['10', '0.1', '2.5']],
  ['cloths.shell', 'weight', '210', ['2100', '2.1']],
  ['cloths.shell', 'shrinkage', '3%', ['13%', '0.03%']],
  ['closure', 'opening', '22', ['220', '2.2', '55.9']],
  ['closure', 'starts', '2.5', ['25', '0.25', '5.2']],
  ['bodice', 'bones-end', '1.3', ['13', '0.13', '3.3']],
  ['bustle', 'clearance', '2.5', ['25', '0.25', '6.3']],
  ['bustle', 'loop', '2', ['20', '0.2']],
  ['train', 'on-floor', '60', ['600', '6']],
  ['petticoat', 'hoop-off-floor', '5', ['50', '0.5']],
  ['petticoat', 'hoop', '310', ['31', '787']],
];

const SECTIONS: Readonly<Record<string, string>> = {
  lengths: 'measured: to-floor, hem-width-at: 104, at: {centre-front: 106, centre-back: 106}',
  bodice: 'waist-seam: 72',
  'cloths.shell': '',
  closure: 'kind: zip, at: centre-back',
  bustle: 'kind: over',
  train: 'begins: front/back',
  petticoat: '',
};

function said(section: string, key: string, value: string): string[] {
  const own = (name: string) =>
    [SECTIONS[name], ...(section === name ? [`${key}: ${value}`] : defaultsOf(name, key))]
      .filter((part) => part !== '')
      .join(', ');
  const text = `format: 1
gown: Trial
units: cm
bodice: {${own('bodice')}}
gores: [{name: front, top: 18, hem: 75}, {name: back, top: 18, hem: 75}]
lengths: {${own('lengths')}}
train: {${own('train')}}
allowances: {seam: 1.5, waist: 1.5, hem: 3}
layers: [{name: shell, cloth: shell, hem: turned}]
cloths: {shell: {${own('cloths.shell')}}}
closure: {${own('closure')}}
bustle: {${own('bustle')}}
petticoat: {${own('petticoat')}}
`;
  return readSpec({ name: 'gown.yaml', text })
    .diagnostics.filter(
      ({ code, span }) => code === 'unusual-figure' && text.slice(span.start, span.end) === value,
    )
    .map(({ message }) => message);
}

/** What must be there beside the one that is tried. */
function defaultsOf(name: string, key: string): string[] {
  const needed: Readonly<Record<string, readonly string[]>> = {
    lengths: ['off-floor: 2.5'],
    'cloths.shell': ['width: 140', 'selvedge: 1'],
    train: ['on-floor: 60'],
  };
  return (needed[name] ?? []).filter((entry) => !entry.startsWith(`${key}:`));
}

describe('each figure against what it commonly is', () => {
  it.each(ROWS)('%s.%s: %s is usual, %s are not', (section, key, usual, slips) => {
    expect(said(section, key, usual)).toEqual([]);
    for (const slip of slips) {
      const messages = said(section, key, slip);
      expect(messages, `${key}: ${slip}`).toHaveLength(1);
      expect(messages[0]).toContain(`\`${key}\` is `);
    }
  });

  it('a weight in ounces, in a file of inches, is told from one in g/m²', () => {
    const inches = `format: 1
gown: Trial
units: in
bodice: {waist-seam: 28}
gores: [{name: front, top: 7, hem: 30}, {name: back, top: 7, hem: 30}]
lengths: {hem-width-at: 41, at: {centre-front: 41, centre-back: 41}}
allowances: {seam: 5/8, waist: 5/8, hem: 1}
layers: [{name: shell, cloth: shell, hem: turned}]
cloths: {shell: {width: 54, selvedge: 1/2, weight: 6}}
`;
    const [found] = readSpec({ name: 'gown.yaml', text: inches }).diagnostics;
    // 6 oz/yd² are 6 × 28.3495 g on 0.8361 m²: 203 g/m².
    expect(found?.message).toMatch(/`weight` is 6 g\/m².*Did you mean `6oz\/yd2`\?$/);
    expect(
      readSpec({ name: 'gown.yaml', text: inches.replace('weight: 6', 'weight: 6oz/yd2') }).diagnostics,
    ).toEqual([]);
  });

  it('of a slip that is plain it asks whether the other was meant', () => {
    expect(said('cloths.shell', 'width', '14')[0]).toMatch(/Did you mean `140`\?$/);
    expect(said('closure', 'starts', '25')[0]).toMatch(/Did you mean `2\.5`\?$/);
    expect(said('cloths.shell', 'width', '54')[0]).toMatch(/Did you mean `54in`\?$/);
  });
});

describe('the table of usual figures', () => {
  it('is in order: least, typical, most, and what is possible round them', () => {
    for (const [path, { least, most, typical, possible, of, source }] of FIGURES) {
      expect(least < typical && typical < most, path).toBe(true);
      if (possible) expect(possible[0] < least && possible[1] > most, path).toBe(true);
      expect(of.length > 0 && source.length > 0, path).toBe(true);
    }
  });

  it('speaks of words that a spec may hold', () => {
    const words = new Set(
      [...JSON.stringify(z.toJSONSchema(specShape, { io: 'input' })).matchAll(/"([a-z-]+)":/g)].map(
        ([, word]) => word,
      ),
    );
    for (const [path] of FIGURES)
      for (const step of path.split('.'))
        if (step !== '*') expect(words.has(step), `${path}: ${step}`).toBe(true);
  });
});
