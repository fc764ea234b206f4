/** The lists of a gown that has none of what they hold. */
export const NO_PARTS = {
  flounces: [],
  tiers: [],
  straps: [],
  capes: [],
  overskirts: [],
  slits: [],
  pockets: [],
  loops: [],
  trims: [],
};
