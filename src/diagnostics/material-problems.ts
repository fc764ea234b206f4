import type { Diagnostic, Span } from './diagnostic.ts';
import { listed, nearestIs, problem } from './problem.ts';
import { quoted } from './safe-text.ts';

/** Problems of layers, cloths, edgings and what is assumed of them. */

export const noLayers = (span: Span): Diagnostic => ({
  ...problem('no-layers', span),
  message: 'there are no layers',
  why: 'nothing would be cut from any cloth',
  hint: 'list them from the inside out, each with `name`, `cloth` and `hem`',
});

export const unknownName = (
  span: Span,
  kind: string,
  name: string,
  names: readonly string[],
  near: string | undefined,
): Diagnostic => ({
  ...problem(`unknown-${kind}`, span),
  message: `there is no ${kind} ${quoted(name)}${nearestIs(near)}`,
  why: kind === 'cloth' ? 'nothing says what to cut it from' : 'what stands here would apply to nothing',
  hint:
    names.length === 0
      ? `add the ${kind} ${quoted(name)}`
      : `the spec has ${listed(names)}; write one of them, or add ${quoted(name)}`,
});

export const unusedCloth = (span: Span, name: string): Diagnostic => ({
  ...problem('unused-cloth', span, 'warning'),
  message: `nothing is cut from the cloth ${quoted(name)}`,
  why: 'a layer may name the wrong cloth; this one is not bought or priced',
  hint: 'name it in a layer, or take it out',
});

export const unusedEdging = (span: Span): Diagnostic => ({
  ...problem('unused-edging', span, 'warning'),
  message: 'no layer carries the edging',
  why: 'it is not reckoned with or bought',
  hint: 'add `edging:` with its name to the layer whose hem it goes on',
});

export const ownEdgesOfWhat = (span: Span): Diagnostic => ({
  ...problem('own-edges-of-what', span),
  message: 'the edging is cut off a cloth, and nothing says which',
  why: 'that cloth gets narrower by it, and the supply depends on how much is bought',
  hint: 'add `cloth:` with the name of the cloth to the edging',
});

export const layerJoinedTwice = (span: Span, name: string): Diagnostic => ({
  ...problem('layer-joined-twice', span),
  message: `the layer ${quoted(name)} is in two stacks at the waist`,
  why: 'it is sewn in once only',
  hint: 'keep it in the stack that it is handled with',
});

export const layerNotJoined = (span: Span, names: readonly string[]): Diagnostic => ({
  ...problem('layer-not-joined', span),
  message: `the stacks at the waist leave out ${names.map(quoted).join(' and ')}`,
  why: 'each layer is sewn to the bodice with some stack',
  hint: 'add it to a stack, or as a stack of its own: [lining]',
});

export const selvedgesWiderThanCloth = (
  span: Span,
  name: string,
  selvedge: string,
  width: string,
): Diagnostic => ({
  ...problem('selvedges-wider-than-cloth', span),
  message: `two selvedges of ${selvedge} leave nothing of the cloth ${quoted(name)}, ${width} wide`,
  why: 'there is no width left to cut from',
  hint: 'give the width of one selvedge, and the width of the cloth from edge to edge',
});

export const oneWayHeadToTail = (span: Span, name: string): Diagnostic => ({
  ...problem('one-way-head-to-tail', span),
  message: `the cloth ${quoted(name)} is one-way and yet may be cut head to tail`,
  why: 'pieces laid upside down on one-way cloth change colour beside their neighbours',
  hint: 'keep the one that is right; on satin, pile, sequins and motifs it is `one-way: true`',
});

export const neitherWay = (span: Span, name: string): Diagnostic => ({
  ...problem('neither-way', span),
  message: `the cloth ${quoted(name)} is not one-way and yet may not be cut head to tail`,
  why: 'the two say opposite things',
  hint: 'keep the one that is right',
});

export const repeatWiderThanCloth = (
  span: Span,
  name: string,
  repeat: string,
  width: string,
): Diagnostic => ({
  ...problem('repeat-wider-than-cloth', span),
  message: `the pattern of ${quoted(name)} repeats every ${repeat} across, and the cloth is ${width} wide`,
  why: 'motifs could not be matched',
  hint: 'measure from a motif to the same one beside it, or leave `repeat-across` out',
});

export const pricedPerWithoutPrice = (span: Span, name: string): Diagnostic => ({
  ...problem('priced-per-without-price', span, 'warning'),
  message: `${quoted(name)} has \`priced-per\` and no \`price\``,
  why: 'it is not used',
  hint: 'add the price, or take it out',
});

export const allowanceAssumed = (span: Span, edges: readonly string[], width: string): Diagnostic => ({
  ...problem('allowance-assumed', span, 'warning'),
  message: `no allowance is given for ${edges.map(quoted).join(', ')}: ${width} is taken`,
  why: 'it is added to every piece before it is cut',
  hint: 'write what you sew with into `allowances`',
});

export const selvedgeAssumed = (span: Span, name: string, width: string): Diagnostic => ({
  ...problem('selvedge-assumed', span, 'note'),
  message: `no selvedge is given for the cloth ${quoted(name)}: ${width} is taken off each side`,
  why: 'pieces are laid between the selvedges',
  hint: 'measure one selvedge and write it as `selvedge`; 0 where the cloth can be used to its edge',
});
