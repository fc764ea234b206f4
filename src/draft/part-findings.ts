import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';
import { selfCrossing } from '../geometry/self-crossing.ts';
import { FLAT } from '../geometry/tolerances.ts';
import { placeOf, type Spec } from '../gown-file/spec.ts';
import { tapeText } from '../gown-file/tape-text.ts';
import type { LayerDrafts } from './draft-layers.ts';
import { edgeRound } from './flounces.ts';
import { hasGodet } from './godets.ts';
import type { Part } from './part.ts';

/** Flounces and godets that find no room on the drafted gown: none is left out in silence. */
export function partFindings(spec: Spec, drafts: LayerDrafts, parts: readonly Part[]): Diagnostic[] {
  const isMade = (name: string, layer: string): boolean =>
    parts.some((part) => part.piece.gore === name && part.layer.name === layer);
  const godets = (spec.godets ?? []).flatMap((godet, i) => {
    const { name, seam, from } = godet;
    const lacking = drafts.layers.find(
      (own) => hasGodet(spec, godet, own) && !isMade(godet.name, own.layer.name),
    );
    if (lacking === undefined) return [];
    const { gown, lengths } = lacking.draft;
    const station = gown.stations.findIndex((own) => own.name === seam);
    const length = tapeText(lengths[station] ?? 0, spec.units);
    return [
      godetBeyondSeam(placeOf(spec, 'godets', i, 'from'), name, seam, tapeText(from, spec.units), length),
    ];
  });
  const flounces = (spec.flounces ?? []).flatMap((flounce, i) =>
    edgeRound(spec, flounce, drafts) === undefined
      ? [flounceAboveWaist(placeOf(spec, 'flounces', i, 'above-hem'), flounce.name, flounce.layer)]
      : [],
  );
  const crossing = parts
    .filter(
      ({ piece }) =>
        selfCrossing(
          piece.edges.flatMap(({ curves }) => curves),
          FLAT,
        ) !== undefined,
    )
    .map(({ piece }) => partCrossesItself(placeOfPart(spec, piece.gore), piece.gore));
  return [...godets, ...flounces, ...crossing];
}

/** Where the part stands in the spec; the top of the file for what is none. */
export function placeOfPart(spec: Spec, name: string): Span {
  for (const list of ['flounces', 'godets', 'tiers', 'straps', 'capes'] as const) {
    const index = (spec[list] ?? []).findIndex((part) => part.name === name);
    if (index >= 0) return placeOf(spec, list, index);
  }
  const panel = spec.bodice.draft?.panels.findIndex((one) => one.name === name) ?? -1;
  return panel < 0 ? placeOf(spec) : placeOf(spec, 'bodice', 'draft', 'panels', panel);
}

function godetBeyondSeam(span: Span, name: string, seam: string, from: string, length: string): Diagnostic {
  return {
    code: 'godet-beyond-seam',
    level: 'error',
    span,
    message: `the godet ${name} begins ${from} down the seam ${seam}, which is ${length} long`,
    why: 'No seam is left to let it into.',
    hint: 'Let `from`, measured from the waist seam, lie above the hem.',
  };
}

function flounceAboveWaist(span: Span, name: string, layer: string): Diagnostic {
  return {
    code: 'flounce-above-waist',
    level: 'error',
    span,
    message: `the flounce ${name} would be sewn on above the waist of layer ${layer}`,
    why: 'There is no cloth to sew it to.',
    hint: 'Let `above-hem` be less than the layer is long.',
  };
}

function partCrossesItself(span: Span, name: string): Diagnostic {
  return {
    code: 'outline-crosses-itself',
    level: 'error',
    span,
    message: `the outline of ${name} crosses itself`,
    why: 'Such a piece cannot be cut.',
    hint: 'Cut it in more pieces, make it less wide, or longer.',
  };
}
