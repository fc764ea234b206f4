import type { WaistWork } from '../making/order/work-to-waist.ts';
import type { Basics } from './english-basics.ts';
import { stripStep } from './english-strips.ts';
import { type StepText, type StepWriters, text } from './step-text.ts';

type WorkOf<Kind extends WaistWork['kind']> = Extract<WaistWork, { kind: Kind }>;

/** From the first seam to the waist stay, in words. */
export const WAIST_WRITERS: StepWriters<WaistWork> = {
  'sew-seams': (
    { layer, french, stretch, bias, seams, openAbove, gap, godets, slits, pockets },
    { length, list, station, seamsOf },
  ) =>
    text(
      `Sew the seams of the ${layer} by itself, from the front round: ${list(seams.map((seam) => seamsOf(seam.name, seam.copies)))}.`,
      [
        'One notch on a front edge meets two on a back edge; pin from the waist down.',
        french
          ? 'French seams: wrong sides together first, trim, then right sides together, all within the allowance.'
          : 'Press each seam as sewn, then open.',
        stretch &&
          'It gives: pin flat, sew with a stitch that gives too, and check each seam’s length on the seam table.',
        bias &&
          'On the bias: pin it flat on the table, sew with a small zigzag and never pull; let each seam hang for a day before it is pressed.',
        ...seams.flatMap(({ name, withLayer }) =>
          withLayer === undefined ? [] : [`At ${station(name)} it is sewn to the ${withLayer}.`],
        ),
      ],
      [
        openAbove !== undefined &&
          (openAbove.stops === undefined
            ? `leave ${openAbove.side === undefined ? '' : `the ${openAbove.side} `}${station(openAbove.at)} open for the closure.`
            : `leave ${openAbove.side === undefined ? '' : `the ${openAbove.side} `}${station(openAbove.at)} open down to ${length(openAbove.stops)} below the waist seam; sew only what lies below.`),
        gap !== undefined &&
          `leave the ${layer}’s ${station(gap.at)} open ${length(gap.length)} to turn the hem.`,
        ...slits.map(
          ({ seam, side, from }) =>
            `leave ${side === undefined ? '' : `the ${side} `}${station(seam)} open from ${length(from)} below the waist seam down, for the slit.`,
        ),
        ...pockets.map(
          ({ seam, side, from, to }) =>
            `leave ${side === undefined ? '' : `the ${side} `}${station(seam)} open from ${length(from)} to ${length(to ?? from)} below the waist seam, for the pocket.`,
        ),
        ...godets.map(
          (godet) =>
            `leave ${station(godet.seam)} open from ${length(godet.from)} below the waist seam down, for the ${godet.name}.`,
        ),
      ],
    ),
  godet: ({ layer, name, seam, copies, side }, { length, station }) =>
    text(
      `Let the ${name} into the ${layer}’s ${station(seam)}${copies > 1 ? ` (${copies})` : ''}: from the point down, first one side, then the other, ${length(side)} each.`,
      ['Pivot exactly at the point; a scrap of stay tape under it keeps it from fraying.'],
    ),
  gather: ({ layer, fullness, folds, cloth, edge }, { length, list }) =>
    fullness.by === 'pleats'
      ? text(
          `Lay the pleats of the ${layer}’s waist edge${foldsText(folds, length, list)}${PLEATS[fullness.towards ?? 'none']}, from ${length(cloth)} to ${length(edge)}; baste across the top.`,
          ['Measure the pleated edge against the waist seam before it is sewn.'],
        )
      : text(
          `Gather the ${layer}’s waist edge from ${length(cloth)} to ${length(edge)}, quarter marks on quarter marks.`,
          [
            'Two rows of long stitches within the allowance, pulled from both ends; spread the gathers evenly.',
          ],
        ),
  tiers: ({ tiers }, { length, list }) =>
    text(
      `Make the ${tiers.name}: join the strips into one run, cut it into tiers of ${list(tiers.tiers.map(length))}, and close each into a ring.`,
      [
        'First finish the lower edge of the lowest, the longest, while it lies flat.',
        `Gather each tier to the one above, the top one to ${tiers.yokeLayer === undefined ? `the yoke of ${length(tiers.yoke)}` : `the ${tiers.yokeLayer.name}, closed into a ring of ${length(tiers.yoke)}`}; quarter marks on quarter marks.`,
      ],
    ),
  'set-stones': ({ name, layer, count, gross, scattered, seat }) =>
    text(
      `Set the ${name} on the ${layer} by its placing chart: ${count}${gross === undefined ? '' : `, ${gross} gross to have`}.`,
      [
        scattered
          ? 'Lay them out first, step back, and move what reads as a line; none over a seam or in an allowance.'
          : 'Pin them first and step back; none over a seam or in an allowance.',
        !seat && 'Where she sits they press into her and the chair: leave them off there if she asks.',
      ],
    ),
  flounce: ({ flounce, open }, { length }) =>
    text(
      flounce.aboveHem > 0
        ? `Sew the ${flounce.name} to the ${flounce.sewnTo.name}, ${length(flounce.aboveHem)} above its hem line.`
        : `Sew the ${flounce.name} to the ${flounce.sewnTo.name}’s hem line.`,
      [
        flounce.kind === 'straight'
          ? `Join it ${open ? 'into one length' : 'into a ring'} and gather it ${flounce.fullness} to 1, quarters on quarters.`
          : `Join it ${open ? 'into one length' : 'into a ring'}; clip its inner edge so that it spreads to the line.`,
        flounce.aboveHem === 0 && `It is the ${flounce.sewnTo.name}’s hem: that has no other.`,
        flounce.aboveHem > 0 &&
          'Where the hem below it moves as it is levelled, its line is moved by as much.',
        `It hangs ${length(flounce.depth)} deep; its own hem is levelled and closed after it has hung.`,
      ],
    ),
  overskirt: ({ overskirt }, { list, station }) =>
    text(
      `Make the ${overskirt.name} by itself: seams, its end edges ${overskirt.edges}${overskirt.gown.edgeFacing === undefined ? '' : ` with the ${overskirt.gown.edgeFacing.layer.name}`}, and a band at its top.`,
      [
        `Layers: ${list(overskirt.gown.layers.map((layer) => layer.name))}.`,
        `It fastens with ${overskirt.fastened} from ${station(overskirt.from)} to ${station(overskirt.to ?? 'centre-back')}.`,
        'Its hem stays open until it has hung and is levelled with the gown.',
        overskirt.quickRelease &&
          'Quick release: try it on her, in the time that the change allows; the production’s risk assessment decides.',
      ],
    ),
  'finish-opening': ({ at, side, finish, piece, beside, stops }, { length, station }) =>
    text(
      finish === undefined
        ? `Decide what finishes the skirt’s raw edges at ${station(at, side)}, below the ${beside} bodice edge: a placket, a facing, or a hook above the opening. Make it now.`
        : `Finish the skirt’s raw edges at ${station(at, side)} with a ${finish}${piece === undefined ? '' : ` (cut as ${piece})`}${stops === undefined ? '' : `, down to ${length(stops)} below the waist seam`}.`,
      [
        beside !== 'sewn' && `The bodice edge above is ${beside}: nothing there will cover a raw edge.`,
        finish === 'guard' &&
          'Fold and close it, and baste it behind one edge: it is caught in as the zip is set.',
      ],
      ['both edges clean before the waist is sewn.'],
    ),
  'baste-as-one': ({ layers, at, side, stops }, { length, list, station }) =>
    text(`Lay ${list(layers)} on each other, right sides up, and baste them as one along the waist edge.`, [
      at !== undefined &&
        `Also along both edges of the opening at ${station(at, side)}${stops === undefined ? '' : `, down to ${length(stops)} below the waist seam`}; below it they hang free.`,
    ]),
  close: (work, basics) => closeText(work, basics),
  strip: ({ strip }, basics) => stripStep(strip, basics),
  'join-waist': (
    { layers, plies, crossing, clearance, secondRow, panelled, gathered, pleated, stretched },
    { length, list },
  ) =>
    text(
      `Sew the ${list(layers)} to the bodice’s waist seam${layers.length > 1 ? ' as one' : ''}${panelled ? ', gore seams on panel seams' : ''}.`,
      [
        gathered.length + pleated.length + stretched.length === 0
          ? `Each gore’s top is as long as ${panelled ? 'its panel' : 'the edge that it is sewn to'}: nothing is eased, nothing stretched.`
          : panelled && 'Gore seams meet panel seams; between them:',
        gathered.length > 0 && `The ${list(gathered)}: spread the fullness evenly, quarter by quarter.`,
        pleated.length > 0 &&
          `The pleats of the ${list(pleated)} stay as they are basted: what is over or short is shared among them.`,
        stretched.length > 0 &&
          `The ${list(stretched)} is cut smaller: stretch it to ${panelled ? 'each panel' : 'the edge'} evenly as it is pinned, not as it is sewn.`,
        `${plies} plies under the needle, ${crossing} where pressed-open seams cross: trim the allowances in steps.`,
        clearance !== undefined &&
          `A second row ${length(secondRow)} above the first leaves ${length(Math.max(0, clearance))} to the bones.`,
      ],
    ),
  'waist-stay': ({ length: waist, grams, closes }, { length, weight }) =>
    text(`Tack the petersham, ${length(waist)} to fit her waist seam, to the waist allowances.`, [
      `It carries the skirt${grams === undefined ? '' : `, ${weight(grams)} without edging and what she wears under it`}${closes ? ', and fastens before the closure' : ''}.`,
    ]),
};

/** As the pattern says: one depth for all, or gore by gore where they come out otherwise. */
function foldsText(
  folds: Extract<WaistWork, { kind: 'gather' }>['folds'],
  length: Basics['length'],
  list: Basics['list'],
): string {
  const depths = [...new Set(folds.map(({ depth }) => length(depth)))];
  if (depths.length === 1) return `, each fold ${depths[0]} deep`;
  const gores = folds.filter(({ gore }, i) => folds.findIndex((own) => own.gore === gore) === i);
  return `, each fold ${list(gores.map(({ gore, depth }) => `${length(depth)} deep on the ${gore}`))}`;
}

const PLEATS = {
  front: ', towards the front',
  back: ', towards the back',
  box: ', as box pleats',
  none: '',
} as const;

function closeText(work: WorkOf<'close'>, { length, list, station }: Basics): StepText {
  const { closure, at, side, layers, starts, stops, zip } = work;
  const seam = station(at, side);
  const through = layers.length > 1 ? `through ${list(layers)} as one` : `through the ${list(layers)}`;
  const span =
    stops === undefined
      ? ''
      : starts > 0
        ? `from ${length(starts)} to ${length(stops)} below the waist seam`
        : `from the waist seam to ${length(stops)} below it`;
  if (closure === 'zip') {
    return text(
      `Set the zip into the ${seam} seam, ${through}.`,
      [
        zip !== undefined &&
          `A ${length(zip.stock)} zip${zip.shortenBy > 0 ? `, shortened by ${length(zip.shortenBy)} at the bottom: sew a new stop first, then cut` : ''}.`,
        starts > 0 && 'A hook and bar hold what is left open above it.',
      ],
      [
        starts > 0 && `start the zip ${length(starts)} below the waist seam, clear of its bulk.`,
        stops !== undefined && `stop it ${length(stops)} below the waist seam.`,
      ],
    );
  }
  const what = closure === 'lacing' ? 'eyelets or loops for the lacing' : 'hooks and bars';
  return text(`Set the ${what} along the ${seam}, ${through}${span === '' ? '' : `, ${span}`}.`, [
    closure === 'lacing' && 'Put the panel behind the lacing in now.',
  ]);
}
