import { readdirSync, readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { formatDiagnostics } from '../../src/diagnostics/format-diagnostic.ts';
import { readSpec } from '../../src/gown-file/read-spec.ts';
import { specSchema } from '../../src/gown-file/spec-schema.ts';

const root = new URL('../..', import.meta.url);
const files = ['examples', 'templates'].flatMap((folder) =>
  readdirSync(new URL(`${folder}/`, root))
    .filter((file) => file.endsWith('.yaml'))
    .map((file) => `${folder}/${file}`),
);
const textOf = (file: string) => readFileSync(new URL(file, root), 'utf8');

describe('every example and template', () => {
  it.each(files)('%s reads without a word', (file) => {
    const { spec, diagnostics } = readSpec({ name: file, text: textOf(file) });
    expect(formatDiagnostics(diagnostics, { colour: false })).toBe('');
    expect(spec).toBeDefined();
  });

  it.each(files)('%s says that it is invented', (file) => expect(textOf(file)).toContain('invented'));

  const validate = new Ajv2020({
    strict: true,
    allowUnionTypes: true,
    formats: { date: /^\d{4}-\d\d-\d\d$/ },
  }).compile(specSchema());
  it.each(files)('%s is what the JSON Schema describes', (file) => {
    validate(parse(textOf(file)));
    expect(validate.errors ?? []).toEqual([]);
  });

  it('the JSON Schema asks a spec that is based on another only for what differs', () => {
    expect(validate({ 'based-on': 'lantern.yaml', gores: [{ name: 'side', hem: 50 }] })).toBe(true);
    expect(validate({ 'based-on': 'lantern.yaml', gores: [{ hem: 50 }] })).toBe(false);
    expect(validate({ 'based-on': 'lantern.yaml', hoops: 3 })).toBe(false);
  });

  it('the JSON Schema refuses what the reader refuses', () => {
    const good = parse(textOf('templates/floor-length.yaml'));
    for (const bad of [
      { ...good, hoops: 1 },
      { ...good, units: 'furlong' },
      { ...good, gores: {} },
      { ...good, bodice: {} },
      { ...good, format: 2 },
      { ...good, sweep: true },
      { ...good, gores: [{ name: 'front', 'on-fold': 'yes' }] },
    ])
      expect(validate(bad)).toBe(false);
  });
});

describe('the example gown', () => {
  const { spec } = readSpec({ name: 'lantern', text: textOf('examples/lantern.yaml') });

  it('is in mm and radians inside', () => {
    expect(spec!.bodice.waistSeam).toBe(740);
    expect(spec!.bodice.dropBelowWaist).toEqual({
      'centre-front': 70,
      'front/side-front': 55,
      'side-front/side': 25,
    });
    expect(spec!.gores[0]).toEqual({
      name: 'front',
      onFold: true,
      halfTop: 56,
      halfFlare: (17 * Math.PI) / 180,
      grain: 'centre',
    });
    expect(spec!.lengths.at['centre-back']).toBe(1760);
    expect(spec!.train).toEqual({ onFloor: 645, begins: 'side-front/side', shape: 'round' });
  });

  it('keeps money and codes as they are written', () => {
    expect(spec!.cloths.crepe!.price).toBe('24.50');
    expect(spec!.cloths.crepe!.dyeLot).toBe('0417');
    expect(spec!.labour!.rate).toBe('23.00');
    expect(spec!.dates!.event).toBe('2027-06-12');
  });

  it('knows where each value stands', () => {
    const place = spec!.places.get('gores.1.top')!;
    expect(place.source.text.slice(place.start, place.end)).toBe('8.2');
    const station = spec!.places.get('lengths.at.side/side-back')!;
    expect(station.source.text.slice(station.start, station.end)).toBe('112');
    expect(spec!.places.get('')).toBeDefined();
  });
});

describe('yards and metres', () => {
  const cloths = (units: string, cloth: string) =>
    readSpec({
      name: 'x',
      text: textOf('templates/full-circle.yaml')
        .replace('units: cm', `units: ${units}`)
        .replace('selvedge: 1, weight: 150', cloth),
    }).spec?.cloths.shell;

  it('a price is for a metre unless the shop sells by the yard', () => {
    expect(cloths('cm', 'price: 4')!.pricedPer).toBe(1000);
    expect(cloths('cm', 'price: 4, sold-by: 1/8yd')).toMatchObject({ pricedPer: 914.4, soldBy: 114.3 });
    expect(cloths('cm', 'price: 4, sold-by: 0.1m')).toMatchObject({ pricedPer: 1000, soldBy: 100 });
    expect(cloths('cm', 'price: 4, sold-by: 1/8yd, priced-per: m')!.pricedPer).toBe(1000);
  });

  it('head-to-tail cloth is the opposite of one-way cloth', () => {
    expect(cloths('cm', 'one-way: true')!.oneWay).toBe(true);
    expect(cloths('cm', 'head-to-tail: false')!.oneWay).toBe(true);
    expect(cloths('cm', 'head-to-tail: true')!.oneWay).toBe(false);
    expect(cloths('cm', 'weight: 1')!.oneWay).toBe(false);
  });
});
