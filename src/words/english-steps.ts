import type { StepKind, StepStrip, StepWork } from '../making/order/step.ts';
import type { Basics } from './english-basics.ts';
import { BODICE_WRITERS } from './english-bodice.ts';
import { type StepText, text } from './step-text.ts';

type WorkOf<K extends StepKind> = Extract<StepWork, { kind: K }>;
type Writers = { readonly [K in StepKind]: (work: WorkOf<K>, basics: Basics) => StepText };

export function stepText(work: StepWork, basics: Basics): StepText {
  const write = WRITERS[work.kind] as (work: StepWork, basics: Basics) => StepText;
  return write(work, basics);
}

const WRITERS: Writers = {
  ...BODICE_WRITERS,
  'test-scraps': ({ cloths }, { list, percent, usual }) =>
    text('On a scrap of each cloth try the marking pen, the needle, the stitch and the steam.', [
      `Cloths: ${list(cloths.map((cloth) => cloth.name))}. Does the mark come out, does the needle pull, does water spot?`,
      `Measure a square of ${usual.swatch} of each before and after steam, along and across.`,
      cloths.some((cloth) => cloth.shrinkage > 0) &&
        `Counted on: ${list(cloths.filter((cloth) => cloth.shrinkage > 0).map((cloth) => `${cloth.name} ${percent(cloth.shrinkage)}`))}. If it is more, buy more before cutting.`,
    ]),
  shrink: ({ cloth, shrinkage }, { percent }) =>
    text(`Shrink the ${cloth} before it is laid; ${percent(shrinkage)} is counted on in the length to buy.`, [
      'Press it flat along the grain and let it cool before it is moved.',
    ]),
  'cut-own-edges': ({ cloth, edging, depth }, { length }) =>
    text(
      `Cut the ${edging} off both edges of the ${cloth} first, inside the selvedge${depth === undefined ? '' : `, ${length(depth)} deep`}.`,
      ['The lay is planned on the narrower cloth that is left.'],
    ),
  cut: ({ layer, cloth, oneWay, stretch, slippery, roughCut }, { length, list }) =>
    text(`Cut the ${layer}${layer === cloth ? '' : ` from the ${cloth}`}, by its lay.`, [
      oneWay && 'One way: all tops point the same way.',
      slippery && 'Slippery: lay it single on paper, pin at the edges, cut through both.',
      stretch && 'Let it lie loose overnight before it is cut, and never pull it to the pattern.',
      ...roughCut.map(
        ({ gores, depth }) =>
          `${sentenceStart(list(gores))} ${gores.length === 1 ? 'is' : 'are'} cut ${length(depth)} longer at the hem; that comes off after hanging.`,
      ),
    ]),
  mark: ({ sheers, zipEnds, gaps, bustle }, { length, list, station, number, unit }) =>
    text('Mark every piece before it is lifted: notches, centre front, centre back.', [
      zipEnds !== undefined &&
        `Opening at ${station(zipEnds.at)}: ${zipEnds.starts > 0 ? `start ${length(zipEnds.starts)} and ` : ''}stop ${length(zipEnds.stops)} below the waist seam.`,
      ...gaps.map(
        (gap) =>
          `Gap in the ${gap.layer} at ${station(gap.at)}: ${gap.from === undefined ? `${length(gap.length)} long` : `from ${length(gap.from)} to ${length(gap.from + gap.length)} below the waist seam`}.`,
      ),
      bustle.length > 0 &&
        `Bustle, ${unit} below the waist seam: ${bustle.map((point) => `${station(point.seam)}${point.side === undefined ? '' : `, her ${point.side},`} anchor ${number(point.anchor)}, pick-up ${number(point.pickUp)}`).join('; ')}.`,
      sheers.length > 0 && `On ${list(sheers)} mark inside the allowance, with thread.`,
    ]),
  'stay-edges': ({ tapes }, basics) =>
    text(
      'Stay-stitch the waist edge of every layer just inside its allowance, from the sides towards the centre.',
      [
        ...tapes.map(
          (tape) => `Sew ${stripWords(tape, basics)} along the ${tape.layer}’s ${basics.edge(tape.along)}.`,
        ),
      ],
    ),
  'sew-seams': (
    { layer, french, stretch, seams, openAbove, gap, godets },
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
  pleat: (work, basics) => pleatText(work, basics),
  'press-pleats': ({ layer, pleats }, { list }) =>
    text(`Press the ${layer}’s pleats for good, hem and all: ${list(pleats)}.`, [
      'Fold on the old creases from the top down, paper under each fold so that it does not print through.',
      'Inside, edge-stitch the inner folds through the hem, so that they keep their crease.',
    ]),
  'cut-part': ({ name, cloth, strips }) =>
    text(`Cut the ${name} from the ${cloth}${strips ? ', its strips as one run' : ''}, by its lay.`),
  tiers: ({ tiers }, { length, list }) =>
    text(
      `Make the ${tiers.name}: join the strips into one run, cut it into tiers of ${list(tiers.tiers.map(length))}, and close each into a ring.`,
      [
        `Gather each tier to the one above, the top one to the yoke of ${length(tiers.yoke)}; quarter marks on quarter marks.`,
        'Finish the lowest edge before the tiers are joined: it is the longest.',
      ],
    ),
  flounce: ({ flounce }, { length }) =>
    text(
      `Sew the ${flounce.name} to the ${flounce.sewnTo.name}${flounce.aboveHem > 0 ? `, ${length(flounce.aboveHem)} above its hem` : '’s hem'}.`,
      [
        flounce.kind === 'straight'
          ? `Join it into a ring, finish its hem, and gather it ${flounce.fullness} to 1, quarters on quarters.`
          : 'Join it into a ring and finish its hem; clip its inner edge so that it spreads to the line.',
        `It hangs ${length(flounce.depth)} deep.`,
      ],
    ),
  overskirt: ({ overskirt }, { list, station }) =>
    text(
      `Make the ${overskirt.name} by itself: seams, hem, its end edges ${overskirt.edges}, and a band at its top.`,
      [
        `Layers: ${list(overskirt.gown.layers.map((layer) => layer.name))}.`,
        `It fastens with ${overskirt.fastened} from ${station(overskirt.from)} to ${station(overskirt.to ?? 'centre-back')}.`,
        overskirt.quickRelease &&
          'Quick release: try it on her, in the time that the change allows; the production’s risk assessment decides.',
      ],
    ),
  'finish-opening': ({ at, finish, beside, stops }, { length, station }) =>
    text(
      finish === undefined
        ? `Decide what finishes the skirt’s raw edges at ${station(at)}, below the ${beside} bodice edge: a placket, a facing, or a hook above the opening. Make it now.`
        : `Finish the skirt’s raw edges at ${station(at)} with a ${finish}${stops === undefined ? '' : `, down to ${length(stops)} below the waist seam`}.`,
      [`The bodice edge above is ${beside}: nothing there will cover a raw edge.`],
      ['both edges clean before the waist is sewn.'],
    ),
  'baste-as-one': ({ layers, at, stops }, { length, list, station }) =>
    text(`Lay ${list(layers)} on each other, right sides up, and baste them as one along the waist edge.`, [
      at !== undefined &&
        `Also along both edges of the opening at ${station(at)}${stops === undefined ? '' : `, down to ${length(stops)} below the waist seam`}; below it they hang free.`,
    ]),
  close: (work, basics) => closeText(work, basics),
  'join-waist': ({ layers, plies, crossing, clearance, secondRow, gathered, stretched }, { length, list }) =>
    text(
      `Sew the ${list(layers)} to the bodice’s waist seam${layers.length > 1 ? ' as one' : ''}, gore seams on panel seams.`,
      [
        gathered.length === 0 && stretched.length === 0
          ? 'Each gore’s top is as long as its panel: nothing is eased, nothing stretched.'
          : 'Gore seams meet panel seams; between them:',
        gathered.length > 0 && `The ${list(gathered)}: spread the fullness evenly, quarter by quarter.`,
        stretched.length > 0 &&
          `The ${list(stretched)} is cut smaller: stretch it to each panel evenly as it is pinned, not as it is sewn.`,
        `${plies} plies under the needle, ${crossing} where pressed-open seams cross: trim the allowances in steps.`,
        clearance !== undefined &&
          `A second row ${length(secondRow)} above the first leaves ${length(Math.max(0, clearance))} to the bones.`,
      ],
    ),
  'waist-stay': ({ length: waist, grams }, { length, weight }) =>
    text(`Tack the petersham, ${length(waist)} to fit her waist seam, to the waist allowances.`, [
      `It carries the skirt${grams === undefined ? '' : `, ${weight(grams)} without edging and petticoat`}, and fastens before the closure.`,
    ]),
  hang: ({ bias }, { list }) =>
    text(
      'Hang the gown over its petticoat.',
      [`The bias edges drop: ${list(bias)}.`],
      ['at least 24 hours, before the hem is levelled.'],
    ),
  level: ({ offFloor, train, scallops }, { length, usual }) =>
    text(
      'Level the hem on her, in the shoes, over the petticoat, measuring from the floor up.',
      [
        `A pin every ${usual.pins} all round${offFloor === undefined ? '' : `, ${length(offFloor)} off the floor`}; write down how far along the hem each lies and how far it moved, not only at the seams.`,
        scallops && 'Measure at the scallops’ high points as well as at the low ones.',
        train && 'Lay the train out on a clean floor and look along its curve through every seam.',
      ],
      ['she has walked, turned and climbed a step before a pin is moved for good.'],
    ),
  trim: ({ layers, roughCut }, { length }) =>
    text('Cut every layer to the levelled line and its own allowance.', [
      `${sentenceStart(layers.map(({ name, below, shorter }) => `${name} ${shorter > 0 ? `${length(shorter)} shorter, ` : ''}${below > 0 ? `${length(below)} below its hem line` : 'on its hem line'}`).join('; '))}.`,
      roughCut && 'The extra at the hem comes off now.',
    ]),
  strip: ({ strip }, basics) => stripStep(strip, basics),
  hem: (work, basics) => hemText(work, basics),
  'bag-hem': ({ inner, outer, length: round, allowance }, { length }) =>
    text(`Bag the hems: ${inner} and ${outer} right sides together, seam on seam, ${length(round)} round.`, [
      `Sew at ${length(allowance)}, clip the curve, trim in steps.`,
    ]),
  'turn-through': ({ inner, outer, gap }, { length, station, usual }) =>
    text(
      gap === undefined
        ? `Turn ${inner} and ${outer} to the right side. The spec leaves no gap for it: leave one before the hems are bagged.`
        : `Turn the skirt through the gap in the ${gap.layer}’s ${station(gap.at)} (${length(gap.length)}).`,
      [`Roll the ${outer} ${usual.roll} to the inside and press; then close the gap by hand.`],
    ),
  edging: ({ name, layer, start, repeats, ease, curved, hollow, own }, { length, station, list }) =>
    text(
      `Lay the ${name} round the ${layer}, its outer edge on the hem line, starting at ${station(start)}${repeats === undefined ? '' : `: ${repeats} repeats`}.`,
      [
        ease !== undefined && `${length(ease)} in all to ease in evenly; eased, never stretched.`,
        curved &&
          'Its inner edge is too long where the hem bulges: lap or tuck it at the motifs, gore by gore as the table says.',
        hollow.length > 0 &&
          `In the hollow of ${list(hollow)} ease its outer edge instead, and never stretch the inner.`,
        `Cut round a motif and lap the ends where it began${own ? '; hide the join between the two edges of the cloth in a seam' : ''}.`,
      ],
    ),
  fit: ({ bustle }) =>
    text(
      'Last fitting: she walks, sits, turns and climbs a step, in the shoes.',
      [bustle && 'Pin the bustle up and let her dance in it.'],
      [`nothing more is sewn before she is content${bustle ? ' with hem and bustle' : ' with the hem'}.`],
    ),
  bustle: ({ over, number }) =>
    text(
      `Sew the bustle, ${number} ${number === 1 ? 'point' : 'points'} as pinned: ${over ? 'loops on the seams, hooks or buttons outside' : 'ribbons in pairs on the inside, numbered from the centre out'}.`,
      ['Through the seam allowances, on a small patch behind the cloth.'],
    ),
  'fell-lining': ({ layers, at }, { list, station }) =>
    text(`Fell the ${list(layers)} to the closure at ${station(at)} by hand, last of all.`),
  finish: () =>
    text(
      'Press from the inside, take out every basting thread, count the pins, and pack with the care card.',
    ),
};

/** As the pattern says: one depth for all, or gore by gore where they come out otherwise. */
function foldsText(folds: WorkOf<'gather'>['folds'], length: Basics['length'], list: Basics['list']): string {
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
  const seam = `${side === undefined ? '' : `${side} `}${station(at)}`;
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

const OUTER: Readonly<Record<WorkOf<'pleat'>['pleat']['kind'], string>> = {
  knife: 'Bring its outer fold to its placement line, as the arrow points.',
  box: 'Bring both outer folds to their placement lines, away from each other: the inner folds meet behind the face.',
  inverted: 'Bring both outer folds to their placement lines, where they meet.',
  kick: 'Fold both extensions to one side, along the seam, and sew across their tops from the right side.',
};

function pleatText({ layer, pleat, places, folds }: WorkOf<'pleat'>, { length, station }: Basics): StepText {
  const { name, kind, at, gore, fromSeam, foldDepth, towards, stitchedDown, aboveHem = 0, hem } = pleat;
  const where =
    fromSeam === undefined
      ? `at ${station(at)}`
      : `on the ${gore}, ${length(fromSeam)} from ${station(at)} along the waist seam`;
  const count = places === 1 ? '' : ` (${places})`;
  const many = folds === 1 ? 'its fold' : `each of its ${folds} folds`;
  return text(
    `Lay the ${layer}’s ${name}${count}, ${article(kind)} ${kind} pleat ${where}: ${many} ${length(foldDepth)} deep, from its outer edge to its inner edge.`,
    [
      OUTER[kind],
      towards !== undefined && `Its outer fold points to the ${towards}.`,
      kind === 'kick' && `It begins ${length(aboveHem)} above the hem.`,
      kind !== 'kick' &&
        (stitchedDown > 0
          ? `Stitch it down from the waist seam for ${length(stitchedDown)}; below, baste it closed to the hem.`
          : 'It is not stitched down: baste it closed from the waist seam to the hem.'),
      hem === 'first'
        ? 'Its hem is sewn first, opened out flat; only then is it pressed for good.'
        : 'Press it now; its hem is turned up afterwards, folded as it hangs.',
    ],
  );
}

function article(word: string): string {
  return /^[aeiou]/.test(word) ? 'an' : 'a';
}

function hemText(work: WorkOf<'hem'>, { length }: Basics): StepText {
  const { layer, finish, allowance, toEase, edged } = work;
  const round = length(work.length);
  switch (finish) {
    case 'turned':
      return text(`Turn up the ${layer}’s hem ${length(allowance)}, ${round} round, and sew it.`, [
        toEase !== undefined &&
          toEase > 0 &&
          `${length(toEase)} has to be eased away along the turned edge: gather it on a thread and steam it in.`,
      ]);
    case 'faced':
      return text(`Face the ${layer}’s hem, ${round} round.`, [
        'Cut the facing to the levelled edge; sew right sides together, clip, understitch, and roll the seam just inside.',
      ]);
    case 'rolled':
      return text(`Roll the ${layer}’s hem, ${round} round, by hand or with the foot.`);
    case 'raw':
      return text(
        edged
          ? `Cut the ${layer}’s edge clean: the edging covers it.`
          : `Cut the ${layer}’s edge clean in one sweep, ${round} round; it stays raw.`,
      );
  }
}

function stripStep(strip: StepStrip, basics: Basics): StepText {
  const { length, edge, usual } = basics;
  const where = `the ${strip.layer}’s ${edge(strip.along)}`;
  if (strip.kind === 'horsehair') {
    return text(`Sew ${stripWords(strip, basics)} to ${where}.`, [
      strip.drawnIn !== undefined &&
        strip.drawnIn > 0 &&
        `Draw its upper edge in by its own thread, ${length(strip.drawnIn)} in all.`,
      `Lap the ends ${usual.lap} and cover them: they scratch.`,
    ]);
  }
  if (strip.kind === 'binding') return text(`Bind ${where} with ${stripWords(strip, basics)}.`);
  return text(`Sew ${stripWords(strip, basics)} along ${where}.`);
}

function stripWords({ kind, width, length: long }: StepStrip, { length, stripName }: Basics): string {
  return `the ${stripName(kind)}, ${width === undefined ? '' : `${length(width)} wide and `}${length(long)} long,`;
}

function sentenceStart(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
