/**
 * What makers ask for that is not drafted, and what serves instead; and what goes by another key here. Words of the
 * trade, in the singular.
 */
const INSTEAD: Readonly<Record<string, string>> = {
  sleeve:
    'Draft it elsewhere, to the finished armhole; put its hours into `labour.tasks` and its cloth into `notions`.',
  'cap-sleeve': 'Draft it elsewhere, to the finished armhole, and put its hours into `labour.tasks`.',
  collar: 'Draft it elsewhere, to the finished neck edge, and put its hours into `labour.tasks`.',
  cuff: 'A cuff is a strip: rule it by its measures, and put its cloth into `notions`.',
  hood: 'Draft it elsewhere, to the finished neck edge, and put its hours into `labour.tasks`.',
  elastic: 'Put its length into `notions`; give the layer that it gathers a `fullness` at the waist.',
  ruching:
    'Cut the layer with `fullness`, by the cloth that the ruching takes for one of the length, and put its rows into `notes`.',
  ruche:
    'Cut the layer with `fullness`, by the cloth that it takes for one of the length, and say so in `notes`.',
  shirring: 'Cut the layer with `fullness`, and put the rows of stitching into `notes`.',
  smocking: 'Cut the layer with `fullness`, and put its hours into `labour.tasks`.',
  drape: 'Draped cloth is cut on the stand; put its length into `notions` and its hours into `labour.tasks`.',
  cowl: 'Cowls are draped on the stand; put the cloth into `notions` and the hours into `labour.tasks`.',
  bow: 'A bow is cut from strips: put its cloth into `notions` and its hours into `labour.tasks`.',
  sash: 'A sash is a strip: put its cloth into `notions`; for a child mind the lengths that standards allow.',
  belt: 'A belt is a strip: put it into `notions`.',
  veil: 'A veil is no part of the gown: put its net into `notions`.',
  embroidery: 'Put its hours into `labour.tasks` and its thread into `notions`.',
  ruffle: 'Write it under `flounces`, `kind: straight`.',
  frill: 'Write it under `flounces`, `kind: straight`.',
  flounce: 'Write it under `flounces`, as one of a list.',
  peplum: 'Write it under `flounces`, `kind: circular`, or as an overskirt under `overskirts`.',
  underskirt: 'Write it under `layers`, as the innermost one, or under `petticoat` if it is made already.',
  crinoline: 'Write its girths and its hoop under `petticoat`.',
  overlay: 'Write it under `layers`, as the outermost one.',
  interlining: 'Write it under `layers`, and name it under `sewn-as-one` with the layer that it backs.',
  underlining: 'Write it under `layers`, and name it under `sewn-as-one` with the layer that it backs.',
  lining: 'Write it under `layers`, as the innermost one.',
  zip: 'Write it under `closure`, `kind: zip`.',
  zipper: 'Write it under `closure`, `kind: zip`.',
  button: 'Put the buttons into `notions`; the opening is written under `closure`.',
  pleat:
    'Write it under `pleats`, as one of a list; a whole top of pleats is `fullness`, `by: pleats`, of its gore or layer.',
  'wrap-over': 'Write it under `wrap`, by its `at` and its `overlap`.',
  overlap: 'Of a skirt that wraps it stands under `wrap`, of a waistband under `waist`.',
  gather: 'Write it under `fullness` of the gore or the layer.',
  waistband: 'Write it under `waist`, `finish: band`.',
  pocket: 'Write it under `pockets`, as one of a list.',
  slit: 'Write it under `slits`, as one of a list.',
  dart: 'Write it under `darts`, as one of a list.',
};

/** What to do about a word that is no key here; undefined where nobody would expect it. */
export function insteadOf(word: string): string | undefined {
  const own = word.toLowerCase().replaceAll('_', '-');
  return [own, own.replace(/s$/, ''), own.replace(/es$/, '')]
    .map((one) => (Object.hasOwn(INSTEAD, one) ? INSTEAD[one] : undefined))
    .find((advice) => advice !== undefined);
}

export const NOT_DRAFTED: readonly string[] = Object.keys(INSTEAD);
