import { contentHash } from '../gown-file/content-hash.ts';
import type { Spec } from '../gown-file/spec.ts';
import { askedBodice, capeOf, strapOf } from './above-waist-of-spec.ts';
import type { Cloth } from './cloth.ts';
import type { Gown } from './gown.ts';
import { gownAllowances, type LayersAsked, layerOf, turningsOf } from './layers-of-spec.ts';
import type { LinesAsked } from './lines-asked.ts';
import { linesOf, namesOfStations } from './lines-of-spec.ts';
import { loopsOf, numberOf, pocketOf, slitOf } from './openings.ts';
import { overskirtsOf } from './overskirt-gowns.ts';
import { flounceOf, godetOf, pleatOf, tiersOf } from './parts-of-spec.ts';
import { type PlacesIn, placesIn } from './places-in-spec.ts';
import { bustleOf, closureOf, edgingOf, trimOf } from './sections-of-spec.ts';
import { waistFinishOf } from './waist.ts';
import { petticoatAsWorn, type Tape } from './worn-lengths.ts';
import { withWrapEdge, wrapOf } from './wrap.ts';

/** A spec that has read without errors as a gown, every name in it resolved to what it names. */
export function gownOfSpec(spec: Spec): Gown {
  const at = placesIn(spec);
  const lines = linesOf(linesAsked(spec, at));
  const cloths = Object.entries(spec.cloths).map(
    ([name, cloth]): Cloth => ({ ...cloth, name, place: at('cloths', name) }),
  );
  const asked: LayersAsked = {
    gores: spec.gores.map(({ name }) => name),
    allowances: withWrapEdge(gownAllowances(spec.allowances, at('allowances')), spec.wrap),
    clothNamed: (name) => clothNamed(cloths, name),
    ...turningsOf(spec, spec.lengths),
  };
  const layers = spec.layers.map((layer, i) => layerOf(layer, asked, at('layers', i)));
  const closure = spec.closure && closureOf(spec, lines, layers, asked, at('closure'));
  const given = plainSections(spec, at);
  const bodice = askedBodice(spec);
  const gown: Omit<Gown, 'overskirts'> = {
    ...lines,
    ...given,
    content: contentHash(spec),
    layers,
    cloths,
    flounces: (spec.flounces ?? []).map((flounce, i) =>
      flounceOf(flounce, layers, asked, spec.roughCut, at('flounces', i)),
    ),
    tiers: (spec.tiers ?? []).map((tiers, i) => tiersOf(tiers, asked, at('tiers', i))),
    godets: (spec.godets ?? []).map((godet, i) =>
      godetOf(godet, lines, layers, spec.roughCut, at('godets', i)),
    ),
    pleats: (spec.pleats ?? []).map((pleat, i) => pleatOf(pleat, lines, layers, at('pleats', i))),
    ...(closure && { closure }),
    ...(spec.edging && { edging: edgingOf(spec, lines, closure, layers, asked, at('edging')) }),
    trims: (spec.trims ?? []).map((trim, i, all) =>
      trimOf(trim, numberOf(i, all), lines, layers, asked, at('trims', i)),
    ),
    slits: (spec.slits ?? []).map((slit, i, all) =>
      slitOf(slit, numberOf(i, all), lines, layers, asked, at('slits', i)),
    ),
    pockets: (spec.pockets ?? []).map((pocket, i, all) =>
      pocketOf(pocket, numberOf(i, all), lines, asked, at('pockets', i)),
    ),
    loops: (spec.loops ?? []).map((loops, i, all) => loopsOf(loops, numberOf(i, all), asked, at('loops', i))),
    stones: (spec.stones ?? []).map(({ layer, ...rest }, i) => ({
      ...rest,
      layer: layers.find((own) => own.name === layer)!,
      place: at('stones', i),
    })),
    ...(spec.bustle && { bustle: bustleOf(spec.bustle, lines, at('bustle')) }),
    straps: (spec.straps ?? []).map((strap, i) => strapOf(strap, layers, asked, at('straps', i))),
    capes: (spec.capes ?? []).map((cape, i) => capeOf(cape, asked, at('capes', i))),
    ...(bodice && { askedBodice: bodice }),
    ...(spec.wrap && { wrap: wrapOf(spec.wrap, layers, asked, at('wrap')) }),
    ...(spec.waist && { waist: waistFinishOf(spec.waist, layers, asked, at('waist')) }),
    place: at(),
  };
  return { ...gown, overskirts: overskirtsOf(spec, gown, asked, at) };
}

function linesAsked(spec: Spec, at: PlacesIn): LinesAsked {
  const { bodice, lengths, train, sweep, petticoat, allowances } = spec;
  return {
    name: spec.gown,
    round: spec.symmetry === 'none' ? 'ring' : 'mirrored',
    gores: spec.gores,
    lengths,
    ...(train === undefined ? {} : { train }),
    ...(sweep === undefined ? {} : { sweep }),
    ...(petticoat === undefined ? {} : { petticoat: { ...petticoat, place: at('petticoat') } }),
    ...fittedOf(spec),
    ...(spec.darts === undefined ? {} : { darts: spec.darts }),
    waistSeam: bodice.waistSeam,
    panels: bodice.panels,
    drops: bodice.dropBelowWaist,
    ...(bodice.point === undefined ? {} : { point: bodice.point }),
    turnings: allowances.waist! + allowances.hem!,
    roughCut: spec.roughCut,
    names: namesOfStations(spec),
    free: spec.wrap === undefined ? [] : [spec.wrap.at],
    ...(spec.wrap && { wrap: spec.wrap }),
    tape: tapeOf(spec),
    place: at(),
  };
}

/** Her girths from the waist down to the level that the gores are fitted to; a front has its part of the ease. */
function fittedOf({ fittedTo, body, bodice }: Spec): Pick<LinesAsked, 'fitted'> {
  const lowest = body?.girths.find(({ at }) => at === fittedTo?.level)?.below;
  if (fittedTo === undefined || body === undefined || lowest === undefined) return {};
  const levels = body.girths
    .flatMap(({ below = 0, girth, front }) => {
      if (!(below > 0) || below > lowest) return [];
      const eased = (girth + fittedTo.ease) / girth;
      return [
        { down: below, girth: girth * eased, ...(front === undefined ? {} : { front: front * eased }) },
      ];
    })
    .sort((a, b) => a.down - b.down);
  const sideSeam = bodice.draft?.sideSeam;
  return { fitted: { levels, ...(sideSeam === undefined ? {} : { sideSeam }) } };
}

/** What the gown's lengths were measured over. */
export function tapeOf(spec: Spec): Tape {
  return {
    names: namesOfStations(spec),
    lengths: spec.lengths,
    drops: spec.bodice.dropBelowWaist,
    waist: spec.bodice.waistSeam,
    ...(spec.petticoat === undefined ? {} : { petticoat: spec.petticoat }),
    ...(spec.train === undefined ? {} : { train: spec.train }),
  };
}

/** Sections that name nothing of the gown's: as they were written, with their places. */
function plainSections(spec: Spec, at: PlacesIn) {
  const { format, client, units, notes, bodice, lengths, currency, cut } = spec;
  const { petticoat, sewnAsOne, labour, dates, paper } = spec;
  const { at: _at, toFloor: _toFloor, ...measuring } = lengths;
  const { waistSeam: _w, draft: _dr, panels, dropBelowWaist: _d, point: _pt, ...rest } = bodice;
  return {
    format,
    units,
    ...(client === undefined ? {} : { client }),
    ...(notes === undefined ? {} : { notes }),
    ...(currency === undefined ? {} : { currency }),
    ...(spec.body && { body: { ...spec.body, place: at('body') } }),
    ...(spec.fittedTo && { fittedTo: spec.fittedTo.level }),
    bodice: { ...rest, panelled: Object.keys(panels).length > 0, place: at('bodice') },
    measuring: { ...measuring, place: at('lengths') },
    fittings: (spec.fittings ?? []).map((fitting, i) => ({ ...fitting, place: at('fittings', i) })),
    notions: (spec.notions ?? []).map((notion, i) => ({ ...notion, place: at('notions', i) })),
    ...(petticoat && { petticoat: { ...petticoatAsWorn(petticoat, spec.lengths), place: at('petticoat') } }),
    ...(sewnAsOne && { sewnAsOne: { ...sewnAsOne, place: at('sewn-as-one') } }),
    ...(labour && { labour: { ...labour, place: at('labour') } }),
    ...(dates && { dates: { ...dates, place: at('dates') } }),
    ...(paper && { paper: { ...paper, place: at('paper') } }),
    cut: cut ?? {},
  };
}

function clothNamed(cloths: readonly Cloth[], name: string): Cloth {
  const own = cloths.find((cloth) => cloth.name === name);
  if (own === undefined) throw new Error(`no cloth is named ${name}`);
  return own;
}
