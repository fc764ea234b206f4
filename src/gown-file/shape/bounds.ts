/**
 * What a measure of a gown can be, in mm, radians or fractions. Wide on purpose, from a doll's skirt to a stage
 * train: they catch a slipped decimal point or a forgotten unit, not an unusual gown. Narrower would refuse somebody's
 * work; wider would let `4m` pass for a gore's top.
 */
export interface Bounds {
  readonly least: number;
  readonly most: number;
  /** What it is, for the message: "a gore's top lies between …". */
  readonly of: string;
}

/** Most items of a list: several times what any gown has, and few enough that a spec of nothing else is drafted in seconds. */
export const MOST = {
  gores: 120,
  layers: 60,
  parts: 60,
  tiers: 60,
  girths: 200,
  trims: 200,
  notions: 500,
  bustlePoints: 60,
  /** Of one set of stones, each told by itself. */
  places: 500,
  fittings: 24,
  pinned: 60,
  levelled: 200,
  bodyGirths: 24,
} as const;

const degrees = (angle: number) => (angle * Math.PI) / 180;

export const BOUNDS = {
  waistSeam: { least: 100, most: 3000, of: 'a waist seam' },
  goreTop: { least: 3, most: 1800, of: 'the top of a gore' },
  hemWidth: { least: 3, most: 12_000, of: "a gore's hem" },
  sweep: { least: 100, most: 60_000, of: 'the hem all round' },
  flare: { least: degrees(-45), most: degrees(360), of: "a gore's flare" },
  length: { least: 20, most: 12_000, of: 'a skirt length' },
  offFloor: { least: 0, most: 1500, of: "the hem's height off the floor" },
  heel: { least: 0, most: 300, of: "a heel's height" },
  onFloor: { least: 10, most: 8000, of: 'a train on the floor' },
  drop: { least: 0, most: 600, of: "the bodice's drop below the waist" },
  bonesEnd: { least: 0, most: 300, of: 'the distance of the bones from the waist seam' },
  secondRow: { least: 0, most: 30, of: 'the distance of a second row of stitching' },
  allowance: { least: 0, most: 250, of: 'an allowance' },
  roughCut: { least: 0, most: 500, of: 'what is left to trim below a hem' },
  shorter: { least: -100, most: 1000, of: 'what a layer is shorter by' },
  cutSmaller: { least: 0, most: 0.5, of: 'what a layer is cut smaller by' },
  share: { least: 0.001, most: 1, of: 'a share of the girth' },
  fullness: { least: 1, most: 10, of: 'fullness' },
  pleat: { least: 2, most: 500, of: "a pleat's depth" },
  flounce: { least: 5, most: 3000, of: 'the depth of a flounce or tier' },
  band: { least: 5, most: 400, of: 'the width of a waistband or its facing' },
  overlap: { least: 0, most: 400, of: 'the overlap of a waistband' },
  wrap: { least: 20, most: 4000, of: 'the overlap of a wrap' },
  tie: { least: 50, most: 5000, of: 'the length of a tie' },
  pocket: { least: 30, most: 1000, of: 'a measure of a pocket' },
  facing: { least: 5, most: 3000, of: 'the depth of a facing' },
  stone: { least: 0.5, most: 200, of: 'the size of a stone' },
  perDm2: { least: 0, most: 2000, of: 'stones on a square decimetre' },
  stoneGrams: { least: 0.1, most: 100_000, of: 'the weight of a thousand, in grams' },
  clothWidth: { least: 100, most: 6000, of: "a cloth's width" },
  selvedge: { least: 0, most: 300, of: 'a selvedge' },
  clothWeight: { least: 1, most: 3000, of: "a cloth's weight in g/m²" },
  shrinkage: { least: 0, most: 0.3, of: 'shrinkage' },
  safety: { least: 0, most: 1, of: 'the margin bought for safety' },
  step: { least: 1, most: 100_000, of: 'a length of cloth or trim' },
  none: { least: 0, most: 1_000_000, of: 'a length of cloth or trim' },
  repeat: { least: 1, most: 5000, of: 'a pattern repeat' },
  dart: { least: 2, most: 120, of: 'what a dart takes in' },
  dartPlace: { least: 0.02, most: 0.98, of: 'the place of a dart' },
  shearStiffness: { least: 1, most: 2000, of: 'a shear stiffness in N/m' },
  bendingLength: { least: 4, most: 150, of: 'a bending length' },
  stitch: { least: 0.3, most: 10, of: 'a stitch' },
  girth: { least: 100, most: 30_000, of: 'a girth' },
  down: { least: 0, most: 12_000, of: 'a distance below the waist' },
  ease: { least: 0, most: 3000, of: 'ease' },
  height: { least: 0, most: 1200, of: 'a height along the body' },
  bodyFront: { least: 50, most: 3000, of: 'a part of a girth' },
  bodyHeight: { least: 300, most: 2600, of: 'her height' },
  bustPoints: { least: 50, most: 600, of: 'the distance of the bust points' },
  panelWidth: { least: 3, most: 1500, of: 'the width of a panel' },
  reduce: { least: -600, most: 600, of: 'what a level is laced in by' },
  upperEdge: { least: -100, most: 600, of: 'the height of the upper edge' },
  gap: { least: 0, most: 600, of: 'a lacing gap' },
  eyelets: { least: 3, most: 150, of: 'the distance of eyelets' },
  modesty: { least: 10, most: 800, of: 'a modesty panel' },
  tails: { least: 0, most: 6000, of: 'the tails of a lace' },
  bone: { least: 1, most: 60, of: 'a measure of bones' },
  strap: { least: 20, most: 2000, of: 'a strap' },
  capeEdge: { least: 0, most: 4000, of: 'the inner edge of a cape' },
  capeLength: { least: 20, most: 4000, of: 'the length of a cape' },
  capeAngle: { least: degrees(5), most: degrees(720), of: 'the angle of a cape' },
  bodyGirth: { least: 200, most: 4000, of: 'a girth of the body' },
  opening: { least: 20, most: 3000, of: 'an opening' },
  trimWidth: { least: 1, most: 2000, of: 'the width of a trim' },
  alter: { least: -1000, most: 1000, of: 'what a fitting alters' },
  percentage: { least: 0, most: 1, of: 'a percentage' },
  overhead: { least: 0, most: 10, of: 'a percentage added to a price' },
  testSquare: { least: 50, most: 200, of: 'the test square as measured (100 mm when true)' },
  paperEdge: { least: 0, most: 60, of: "a sheet's margin" },
} as const satisfies Readonly<Record<string, Bounds>>;
