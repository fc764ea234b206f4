import type { Diagnostic, Span } from './diagnostic.ts';
import { error, listed, nearestIs, note, type Words, warning } from './finding.ts';
import { named, quoted } from './safe-text.ts';

/** Problems of layers, cloths, edgings and what is assumed of them. */

export const noLayers = error('no-layers', () => ({
  message: 'There are no layers.',
  why: 'Nothing would be cut from any cloth.',
  hint: 'List them from the inside out, each with `name`, `cloth` and `hem`.',
}));

export const unknownName = (
  span: Span,
  kind: 'gore' | 'layer' | 'cloth' | 'edging',
  name: string,
  names: readonly string[],
  near: string | undefined,
): Diagnostic => UNKNOWN[kind](span, name, names, near);

const ELSE_NOTHING = 'What stands here would apply to nothing.';
const UNKNOWN = {
  gore: error('unknown-gore', unknown('gore', ELSE_NOTHING)),
  layer: error('unknown-layer', unknown('layer', ELSE_NOTHING)),
  cloth: error('unknown-cloth', unknown('cloth', 'Nothing says what to cut it from.')),
  edging: error('unknown-edging', unknown('edging', ELSE_NOTHING)),
};

function unknown(kind: string, why: string) {
  return (name: string, names: readonly string[], near: string | undefined): Words => ({
    message: `There is no ${kind} ${quoted(name)}${nearestIs(near)}.`,
    why,
    hint:
      names.length === 0
        ? `Add the ${kind} ${quoted(name)}.`
        : `The spec has ${listed(names)}; write one of them, or add ${quoted(name)}.`,
  });
}

export const unusedCloth = warning('unused-cloth', (name: string) => ({
  message: `Nothing is cut from the cloth ${quoted(name)}.`,
  why: 'A layer may name the wrong cloth; this one is not bought or priced.',
  hint: 'Name it in a layer, or take it out.',
}));

export const unusedEdging = warning('unused-edging', () => ({
  message: 'No layer carries the edging.',
  why: 'It is not reckoned with or bought.',
  hint: 'Add `edging:` with its name to the layer whose hem it goes on.',
}));

export const ownEdgesOfWhat = error('own-edges-of-what', () => ({
  message: 'The edging is cut off a cloth, and nothing says which.',
  why: 'That cloth gets narrower by it, and the supply depends on how much is bought.',
  hint: 'Add `cloth:` with the name of the cloth to the edging.',
}));

export const layerJoinedTwice = error('layer-joined-twice', (name: string) => ({
  message: `The layer ${quoted(name)} is in two stacks at the waist.`,
  why: 'It is sewn in once only.',
  hint: 'Keep it in the stack that it is handled with.',
}));

export const layerNotJoined = error('layer-not-joined', (names: readonly string[]) => ({
  message: `The stacks at the waist leave out ${named(names)}.`,
  why: 'Each layer is sewn to the bodice with some stack.',
  hint: 'Add it to a stack, or as a stack of its own: [lining].',
}));

export const selvedgesWiderThanCloth = error(
  'selvedges-wider-than-cloth',
  (name: string, selvedge: string, width: string) => ({
    message: `Two selvedges of ${selvedge} leave nothing of the cloth ${quoted(name)}, ${width} wide.`,
    why: 'There is no width left to cut from.',
    hint: 'Give the width of one selvedge, and the width of the cloth from edge to edge.',
  }),
);

export const oneWayHeadToTail = error('one-way-head-to-tail', (name: string) => ({
  message: `The cloth ${quoted(name)} is one-way and yet may be cut head to tail.`,
  why: 'Pieces laid upside down on one-way cloth change colour beside their neighbours.',
  hint: 'Keep the one that is right; on satin, pile, sequins and motifs it is `one-way: true`.',
}));

export const neitherWay = error('neither-way', (name: string) => ({
  message: `The cloth ${quoted(name)} is not one-way and yet may not be cut head to tail.`,
  why: 'The two say opposite things.',
  hint: 'Keep the one that is right.',
}));

export const repeatWiderThanCloth = error(
  'repeat-wider-than-cloth',
  (name: string, repeat: string, width: string) => ({
    message: `The pattern of ${quoted(name)} repeats every ${repeat} across, and the cloth is ${width} wide.`,
    why: 'Motifs could not be matched.',
    hint: 'Measure from a motif to the same one beside it, or leave `repeat-across` out.',
  }),
);

export const pricedPerWithoutPrice = warning('priced-per-without-price', (name: string) => ({
  message: `${quoted(name)} has \`priced-per\` and no \`price\`.`,
  why: 'It is not used.',
  hint: 'Add the price, or take it out.',
}));

export const allowanceAssumed = warning('allowance-assumed', (edges: readonly string[], width: string) => ({
  message: `No allowance is given for ${edges.map(quoted).join(', ')}: ${width} is taken.`,
  why: 'It is added to every piece before it is cut.',
  hint: 'Write what you sew with into `allowances`.',
}));

export const selvedgeAssumed = note('selvedge-assumed', (name: string, width: string) => ({
  message: `No selvedge is given for the cloth ${quoted(name)}: ${width} is taken off each side.`,
  why: 'Pieces are laid between the selvedges.',
  hint: 'Measure one selvedge and write it as `selvedge`; 0 where the cloth can be used to its edge.',
}));
