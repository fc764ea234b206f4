import { describe, expect, it } from 'vitest';
import { measuresForm, measuresText } from '../../src/print/papers/measures-form.ts';
import { english } from '../../src/words/english.ts';
import { printedLines } from './page-rows.ts';

/** The form for her measures, of gowns made by hand: what it asks for, and what it does not. */

const words = english('cm');
const { measuresForm: text } = words;
const BARE = {
  name: 'Lantern',
  format: 1,
  gores: [{ name: 'front', fold: 'front' }, { name: 'side' }, { name: 'side' }],
  stations: [
    { name: 'centre-front', drop: 70 },
    { name: 'front/side', drop: 0 },
    { name: 'front/side', drop: 0 },
    { name: 'centre-back', drop: 0 },
  ],
  overskirts: [],
  straps: [],
  capes: [],
};
/** Its lines in parts: a title, what is said beside it, and what is to be filled in. */
const partsOf = (own: object = {}, isOpen = false) => {
  const blocks = measuresText({ ...BARE, ...own } as never, words, isOpen).split('\n\n');
  return blocks.map((block) => {
    const [title, ...lines] = block.trimEnd().split('\n');
    return { title: title!, fields: lines.map((line) => line.replace(/^ {2}/, '').replace(/: _+$/, '')) };
  });
};
const part = (start: string, own?: object, isOpen?: boolean) =>
  partsOf(own, isOpen).find(({ title }) => title.startsWith(start));
const places = ['centre front', 'front/side', 'centre back'];

describe('as text', () => {
  it('who, her body, the edge of a bodice made elsewhere, and each station once', () => {
    const [first] = partsOf();
    expect(first!.title).toBe(text.title);
    expect(first!.fields).toEqual([text.introOverBody, ...text.who]);
    expect(part('Body')!.fields).toEqual(text.bodyFields);
    expect(part('Bodice edge')!.fields).toEqual(['front, whole panel', 'side', text.waistSeam, text.bones]);
    const { title, fields } = part('At each station')!;
    expect(title).toBe(`At each station. ${text.dropText} ${text.lengthsText(false)}`);
    expect(fields).toEqual([
      ...places.flatMap((place) => [`${place}, ${text.drop}`, `${place}, ${text.toFloor}`]),
      text.offFloor,
    ]);
    expect(partsOf().map(({ title: own }) => own.split('.')[0])).not.toContain('Petticoat');
    expect(part('How stiff')!.fields).toHaveLength(4);
  });

  it('over a hoop, with a train, and what any gown may need', () => {
    const hooped = { petticoat: { hoop: { round: 1 } } };
    expect(partsOf(hooped)[0]!.fields[0]).toBe(text.intro);
    expect(part('Petticoat', hooped)!.fields).toEqual(text.petticoatFields);
    expect(part('At each station', { train: {} })!.fields.slice(-2)).toEqual([text.offFloor, text.train]);
    const over = { overskirts: [{ gown: {} }, { gown: { train: {} } }] };
    expect(part('At each station', over)!.fields.at(-1)).toBe(text.train);
    expect(part('At each station', { overskirts: [{ gown: {} }] })!.fields.at(-1)).toBe(text.offFloor);
    expect(part('Petticoat', {}, true)).toBeDefined();
    expect(part('At each station', {}, true)!.fields.at(-1)).toBe(text.train);
  });

  it('what the skirt hangs over, level by level', () => {
    const under = { petticoat: { girths: [{}, {}] } };
    const [, down, round] = text.underHeads;
    expect(part('What the skirt hangs over', under)!.fields).toEqual(
      [1, 2].flatMap((level) => [`${level}, ${down}`, `${level}, ${round}`]),
    );
    expect(part('What the skirt hangs over')).toBeUndefined();
  });

  it('her girths where a bodice is drafted over them, with what lies on her shoulders', () => {
    const drafted = {
      askedBodice: { body: { girths: [{ at: 'bust' }, { at: 'waist' }] } },
      straps: [{}],
      capes: [{}],
    };
    const [, round, front, high] = text.girthHeads;
    expect(part('Girths for the bodice', drafted)!.fields).toEqual(
      ['bust', 'waist'].flatMap((at) => [`${at}, ${round}`, `${at}, ${front}`, `${at}, ${high}`]),
    );
    expect(part('Body', drafted)!.fields).toEqual([
      ...text.bodyFields,
      text.bustPoints,
      text.straps,
      text.arm,
    ]);
    expect(part('Bodice edge', drafted)).toBeUndefined();
    expect(part('At each station', drafted)!.fields.slice(0, 3)).toEqual(
      [text.upperEdge, text.drop, text.toFloor].map((head) => `centre front, ${head}`),
    );
  });

  it('her girths below the waist where the gores follow them', () => {
    const body = { girths: [{ at: 'bust' }, { at: 'waist', below: 0 }, { at: 'hip', below: 200 }] };
    const [, round, , high] = text.girthHeads;
    expect(part('Girths for the skirt', { body, fittedTo: 'hip' })!.fields).toEqual([
      `hip, ${round}`,
      `hip, ${high}`,
    ]);
    expect(part('Girths for the skirt', { body })).toBeUndefined();
    const above = { girths: body.girths.slice(0, 2) };
    expect(part('Girths for the skirt', { body: above, fittedTo: 'hip' })).toBeUndefined();
  });

  it('a skirt with a waist of its own: that waist, and no drop where it lies level', () => {
    const level = { waist: {}, stations: BARE.stations.map(({ name }) => ({ name, drop: 0 })) };
    expect(part('Body', level)!.fields).toEqual([text.ownWaist, ...text.bodyFields.slice(1)]);
    expect(part('Bodice edge', level)).toBeUndefined();
    expect(part('At each station', level)!.title).toBe(`At each station. ${text.lengthsText(true)}`);
    expect(part('At each station', level)!.fields.slice(0, 2)).toEqual([
      `centre front, ${text.toFloor}`,
      `front/side, ${text.toFloor}`,
    ]);
    expect(part('At each station', { waist: {} })!.fields[0]).toBe(`centre front, ${text.drop}`);
  });
});

describe('on paper', () => {
  const lines = (own: object = {}, isOpen = false) =>
    printedLines(
      measuresForm({ ...BARE, ...own } as never, words, { width: 210, height: 297 }, isOpen).pages,
    ).map((line) => line.map(({ text: said }) => said).join(' '));

  it('a row a station, with as many blanks as are asked', () => {
    const found = lines();
    expect(found).toContain('station edge, below the level waist to the floor');
    const at = found.indexOf('station edge, below the level waist to the floor');
    expect(found.slice(at + 1, at + 4)).toEqual(places);
    expect(found.join('\n')).toMatch(/1 +centre front/);
    expect(found.join('\n')).not.toMatch(/bottom hoop|underbust/);
  });

  it('levels on the figure as they are measured', () => {
    const all = (own: object, isOpen = false) => lines(own, isOpen).join('\n');
    expect(all({ petticoat: { hoop: {} } })).toMatch(/bottom hoop(?!, round)/);
    const figure = lines({ askedBodice: { body: { girths: [] } } });
    const named = ['over both shoulders', 'bust', 'underbust', 'level waist', 'bodice edge', 'hip'];
    const levels = figure.flatMap((line) => named.filter((own) => line === own || line.endsWith(`  ${own}`)));
    expect(levels).toEqual(named);
    expect(all({})).toContain('bodice edge');
    const own = lines({ waist: {} });
    expect(own.some((line) => line.includes('bodice edge'))).toBe(false);
  });
});
