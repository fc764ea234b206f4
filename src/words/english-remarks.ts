import type { PieceRemark } from '../draft/piece-remark.ts';
import type { BustlePlace } from '../gown/bustle-place.ts';
import type { Basics } from './english-basics.ts';

type Say = Basics['length'];
type Of<Kind extends PieceRemark['kind']> = PieceRemark & { readonly kind: Kind };

/** What the maker does with a piece, for the text on it: a line or two without a stop. */
export function remarkText(remark: PieceRemark, say: Say): string[] {
  return (REMARKS[remark.kind] as (own: PieceRemark, say: Say) => string[])(remark, say);
}

/** Raw edges are laid level: what a facing is smaller by rolls the seam inside. */
const smallerAt = (edge: string): string => `cut smaller at the ${edge}: lay raw edges level`;
const faces = (edge: string, depth: string): string => `faces the ${edge}, ${depth} deep`;

const REMARKS: { readonly [Kind in PieceRemark['kind']]: (own: Of<Kind>, say: Say) => string[] } = {
  godet: ({ seam, from }, say) => [`let into ${seam}, its point ${say(from)} below the waist seam`],
  flounce: (own, say) => [flounceText(own, say)],
  tiers: (own, say) => [tiersText(own, say)],
  'modesty-panel': () => ['behind the lacing, sewn to one edge only'],
  strap: ({ from, to, width }, say) => [
    `fold it lengthwise, sew and turn it: ${say(width)} wide`,
    `from ${from} to ${to}`,
  ],
  cape: (own, say) => [capeText(own, say)],
  'hem-facing': ({ faces: gore, depth }, say) => [faces(`hem of ${gore}`, say(depth)), smallerAt('hem')],
  'waist-facing': ({ depth }, say) => [faces('waist', say(depth)), smallerAt('waist')],
  'upper-facing': ({ depth }, say) => [faces('upper edge', say(depth)), smallerAt('upper edge')],
  'edge-facing': ({ edge, depth }, say) => [faces(edge, say(depth))],
  yoke: ({ of, round }, say) => [
    `of ${of}: joined to a ring of ${say(round)}, its lower edge takes the first tier`,
  ],
  waistband: bandText,
  ties: ({ length, width }, say) => [
    `fold it lengthwise, sew and turn it: ${say(length)} long, ${say(width)} wide`,
  ],
  placket: ({ opening, width }, say) => [
    `one strip down one edge of the opening and up the other, ${say(opening)} each`,
    `folded over it: ${say(width)} wide`,
  ],
  guard: ({ width }, say) => [`folded lengthwise, ${say(width)} wide; behind the zip, sewn to one edge only`],
  'opening-facing': ({ at }) => [`faces the edges of the opening at ${at}`],
  'slit-facing': ({ seam }) => [
    `faces the edges of the slit at ${seam}, its lower end cut to the levelled hem`,
  ],
  'slit-stay': ({ seam }) => [`over the upper end of the slit at ${seam}`],
  pocket: ({ seam, opening }, say) => [`let into ${seam}: open ${say(opening)} between its notches`],
  loops: ({ width, count, length }, say) => [
    `one strip, sewn and turned ${say(width)} wide, then cut into ${count} of ${say(length)}`,
  ],
  binding: ({ strip: { width, length, joins }, edge }, say) => [
    `cut at 45° to the thread, as one spiral or in strips: ${say(length)} of bias ${say(width)} wide for the ${edge}, ${counted(joins, 'join')}`,
  ],
  gathers: ({ from, to }, say) => [`gather the top from ${say(from)} to ${say(to)}`],
  'top-pleats': ({ from, to, count, depth, towards }, say) => {
    const pleats = counted(count, towards === 'box' ? 'box pleat' : 'pleat');
    const lie = towards === undefined || towards === 'box' ? '' : `, towards the ${towards}`;
    return [`pleat the top from ${say(from)} to ${say(to)}: ${pleats}, each fold ${say(depth)} deep${lie}`];
  },
  dart: ({ name, takesIn, length, towards }, say) => [
    `${name}: takes in ${say(takesIn)} at the waist, ${say(length)} long, folded to the ${towards}`,
  ],
  'kick-pleat': ({ name, at, aboveHem, depth }, say) => [
    `${name}: kick pleat at ${at}, from ${say(aboveHem)} above the hem, each fold ${say(depth)} deep`,
  ],
  pleat: ({ name, lies, at, fromSeam, depth, stitchedDown }, say) => {
    const where = fromSeam === undefined ? `at ${at}` : `${say(fromSeam)} from ${at} as sewn`;
    const stitched = stitchedDown === 0 ? 'not stitched down' : `stitched down ${say(stitchedDown)}`;
    return [`${name}: ${lies} pleat ${where}, each fold ${say(depth)} deep, ${stitched}`];
  },
  'over-seams': ({ seams }) => [
    `cut over ${seams.length === 1 ? 'a seam, marked' : 'seams, marked from the front'}: ${seams.join(', ')}`,
  ],
  wrap: ({ at, over, atWaist, atHem }, say) => [
    `wraps ${say(atWaist)} past ${at} at the waist, ${say(atHem)} at the hem: that line is marked; her ${over} side lies on top`,
  ],
  'stones-marked': ({ layer, names }) => [`marked on it, to set on the ${layer}: ${names.join(', ')}`],
  bustle: ({ layer, points }, say) => [
    `bustle on the ${layer}, down from the waist seam: ${points
      .map(({ place, anchor, pickUp }) => `${placeOnPiece(place)} ring ${say(anchor)}, cross ${say(pickUp)}`)
      .join('; ')}`,
  ],
  tucks: ({ count, width, longer, folds }, say) => [
    `${count === 1 ? 'a growth tuck' : `${count} growth tucks`} ${say(width)} wide, cut ${say(longer)} longer: fold ${folds.map(say).join(', ')} above the hem line`,
  ],
};

/** The same for the cutting list: where each point of the bustle lies stands with the step that marks it. */
export function listedRemark(remark: PieceRemark, say: Say): string[] {
  return remark.kind === 'bustle' ? ['bustle marks'] : remarkText(remark, say);
}

/** Its gore is the piece's own. */
function placeOnPiece({ seam, across }: BustlePlace): string {
  return seam ?? `${Math.round(100 * across)} % across`;
}

function flounceText({ sewnTo, aboveHem, ring, open, gatheredTo }: Of<'flounce'>, say: Say): string {
  const line = aboveHem === 0 ? 'of the hem' : `${say(aboveHem)} above the hem`;
  const edge = `the line ${line} of ${sewnTo}`;
  const joined = `join to a ${open ? 'length' : 'ring'} of ${say(ring)}`;
  return gatheredTo === undefined
    ? `${joined} and sew it flat to ${edge}`
    : `${joined}, gather it to ${say(gatheredTo)} and sew it to ${edge}`;
}

function tiersText({ cuts, yoke }: Of<'tiers'>, say: Say): string {
  const tiers = `cut off ${cuts.length === 1 ? 'a tier' : 'tiers'} of ${cuts.map(say).join(', ')}`;
  const gathered =
    yoke === undefined
      ? 'gather each to the one above, by quarters'
      : `gather the first to the yoke of ${say(yoke)}, each other to the one above, by quarters`;
  return `join end to end, ${tiers}; ${gathered}`;
}

function capeText({ between, overArm, gatheredTo }: Of<'cape'>, say: Say): string {
  const where =
    between === undefined
      ? 'sew it to its edge'
      : `sew it to the upper edge from ${between.from} to ${between.to}`;
  const free = overArm === 0 ? '' : `, ${say(overArm)} of it free over the arm`;
  return gatheredTo === undefined ? `${where}${free}` : `gather it to ${say(gatheredTo)}, ${where}${free}`;
}

function bandText({ width, sewn, overlap, shaped, places }: Of<'waistband'>, say: Say): string[] {
  const sum = overlap > 0 ? `${say(sewn)} and ${say(overlap)} to overlap` : say(sewn);
  return [
    shaped ? `${sum}; outside and inside` : `${sum} long; fold it lengthwise: ${say(width)} wide`,
    `from its end: ${places.map(({ name, at }) => `${name} ${say(at)}`).join(', ')}`,
  ];
}

function counted(count: number, one: string): string {
  return `${count} ${count === 1 ? one : `${one}s`}`;
}
