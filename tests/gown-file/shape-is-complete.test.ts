import { expect, it } from 'vitest';
import type { ShapedSpec } from '../../src/gown-file/shape/spec-shape.ts';
import type * as product from '../../src/gown-file/spec.ts';
import { specSchema } from '../../src/gown-file/spec-schema.ts';

/** Keys of a section of the product that the file cannot give. The compiler refuses a line below that is not empty. */
type NotRead<Section, Given> = Record<Exclude<keyof Section, keyof Given>, never>;
type ItemOf<List> = NonNullable<List> extends readonly (infer Item)[] ? Item : never;

const notRead = {
  spec: {} satisfies NotRead<Omit<product.Spec, 'places'>, ShapedSpec>,
  bodice: {} satisfies NotRead<product.BodiceSpec, ShapedSpec['bodice']>,
  gore: {} satisfies NotRead<product.GoreSpec, ItemOf<ShapedSpec['gores']>>,
  lengths: {} satisfies NotRead<product.LengthsSpec, ShapedSpec['lengths']>,
  train: {} satisfies NotRead<product.TrainSpec, NonNullable<ShapedSpec['train']>>,
  layer: {} satisfies NotRead<product.LayerSpec, ItemOf<ShapedSpec['layers']>>,
  joins: {} satisfies NotRead<product.SewnAsOneSpec, NonNullable<ShapedSpec['sewnAsOne']>>,
  cloth: {} satisfies NotRead<product.ClothSpec, ShapedSpec['cloths'][string]>,
  petticoat: {} satisfies NotRead<product.PetticoatSpec, NonNullable<ShapedSpec['petticoat']>>,
  flounce: {} satisfies NotRead<product.FlounceSpec, ItemOf<ShapedSpec['flounces']>>,
  tiers: {} satisfies NotRead<product.TiersSpec, ItemOf<ShapedSpec['tiers']>>,
  godet: {} satisfies NotRead<product.GodetSpec, ItemOf<ShapedSpec['godets']>>,
  overskirt: {} satisfies NotRead<product.OverskirtSpec, ItemOf<ShapedSpec['overskirts']>>,
  closure: {} satisfies NotRead<product.ClosureSpec, NonNullable<ShapedSpec['closure']>>,
  edging: {} satisfies NotRead<product.EdgingSpec, NonNullable<ShapedSpec['edging']>>,
  trim: {} satisfies NotRead<product.TrimSpec, ItemOf<ShapedSpec['trims']>>,
  bustle: {} satisfies NotRead<product.BustleSpec, NonNullable<ShapedSpec['bustle']>>,
  fitting: {} satisfies NotRead<product.FittingSpec, ItemOf<ShapedSpec['fittings']>>,
  labour: {} satisfies NotRead<product.LabourSpec, NonNullable<ShapedSpec['labour']>>,
  notion: {} satisfies NotRead<product.NotionSpec, ItemOf<ShapedSpec['notions']>>,
  dates: {} satisfies NotRead<product.DatesSpec, NonNullable<ShapedSpec['dates']>>,
  paper: {} satisfies NotRead<product.PaperSpec, NonNullable<ShapedSpec['paper']>>,
};

it('every section of a spec can be written in a file', () => {
  const sections = (specSchema() as { properties: object }).properties;
  expect(Object.keys(sections).length).toBeGreaterThan(30);
  expect(Object.values(notRead).every((section) => Object.keys(section).length === 0)).toBe(true);
});
