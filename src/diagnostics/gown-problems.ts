import type { Diagnostic, Level, Span } from './diagnostic.ts';
import { lineAndColumn } from './place.ts';
import { quoted } from './plain-text.ts';

/** Problems of a spec whose values can each be read, but do not make a gown together. */

type Table = readonly (readonly string[])[];

export const badName = (span: Span, kind: string, name: string): Diagnostic => ({
  ...problem('bad-name', span),
  message: `${quoted(name)} cannot name a ${kind}`,
  why: 'names become parts of file names and of stations such as `front/side`',
  hint: 'use letters, digits and hyphens only, beginning with a letter or digit',
});

export const reservedName = (span: Span, kind: string, name: string): Diagnostic => ({
  ...problem('reserved-name', span),
  message: `${quoted(name)} cannot name a ${kind}, as it already means something else`,
  why: 'an edge or a station of that name could not be told from it',
  hint: 'choose another name, such as `front` or `side-back`',
});

export const duplicateName = (span: Span, kind: string, name: string, earlier: Span): Diagnostic => ({
  ...problem('duplicate-name', span),
  message: `two ${kind}s are named ${quoted(name)}; the first is on line ${lineAndColumn(earlier).line}`,
  why: 'seams, lays and papers tell them apart by name',
  hint: 'give one of them another name',
});

export const noGores = (span: Span): Diagnostic => ({
  ...problem('no-gores', span),
  message: 'there are no gores',
  why: 'a skirt has at least one',
  hint: 'list them from the centre front round to the centre back, each with its `name`',
});

export const noLayers = (span: Span): Diagnostic => ({
  ...problem('no-layers', span),
  message: 'there are no layers',
  why: 'nothing would be cut from any cloth',
  hint: 'list them from the inside out, each with `name`, `cloth` and `hem`',
});

export const wholeOnFold = (span: Span, gore: string, key: string, half: string): Diagnostic => ({
  ...problem('whole-on-fold', span),
  message: `${quoted(key)} is given for the gore ${quoted(gore)}, which is cut on the fold: it takes ${quoted(half)}`,
  why: 'the pattern of a gore on the fold is one half of it; taken for the half, a whole width makes the gore twice as wide',
  hint: `write ${quoted(half)} with half of the width, from the fold to the seam`,
});

export const halfWithoutFold = (span: Span, gore: string, key: string, whole: string): Diagnostic => ({
  ...problem('half-without-fold', span),
  message: `${quoted(key)} is given for the gore ${quoted(gore)}, which is not on the fold`,
  why: 'only a gore on the fold has a half',
  hint: `write ${quoted(whole)} with the whole width, or add \`on-fold: true\``,
});

export const foldInside = (span: Span, gore: string): Diagnostic => ({
  ...problem('fold-inside', span),
  message: `the gore ${quoted(gore)} is on the fold, but it is neither the first nor the last`,
  why: 'the fold lies at the centre front or the centre back; a gore between them is cut as a mirrored pair',
  hint: 'take `on-fold` out, or put the gore first or last',
});

export const foldWithoutSymmetry = (span: Span, gore: string): Diagnostic => ({
  ...problem('fold-without-symmetry', span),
  message: `the gore ${quoted(gore)} is on the fold in a skirt whose sides differ`,
  why: 'with `symmetry: none` every gore is given whole, and a fold would make its sides alike',
  hint: 'take `on-fold` out and give whole widths',
});

export const grainOnFold = (span: Span, gore: string, grain: string): Diagnostic => ({
  ...problem('grain-on-fold', span),
  message: `the gore ${quoted(gore)} is on the fold and cannot have its grain at the ${quoted(grain)}`,
  why: 'the fold lies along the thread, so the grain runs down the fold',
  hint: 'take `grain` out',
});

export const severalWidths = (span: Span, gore: string, keys: readonly string[]): Diagnostic => ({
  ...problem('several-widths', span),
  message: `the gore ${quoted(gore)} has ${keys.map(quoted).join(' and ')}, and one of them is enough`,
  why: 'each decides how wide the gore gets, and they need not agree',
  hint: 'keep one: `hem` or `flare` for the gore, or `sweep` for the whole skirt',
});

export const noWidth = (span: Span, gore: string, key: string): Diagnostic => ({
  ...problem('no-width', span),
  message: `nothing says how wide the gore ${quoted(gore)} gets`,
  why: 'a gore needs a width at the hem, or a flare, or its part of the whole hem',
  hint: `add ${quoted(key)} with its width at the hem, or one \`sweep\` for the skirt, or \`girths\` of the petticoat`,
});

export const grainBesideFlares = (span: Span, gore: string): Diagnostic => ({
  ...problem('grain-beside-flares', span),
  message: `the gore ${quoted(gore)} has two flares and a \`grain\` beside them`,
  why: 'two flares already say where the grain lies between them',
  hint: 'take `grain` out, or give one flare',
});

export const panelOfNoGore = (
  span: Span,
  panel: string,
  gores: readonly string[],
  near: string | undefined,
): Diagnostic => ({
  ...problem('panel-of-no-gore', span),
  message: `the panel ${quoted(panel)} has no gore of that name${nearestIs(near)}`,
  why: 'each panel of the bodice is sewn to the gore of its name',
  hint: `the gores are ${listed(gores)}`,
});

export const noTop = (span: Span, gore: string, key: string): Diagnostic => ({
  ...problem('no-top', span),
  message: `the gore ${quoted(gore)} has neither a top nor a bodice panel`,
  why: 'nothing says how wide it is at the waist',
  hint: `add ${quoted(gore)} to \`bodice.panels\`, or ${quoted(key)} to the gore`,
});

export const topMissesPanel = (
  span: Span,
  gore: string,
  top: string,
  panel: string,
  difference: string,
  table: Table,
): Diagnostic => ({
  ...problem('top-misses-panel', span),
  message: `the top of ${quoted(gore)} is ${top} and its bodice panel ${panel}: ${difference}`,
  why: 'beyond 1.5 mm the seam lines of skirt and bodice do not meet at the waist',
  hint: 'measure both along the seam line and correct one; without a top the gore takes its panel',
  table,
});

export const topsMissWaist = (
  span: Span,
  what: string,
  sum: string,
  waist: string,
  difference: string,
  table: Table,
): Diagnostic => ({
  ...problem('tops-miss-waist', span),
  message: `${what} make ${sum} all round and the waist seam is ${waist}: ${difference}`,
  why: 'the skirt would not go onto the bodice without a tuck or a stretch',
  hint: 'measure the waist seam again, or correct the widths in the table (a gore that is not on the fold counts twice)',
  table,
});

export const unknownStation = (
  span: Span,
  name: string,
  stations: readonly string[],
  near: string | undefined,
): Diagnostic => ({
  ...problem('unknown-station', span),
  message: `${quoted(name)} is no station of this skirt${nearestIs(near)}`,
  why: 'what stands here would apply nowhere',
  hint: `it can be ${listed(stations)}`,
});

export const stationOfNoGore = (
  span: Span,
  name: string,
  strangers: readonly string[],
  stations: readonly string[],
  near: string | undefined,
): Diagnostic => ({
  ...problem('station-of-no-gore', span),
  message: `${quoted(name)} names ${strangers.map(quoted).join(' and ')}, and no gore is called that${nearestIs(near)}`,
  why: 'a seam is named by the two gores that it joins',
  hint: `it can be ${listed(stations)}`,
});

export const notNeighbours = (
  span: Span,
  name: string,
  stations: readonly string[],
  turned: string | undefined,
): Diagnostic => ({
  ...problem('not-neighbours', span),
  message:
    turned === undefined
      ? `${quoted(name)} joins gores that are not neighbours`
      : `${quoted(name)} has its gores the wrong way round; this seam is ${quoted(turned)}`,
  why: 'a seam joins a gore and the next one towards the back, in this order',
  hint: turned === undefined ? `the stations are ${listed(stations)}` : `write ${quoted(turned)}`,
});

export const centreWithoutSymmetry = (span: Span, name: string, stations: readonly string[]): Diagnostic => ({
  ...problem('centre-without-symmetry', span),
  message: `${quoted(name)} is no station of a skirt whose sides differ`,
  why: 'with `symmetry: none` the gores run all the way round, and only their seams are stations',
  hint: `the seam at the centre front is ${quoted(stations[0] ?? '')}; the stations are ${listed(stations)}`,
});

export const foldNotSeam = (span: Span, name: string): Diagnostic => ({
  ...problem('fold-not-seam', span),
  message: `${quoted(name)} lies on the fold, where there is no seam`,
  why: 'a fold cannot be opened, taken in or left unsewn',
  hint: 'name a seam, or take `on-fold` out of the gore',
});

export const allowanceOnFold = (span: Span, name: string): Diagnostic => ({
  ...problem('allowance-on-fold', span, 'warning'),
  message: `an allowance is given for ${quoted(name)}, which lies on the fold`,
  why: 'nothing is sewn there, so it is not used',
  hint: 'take it out, or take `on-fold` out of the gore',
});

export const lengthMissing = (span: Span, station: string): Diagnostic => ({
  ...problem('length-missing', span),
  message: `the length at ${quoted(station)} is missing`,
  why: 'lengths between are filled in from it',
  hint: `add ${quoted(`${station}:`)} with its length from the sewn edge of the bodice`,
});

export const offFloorUnused = (span: Span, measured: string): Diagnostic => ({
  ...problem('off-floor-unused', span),
  message: `\`off-floor\` is given, but the lengths are measured ${quoted(measured)}`,
  why: 'it is taken off lengths to the floor only, and could be taken off twice or not at all',
  hint: 'write `measured: to-floor`, or take `off-floor` out',
});

export const offFloorMissing = (span: Span): Diagnostic => ({
  ...problem('off-floor-missing', span, 'warning'),
  message: 'lengths go to the floor, and nothing says how high the hem hangs',
  why: 'the hem will lie on the floor all round',
  hint: 'add `off-floor`, commonly 2 to 2.5 cm at the front, walked in and adjusted; write 0 to keep it on the floor',
});

export const hemAboveWaist = (span: Span, station: string, length: string, offFloor: string): Diagnostic => ({
  ...problem('hem-above-waist', span),
  message: `at ${quoted(station)} the floor is ${length} down and the hem hangs ${offFloor} above it`,
  why: 'no skirt is left',
  hint: 'look at `off-floor` and at this length',
});

export const hemWidthAtMissing = (span: Span, key: string): Diagnostic => ({
  ...problem('hem-width-at-missing', span),
  message: `${quoted(key)} is given, and \`hem-width-at\` is missing from \`lengths\``,
  why: 'a width holds at a distance below the waist; lower down the gore is wider',
  hint: 'add `hem-width-at` with the slant distance below the level waist where the widths were measured',
});

export const hemWidthAtUnused = (span: Span): Diagnostic => ({
  ...problem('hem-width-at-unused', span, 'warning'),
  message: '`hem-width-at` is given, but no gore has a `hem` and the skirt no `sweep`',
  why: 'it is not used',
  hint: 'take it out, or give the widths that hold there',
});

export const pointWithoutDrop = (span: Span, point: string): Diagnostic => ({
  ...problem('point-without-drop', span),
  message: `the bodice comes to a point at ${quoted(point)}, where it has no drop`,
  why: 'a level edge has no point',
  hint: `add ${quoted(point)} to \`drop-below-waist\`, or take \`point\` out`,
});

export const heelMeasuredInMissing = (span: Span): Diagnostic => ({
  ...problem('heel-measured-in-missing', span),
  message: 'nothing says which heel she was measured in',
  why: 'lengths move by the difference of the two heels, and it is not known',
  hint: 'add `measured-in: {heel: …}` to the lengths, or take `worn-in` out',
});

export const trainWithoutSymmetry = (span: Span, left: readonly string[]): Diagnostic => ({
  ...problem('train-without-symmetry', span),
  message: `a train is given for a skirt whose sides differ, without ${left.map(quoted).join(' and ')}`,
  why: 'all the way round nothing says where it is longest and where it has risen again',
  hint: 'add `full` and `ends`, each with a seam, or give the finished length at each seam of the train instead',
});

export const trainAlikeBothSides = (span: Span, key: string): Diagnostic => ({
  ...problem('train-alike-both-sides', span),
  message: `${quoted(key)} is given for a train whose sides are alike`,
  why: 'it is longest at the centre back and rises again as it fell, so this is not used',
  hint: 'take it out, or write `symmetry: none` and give the gores all the way round',
});

export const trainOutOfOrder = (span: Span, stations: readonly string[]): Diagnostic => ({
  ...problem('train-out-of-order', span),
  message: 'the train does not begin, get full and end in this order',
  why: 'the hem would have to fall and rise at once',
  hint: `name three seams in the order of the gores: ${listed(stations)}`,
});

export const onFloorMissing = (span: Span): Diagnostic => ({
  ...problem('on-floor-missing', span),
  message: 'the train has no `on-floor`, and the lengths go to the floor',
  why: 'nothing says how long the train is',
  hint: 'add `on-floor` with the length that lies on the floor at the centre back, or give finished lengths',
});

export const trainBeginsBehind = (span: Span): Diagnostic => ({
  ...problem('train-begins-behind', span),
  message: 'the train begins at the centre back, where it is to be longest',
  why: 'no way is left for the hem to fall',
  hint: 'name a seam further to the front',
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

export const noCurrency = (span: Span): Diagnostic => ({
  ...problem('no-currency', span, 'warning'),
  message: 'prices are given and no `currency`',
  why: 'amounts are printed bare, and a client could read them in another money',
  hint: 'add `currency:` with its code, such as GBP, EUR or USD',
});

export const stagesNotWhole = (span: Span, whole: string): Diagnostic => ({
  ...problem('stages-not-whole', span),
  message: `the deposit and the stages make ${whole} of the price`,
  why: 'the client would pay too much or too little',
  hint: 'let them add up to 100%',
});

export const clientByName = (span: Span, client: string): Diagnostic => ({
  ...problem('client-by-name', span, 'warning'),
  message: `${quoted(client)} looks like a person's name`,
  why: "a client's measurements are personal data, and this file is kept and copied; the data-protection authority says what is allowed",
  hint: 'write a code, such as LAN-07, and keep the list of names elsewhere',
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

export const oneGirth = (span: Span): Diagnostic => ({
  ...problem('one-girth', span),
  message: 'the petticoat has fewer than two girths',
  why: 'its shape is drawn between levels',
  hint: 'give the girth at the waist (`down: 0`) and at one level below it at least',
});

export const girthsOutOfOrder = (span: Span, down: string, above: string): Diagnostic => ({
  ...problem('girths-out-of-order', span),
  message: `this girth is ${down} down, and the one before it ${above}`,
  why: 'the levels are read from the waist downwards',
  hint: 'put the girths in order, each level once',
});

export const girthsTooFarOut = (span: Span, apart: string): Diagnostic => ({
  ...problem('girths-too-far-out', span),
  message: `this girth lies farther out than the one above it than ${apart} of cloth can reach`,
  why: 'along the cloth from one hoop to the next is at least as far as the difference of their radii',
  hint: 'look at both girths; where the levels are heights, write `measured: vertical`',
});

export const noGirthAtWaist = (span: Span): Diagnostic => ({
  ...problem('no-girth-at-waist', span),
  message: 'the first girth is not at the waist',
  why: 'the shape between the waist and this level would be a guess',
  hint: 'add a girth with `down: 0` before it',
});

export const girthUnderWaist = (span: Span, girth: string, waist: string): Diagnostic => ({
  ...problem('girth-under-waist', span),
  message: `the petticoat is ${girth} round at the waist and the waist seam ${waist}`,
  why: 'the skirt takes its shape from the girths and would be too small at the top',
  hint: 'give the girth at `down: 0` as the waist seam is sewn',
});

export const shareWithoutGirths = (span: Span): Diagnostic => ({
  ...problem('share-without-girths', span),
  message: 'a gore has a share, and there are no `girths` to share',
  why: 'it is not used, and the gore could come out wider or narrower than was meant',
  hint: 'add `petticoat.girths`, or take the shares out',
});

export const sharesNotAll = (span: Span, left: readonly string[]): Diagnostic => ({
  ...problem('shares-not-all', span),
  message: `some gores have a share and ${left.map(quoted).join(', ')} ${left.length === 1 ? 'has' : 'have'} none`,
  why: 'shares by top and shares by hand do not add up to the girth',
  hint: 'give every gore its share, or none',
});

export const sharesNotWhole = (span: Span, whole: string): Diagnostic => ({
  ...problem('shares-not-whole', span),
  message: `the shares of the gores make ${whole} of the girth all round`,
  why: 'the skirt would be tighter or looser than the petticoat',
  hint: 'let all gores of the skirt add up to 100%; one that is not on the fold is in it twice, a half on the fold too',
});

export const nameTaken = (span: Span, kind: string, name: string, earlier: Span): Diagnostic => ({
  ...problem('name-taken', span),
  message: `${quoted(name)} names this ${kind} and something else on line ${lineAndColumn(earlier).line}`,
  why: 'pieces and lays are told apart by name',
  hint: 'give one of them another name',
});

export const noTiers = (span: Span): Diagnostic => ({
  ...problem('no-tiers', span),
  message: 'there are no tiers in the list',
  why: 'nothing would be cut',
  hint: 'list how long each tier is all round, from the top, such as [160, 320, 640]',
});

export const depthsOfOtherTiers = (span: Span, depths: number, tiers: number): Diagnostic => ({
  ...problem('depths-of-other-tiers', span),
  message: `depths are listed for ${depths} tiers; of tiers there are ${tiers}`,
  why: 'one depth holds for one tier',
  hint: 'list a depth for each tier, or give one for all',
});

export const tierShorterThanEdge = (span: Span, tier: string, edge: string): Diagnostic => ({
  ...problem('tier-shorter-than-edge', span),
  message: `a tier of ${tier} is to be gathered to an edge of ${edge}`,
  why: 'it does not reach round',
  hint: 'let each tier be longer than the one above it; net is commonly gathered two or three to one',
});

export const foldAtOuterEdge = (span: Span): Diagnostic => ({
  ...problem('fold-at-outer-edge', span),
  message: 'the first gore of an overskirt is on the fold',
  why: 'it begins at a free edge, which is finished and not folded',
  hint: 'give the gore whole, or put the one on the fold last, at the centre back',
});

export const overskirtWithoutSymmetry = (span: Span): Diagnostic => ({
  ...problem('overskirt-without-symmetry', span),
  message: 'an overskirt is fastened to a skirt whose sides differ',
  why: 'it is given as one half, from a station to the centre back, and mirrored',
  hint: 'write it as a spec of its own with `symmetry: none`',
});

export const overskirtBackwards = (span: Span, from: string, to: string): Diagnostic => ({
  ...problem('overskirt-backwards', span),
  message: `the overskirt goes from ${quoted(from)} to ${quoted(to)}, which does not lie behind it`,
  why: 'no part of the waist is left for it',
  hint: 'let `from` lie nearer to the front than `to`',
});

export const overskirtMissesWaist = (
  span: Span,
  tops: string,
  waist: string,
  from: string,
  to: string,
): Diagnostic => ({
  ...problem('overskirt-misses-waist', span, 'warning'),
  message: `the top of the overskirt is ${tops} on the half, and the waist from ${quoted(from)} to ${quoted(to)} ${waist}`,
  why: 'its fastenings will not lie at these stations',
  hint: 'give the tops what the waist measures there, or mark the fastenings where it ends',
});

export const sharesOfOtherLevels = (span: Span, given: number, levels: number): Diagnostic => ({
  ...problem('shares-of-other-levels', span),
  message: `shares are listed for ${given} levels; girths below the waist there are ${levels}`,
  why: 'one share holds at one level',
  hint: 'list a share for each girth below the waist, or give one share for all',
});

export const pleatsWithoutDepth = (span: Span): Diagnostic => ({
  ...problem('pleats-without-depth', span),
  message: 'pleats are asked for without their `depth`',
  why: 'it decides how many pleats there are and where they are folded',
  hint: 'add `depth`, from fold to fold',
});

export const gathersWithPleats = (span: Span, key: string): Diagnostic => ({
  ...problem('gathers-with-pleats', span),
  message: `${quoted(key)} is given for gathers`,
  why: 'only pleats have one, so it is not used',
  hint: 'write `by: pleats`, or take it out',
});

export const sideOfCentre = (span: Span, station: string): Diagnostic => ({
  ...problem('side-of-centre', span, 'warning'),
  message: `a side is given for a closure at ${quoted(station)}`,
  why: 'a centre seam has no side, so it is not used',
  hint: 'take `side` out',
});

export const fittingsOutOfOrder = (span: Span, date: string, before: string): Diagnostic => ({
  ...problem('fittings-out-of-order', span),
  message: `the fitting of ${date} stands after that of ${before}`,
  why: 'each alters what the one before it left',
  hint: 'put the fittings in the order in which they were held',
});

export const fittingUpsideDown = (span: Span, from: string, to: string): Diagnostic => ({
  ...problem('fitting-upside-down', span),
  message: `the seam is altered from ${from} to ${to} below the waist`,
  why: 'the stretch has no length',
  hint: 'let `to` lie further down than `from`',
});

export const printerOffScale = (span: Span, way: string, measured: string, fitted: boolean): Diagnostic => ({
  ...problem('printer-off-scale', span),
  message: fitted
    ? `the test square measures ${measured} mm ${way}, which is what "fit to page" makes of it`
    : `the test square measures ${measured} mm ${way} in place of 100`,
  why: fitted
    ? 'the page was scaled by the printing program, not by the printer; correcting it would hide that'
    : 'printers err by a percent or two; more is a scaled page or a slip of the ruler, and is not corrected',
  hint: 'print the first sheet again at 100 %, with no fit to page, and measure again',
});

function problem(
  code: string,
  span: Span,
  level: Level = 'error',
): Pick<Diagnostic, 'code' | 'level' | 'span'> {
  return { code, level, span };
}

const nearestIs = (near: string | undefined) =>
  near === undefined ? '' : `; the nearest is ${quoted(near)}`;

/** Names for a hint, no more than a person reads. */
function listed(words: readonly string[]): string {
  const shown = words.slice(0, 24).map((word) => (word.length > 140 ? `${word.slice(0, 140)}…` : word));
  return shown.join(', ') + (words.length > 24 ? ', …' : '');
}
