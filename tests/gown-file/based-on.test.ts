import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineAndColumn } from '../../src/diagnostics/place.ts';
import { readSpec } from '../../src/gown-file/read-spec.ts';
import { resolvedText } from '../../src/gown-file/resolved-text.ts';
import { placeOf, type Spec } from '../../src/gown-file/spec.ts';
import { PLAIN } from './plain-spec.ts';

const lantern = readFileSync(new URL('../../examples/lantern.yaml', import.meta.url), 'utf8');
const puffin = readFileSync(new URL('../../examples/puffin.yaml', import.meta.url), 'utf8');

/** A folder of specs; the reader asks for them by path. */
function read(files: Readonly<Record<string, string>>, path = 'own.yaml') {
  const source = (name: string) => ({ name, text: files[name]! });
  return readSpec(
    source(path),
    (name) => (name in files ? { source: source(name), diagnostics: [] } : undefined),
    path,
  );
}
const said = (files: Readonly<Record<string, string>>, path?: string) =>
  read(files, path).diagnostics.map(({ code, span }) => {
    const { line, column } = lineAndColumn(span);
    return `${span.source.name}:${line}:${column} ${code}`;
  });
const withoutPlaces = ({ places: _, ...spec }: Spec) => spec;
const whole = (text: string) => withoutPlaces(readSpec({ name: 'whole', text }).spec!);

describe('a spec based on another', () => {
  it('that says nothing of its own is the same gown', () => {
    const { spec, diagnostics } = read({ 'own.yaml': 'based-on: lantern.yaml\n', 'lantern.yaml': lantern });
    expect(diagnostics).toEqual([]);
    expect(withoutPlaces(spec!)).toEqual(whole(lantern));
  });

  it('keeps only what differs, lists merging by name', () => {
    const own = `based-on: lantern.yaml
gown: Lantern again
gores:
  - {name: side, notes: let out}
lengths: {at: {centre-back: 170}}
layers:
  - {name: shell, hem: turned}
  - {name: net, cloth: organza, hem: raw}
sewn-as-one: {waist: [[lining], [shell, organza, net]]}
`;
    const { spec } = read({ 'own.yaml': own, 'lantern.yaml': lantern });
    const base = whole(lantern);
    expect(withoutPlaces(spec!)).toEqual({
      ...base,
      gown: 'Lantern again',
      gores: base.gores.map((gore) => (gore.name === 'side' ? { ...gore, notes: 'let out' } : gore)),
      lengths: { ...base.lengths, at: { ...base.lengths.at, 'centre-back': 1700 } },
      layers: [
        ...base.layers.map((layer) => (layer.name === 'shell' ? { ...layer, hem: 'turned' } : layer)),
        { ...base.layers[2]!, name: 'net', edging: undefined },
      ].map(({ edging, ...layer }) => (edging === undefined ? layer : { ...layer, edging })),
      sewnAsOne: { ...base.sewnAsOne, waist: [['lining'], ['shell', 'organza', 'net']] },
    });
  });

  it('points each value into the file that it came from', () => {
    const { spec } = read({
      'own.yaml': 'based-on: lantern.yaml\nlengths: {at: {centre-back: 170}}\n',
      'lantern.yaml': lantern,
    });
    expect(placeOf(spec!, 'lengths', 'at', 'centre-back').source.name).toBe('own.yaml');
    expect(placeOf(spec!, 'lengths', 'at', 'centre-front').source.name).toBe('lantern.yaml');
    expect(placeOf(spec!, 'gores', 1, 'top').source.name).toBe('lantern.yaml');
  });

  it('puts a gore between two others by naming them all', () => {
    const own = `based-on: base.yaml
gores: [{name: front}, {name: middle, hem: 20}, {name: back}]
bodice: {panels: {front: 16, middle: 2}}
`;
    const { spec, diagnostics } = read({ 'own.yaml': own, 'base.yaml': PLAIN });
    expect(diagnostics).toEqual([]);
    expect(spec!.gores.map(({ name }) => name)).toEqual(['front', 'middle', 'back']);
    expect(spec!.gores[0]!.onFold).toBe(true);
  });

  it('reads bare numbers in the units of the file that they stand in', () => {
    const own = 'based-on: puffin.yaml\nunits: cm\nlengths: {off-floor: 4}\n';
    const { spec } = read({ 'own.yaml': own, 'puffin.yaml': puffin });
    const base = whole(puffin);
    expect(withoutPlaces(spec!)).toEqual({
      ...base,
      units: 'cm',
      lengths: { ...base.lengths, offFloor: 40 },
    });
    const inherited = read({
      'own.yaml': 'based-on: puffin.yaml\nlengths: {off-floor: 2}\n',
      'puffin.yaml': puffin,
    });
    expect(inherited.spec!.lengths.offFloor).toBeCloseTo(50.8, 9);
  });

  it('does not inherit what was cut, used, paid and worked for the other', () => {
    const base = `${PLAIN.replace('selvedge: 1', 'selvedge: 1, used: 4m')}cut: {shell: a1b2c3}\nlabour: {hours: 4, actual: {hours: 5}, paid: 10}\n`;
    const { spec } = read({ 'own.yaml': 'based-on: base.yaml\n', 'base.yaml': base });
    expect(spec!.cut).toBeUndefined();
    expect(spec!.cloths.crepe!.used).toBeUndefined();
    expect(spec!.labour).toMatchObject({ hours: '4' });
    expect(spec!.labour!.actual ?? spec!.labour!.paid).toBeUndefined();
  });

  it('says that it inherits fittings', () => {
    const base = `${PLAIN}fittings: [{date: 2027-05-01, hem: {centre-front: 1}}]\n`;
    expect(said({ 'own.yaml': 'based-on: base.yaml\n', 'base.yaml': base })).toEqual([
      'own.yaml:1:11 fittings-inherited',
    ]);
    expect(read({ 'own.yaml': 'based-on: base.yaml\n', 'base.yaml': base }).spec!.fittings).toHaveLength(1);
    const own = 'based-on: base.yaml\nwithout: [fittings]\n';
    expect(read({ 'own.yaml': own, 'base.yaml': base })).toMatchObject({
      diagnostics: [],
      spec: { gown: 'Plain' },
    });
  });

  it('leaves out what it is told to', () => {
    const own =
      'based-on: lantern.yaml\nwithout: [train, layers.organza, gores.back.flare, edging]\ngores: [{name: back, hem: 66}]\n';
    const more =
      'lengths: {hem-width-at: 100}\nsewn-as-one: {waist: [[lining], [shell]], closure: [shell]}\n';
    const { spec, diagnostics } = read({ 'own.yaml': own + more, 'lantern.yaml': lantern });
    expect(diagnostics.map(({ code }) => code)).toEqual(['unused-cloth']);
    expect(spec!.train).toBeUndefined();
    expect(spec!.layers.map(({ name }) => name)).toEqual(['lining', 'shell']);
    expect(spec!.gores[4]).toMatchObject({ hem: 660 });
    expect(spec!.gores[4]!.flare).toBeUndefined();
  });

  it('may stand on one that stands on another, in folders below', () => {
    const files = {
      'own.yaml': 'based-on: parts/b.yaml\ngown: A\n',
      'parts/b.yaml': 'based-on: ../parts/./c.yaml\ngown: B\nclient: B-2\n',
      'parts/c.yaml': PLAIN,
    };
    expect(read(files).spec).toMatchObject({ gown: 'A', client: 'B-2', units: 'cm' });
  });
});

describe('a layer that is left out', () => {
  const own = (without: string) => `based-on: lantern.yaml\nwithout: [${without}]\n`;
  const stacks = (without: string) =>
    read({ 'own.yaml': own(without), 'lantern.yaml': lantern }).spec?.sewnAsOne;

  it('is left out of what it was sewn as one with', () => {
    expect(said({ 'own.yaml': own('layers.organza, edging'), 'lantern.yaml': lantern })).toEqual([
      // What it was cut from is cut for nothing now.
      expect.stringMatching(/^lantern\.yaml:\d+:\d+ unused-cloth$/),
    ]);
    expect(stacks('layers.organza, edging')).toMatchObject({
      waist: [['lining'], ['shell']],
      closure: ['shell'],
    });
  });

  it('takes a stack of nothing else with it', () => {
    expect(stacks('layers.lining')).toMatchObject({
      waist: [['shell', 'organza']],
      closure: ['shell', 'organza'],
    });
  });
});

describe('a spec that cannot be based on what it says', () => {
  it.each<[string, Record<string, string>, string[]]>([
    ['itself', { 'own.yaml': 'based-on: own.yaml\n' }, ['own.yaml:1:11 based-on-itself']],
    [
      'one that is based on it',
      { 'own.yaml': 'based-on: b.yaml\n', 'b.yaml': '\nbased-on: ./own.yaml\n' },
      ['b.yaml:2:11 based-on-itself'],
    ],
    [
      'a file that is not there',
      { 'own.yaml': `${'gown: A\n'}based-on: b.yaml\n` },
      ['own.yaml:2:11 base-missing'],
    ],
    ['no file', { 'own.yaml': 'based-on:\n' }, ['own.yaml:1:1 based-on-no-file']],
    ['a list', { 'own.yaml': 'based-on: [a.yaml]\n' }, ['own.yaml:1:1 based-on-no-file']],
    ['an empty file', { 'own.yaml': 'based-on: b.yaml\n', 'b.yaml': '' }, ['b.yaml:1:1 empty-spec']],
    ['a list in a file', { 'own.yaml': 'based-on: b.yaml\n', 'b.yaml': '- a\n' }, ['b.yaml:1:1 not-a-spec']],
    [
      'what it leaves out and is not there',
      { 'own.yaml': 'based-on: b.yaml\nwithout: [trian, gores.sides, [a]]\n', 'b.yaml': '' },
      ['b.yaml:1:1 empty-spec'],
    ],
  ])('%s', (_, files, expected) => expect(said(files)).toEqual(expected));

  it('what it leaves out is not there', () => {
    const files = { 'own.yaml': 'based-on: b.yaml\nwithout: [trian, gores.sides, [a]]\n', 'b.yaml': PLAIN };
    expect(said(files)).toEqual([
      'own.yaml:2:1 without-what',
      'own.yaml:2:11 nothing-to-leave-out',
      'own.yaml:2:18 nothing-to-leave-out',
    ]);
  });

  it('leaves out from nothing', () => {
    expect(said({ 'own.yaml': `${PLAIN}without: [train]\n` })).toEqual(['own.yaml:12:1 without-base']);
  });

  it.each([
    '../b.yaml',
    '/etc/passwd',
    'a/../../b.yaml',
    'C:\\b.yaml',
    '..\\b.yaml',
    '~/b.yaml',
    'https://x/b.yaml',
    'file:b.yaml',
    '"a\\tb"',
  ])('a path that leaves its folder: %s', (path) => {
    const asked: string[] = [];
    const source = { name: 'own.yaml', text: `based-on: ${path}\n` };
    const { diagnostics } = readSpec(source, (name) => {
      asked.push(name);
      return undefined;
    });
    expect(diagnostics.map(({ code }) => code)).toEqual(['based-on-outside-folder']);
    expect(asked).toEqual([]);
  });

  it('a chain without end', () => {
    const files = Object.fromEntries(
      Array.from({ length: 50 }, (_, i) => [`${i}.yaml`, `based-on: ${i + 1}.yaml\n`]),
    );
    expect(said(files, '0.yaml')).toEqual(['7.yaml:1:11 based-on-too-long']);
  });

  it('where no other file can be read', () => {
    expect(
      readSpec({ name: 'own.yaml', text: 'based-on: b.yaml\n' }).diagnostics.map(({ code }) => code),
    ).toEqual(['base-not-read-here']);
  });

  it('problems of both files are told in one run', () => {
    const files = {
      'own.yaml': 'based-on: b.yaml\nhems: 3\n',
      'b.yaml': PLAIN.replace('width: 140', 'width: 0'),
    };
    expect(said(files).sort()).toEqual(['b.yaml:11:25 measure-out-of-bounds', 'own.yaml:2:1 unknown-key']);
  });
});

describe('the whole spec as text', () => {
  it.each([
    ['lantern', lantern],
    ['puffin', puffin],
  ])('%s reads as the same gown', (_, text) => {
    const { tree } = readSpec({ name: 'x', text });
    expect(whole(resolvedText(tree!))).toEqual(whole(text));
    expect(resolvedText(tree!)).toContain(text === lantern ? 'price: 24.50\n' : 'half-top: 4 1/4\n');
  });

  it('carries the units of the other file along', () => {
    const own = 'based-on: puffin.yaml\nunits: mm\nlengths: {off-floor: 40}\n';
    const { spec, tree } = read({ 'own.yaml': own, 'puffin.yaml': puffin });
    const text = resolvedText(tree!);
    expect(text).toContain('waist-seam: 26 1/2in\n');
    expect(text).toContain('off-floor: 40\n');
    expect(text).not.toContain('based-on');
    expect(whole(text)).toEqual(withoutPlaces(spec!));
  });

  it('keeps any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }), (notes) => {
        const { tree } = readSpec({ name: 'x', text: `${PLAIN}notes: ${JSON.stringify(notes)}\n` });
        if (tree === undefined) return;
        const again = readSpec({ name: 'y', text: resolvedText(tree) }).spec;
        expect(again?.notes).toBe(
          readSpec({ name: 'x', text: `${PLAIN}notes: ${JSON.stringify(notes)}\n` }).spec?.notes,
        );
      }),
      { numRuns: 200 },
    );
  });
});
