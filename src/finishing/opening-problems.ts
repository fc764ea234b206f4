import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';
import { error } from '../diagnostics/finding.ts';
import { quoted } from '../diagnostics/safe-text.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { GownDraft } from '../draft/draft-gown.ts';
import type { LayerDrafts } from '../draft/draft-layers.ts';
import type { Gown } from '../gown/gown.ts';
import { goresAt } from '../gown/lines.ts';
import { isOneOf, type Slit } from '../gown/openings.ts';
import type { Side } from '../gown/station.ts';
import { seamLength, slitHeight } from './opening-parts.ts';
import { BAG_ABOVE } from './pocket-bag.ts';

/** How far below the waist the hip lies where nobody measured it, mm (common practice). */
const USUAL_HIP = 200;

/** Something in a stretch of a seam, mm below the waist. */
interface InSeam {
  readonly what: string;
  readonly seam: string;
  readonly side: Side | undefined;
  readonly from: number;
  readonly to: number;
  readonly place: () => Span;
  readonly pleat?: 'laid' | 'kick';
}

/** Slits and pockets that have no room where they are asked for, and a closure's pieces that have no length. */
export function openingProblems(gown: Gown, drafts: LayerDrafts): Diagnostic[] {
  const { closure } = gown;
  const lacksLength = closure?.piece !== undefined && closure.opening === undefined;
  return [
    ...(lacksLength ? [finishWithoutOpening(closure.place('finish'), closure.finish ?? '')] : []),
    ...gown.slits.flatMap((slit) => slitProblems(slit, gown, drafts)),
    ...gown.pockets.flatMap((pocket) => pocketProblems(pocket, gown, drafts)),
    ...clashes(gown, drafts),
  ];
}

function slitProblems(slit: Gown['slits'][number], gown: Gown, drafts: LayerDrafts): Diagnostic[] {
  const long = seamLength(slit.stations, drafts.gown);
  const high = slitHeight(slit, drafts);
  if (long === undefined || high === undefined) return [];
  const say = (mm: number): string => tapeText(mm, gown.units);
  const key = slit.aboveHem === undefined ? 'below-waist' : 'above-hem';
  if (high <= 0) return [slitBelowHem(slit.place(key), slit.seam, say(long))];
  const hip = gown.body?.girths.find(({ at }) => at === 'hip')?.below ?? USUAL_HIP;
  const top = long - high;
  if (top < hip) return [slitAboveHip(slit.place(key), slit.seam, say(Math.max(0, top)), say(hip))];
  const narrow = slit.facing && narrowestBeside(slit, top, drafts.gown);
  return narrow === undefined || slit.facing!.depth < narrow.width
    ? []
    : [
        slitFacingTooDeep(
          slit.place('facing'),
          slit.seam,
          say(slit.facing!.depth),
          narrow.gore,
          say(narrow.width),
        ),
      ];
}

/** The narrower of the two gores of a slit at its upper end, where it is narrowest; opened out where it lies on the fold. */
function narrowestBeside({ stations }: Slit, top: number, { gown, frames }: GownDraft) {
  const beside = gown.stations.flatMap((station, i) =>
    stations.some((one) => isOneOf(station, one))
      ? goresAt({ round: gown.round, gores: gown.gores.map((_, gore) => gore) }, i).map((gore) => {
          const { name, fold } = gown.gores[gore]!;
          const width = frames[gore]!.widthAt(station.drop + top);
          return { gore: name, width: fold === undefined ? width : 2 * width };
        })
      : [],
  );
  return beside.reduce<(typeof beside)[number] | undefined>(
    (least, own) => (least === undefined || own.width < least.width ? own : least),
    undefined,
  );
}

function pocketProblems(pocket: Gown['pockets'][number], gown: Gown, drafts: LayerDrafts): Diagnostic[] {
  const long = seamLength(pocket.stations, drafts.gown);
  const low = pocket.belowWaist + Math.max(pocket.opening, pocket.depth);
  if (long === undefined || low < long) return [];
  const say = (mm: number): string => tapeText(mm, gown.units);
  return [pocketBelowHem(pocket.place(), pocket.seam, say(low), say(long))];
}

/** What lies in one seam on one side must not meet: a bag through a zip, a slit into a pocket. */
function clashes(gown: Gown, drafts: LayerDrafts): Diagnostic[] {
  const all = inSeams(gown, drafts);
  return all.flatMap((one, i) =>
    all
      .slice(i + 1)
      .filter(
        (other) => isBeside(one, other) && one.from < other.to && other.from < one.to && !mayMeet(one, other),
      )
      .map((other) => openingsMeet(other.place(), other.what, one.what, one.seam)),
  );
}

/** A zip or a pocket may lie in a seam that a pleat hides; pleats of several layers lie at one seam. */
function mayMeet(one: InSeam, other: InSeam): boolean {
  if (one.pleat !== undefined && other.pleat !== undefined) return true;
  const hidden = one.pleat === 'laid' ? other : other.pleat === 'laid' ? one : undefined;
  return hidden !== undefined && Number.isFinite(hidden.to);
}

function longest(seam: string, { gown: { gown, lengths } }: LayerDrafts): number | undefined {
  const own = gown.stations.flatMap(({ name }, i) => (name === seam ? [lengths[i]!] : []));
  return own.length === 0 ? undefined : Math.max(...own);
}

function isBeside(a: InSeam, b: InSeam): boolean {
  return a.seam === b.seam && (a.side === undefined || b.side === undefined || a.side === b.side);
}

function inSeams({ closure, godets, slits, pockets, pleats }: Gown, drafts: LayerDrafts): InSeam[] {
  const zip: InSeam[] =
    closure?.opening === undefined
      ? []
      : [
          {
            what: closure.kind === 'zip' ? 'the zip' : 'the closure',
            seam: closure.station.name,
            side: closure.side,
            from: 0,
            to: closure.starts + closure.opening,
            place: () => closure.place('at'),
          },
        ];
  return [
    ...zip,
    ...godets.map((godet) => ({
      what: `the godet ${quoted(godet.name)}`,
      seam: godet.seam,
      side: undefined,
      from: godet.from,
      to: Number.POSITIVE_INFINITY,
      place: () => godet.place('from'),
    })),
    ...pleats
      .filter(({ fromSeam }) => fromSeam === undefined)
      .map(({ name, kind, at, aboveHem = 0, place }) => ({
        what: `the pleat ${quoted(name)}`,
        seam: at,
        side: undefined,
        // A zip may lie above a kick pleat, and behind the fold of another one.
        from: kind === 'kick' ? (longest(at, drafts) ?? 0) - aboveHem : 0,
        to: Number.POSITIVE_INFINITY,
        place: () => place('at'),
        pleat: kind === 'kick' ? ('kick' as const) : ('laid' as const),
      })),
    ...slits.map((slit) => ({
      what: 'the slit',
      seam: slit.seam,
      side: slit.side,
      from: (seamLength(slit.stations, drafts.gown) ?? 0) - (slitHeight(slit, drafts) ?? 0),
      to: Number.POSITIVE_INFINITY,
      place: () => slit.place('seam'),
    })),
    ...pockets.map((pocket) => ({
      what: 'the pocket',
      seam: pocket.seam,
      side: pocket.side,
      from: pocket.belowWaist - BAG_ABOVE,
      to: pocket.belowWaist + pocket.opening,
      place: () => pocket.place('below-waist'),
    })),
  ];
}

const finishWithoutOpening = error('finish-without-opening', (finish: string) => ({
  message: `The closure is finished with a ${finish}, and its \`opening\` is not given.`,
  why: 'Nothing says how long to cut that piece.',
  hint: 'Add `opening`, how far the seam opens below where the closure starts.',
}));

const slitBelowHem = error('slit-below-hem', (seam: string, length: string) => ({
  message: `The slit in ${quoted(seam)} begins below the hem: the seam is ${length} long.`,
  why: 'There is no seam left to open.',
  hint: 'Let `below-waist` be less than the seam is long.',
}));

const slitAboveHip = error('slit-above-hip', (seam: string, top: string, hip: string) => ({
  message: `The slit in ${quoted(seam)} goes up to ${top} below the waist, above the hip at ${hip}.`,
  why: 'It would open over the hip as soon as she moves.',
  hint: 'Make it less high; where the hip lies is said under `body.girths`.',
}));

const slitFacingTooDeep = error(
  'slit-facing-too-deep',
  (seam: string, depth: string, gore: string, width: string) => ({
    message: `The facing of the slit in ${quoted(seam)} is ${depth} deep, and ${quoted(gore)} is ${width} wide where the slit begins.`,
    why: 'It would reach over the other seam of that gore.',
    hint: 'Make it less deep: two fingers’ breadth is plenty.',
  }),
);

const pocketBelowHem = error('pocket-below-hem', (seam: string, low: string, length: string) => ({
  message: `The pocket in ${quoted(seam)} reaches ${low} below the waist, and the seam is ${length} long.`,
  why: 'Its bag would show below the hem.',
  hint: 'Set it higher, or make its bag less deep.',
}));

const openingsMeet = error('openings-meet', (what: string, other: string, seam: string) => ({
  message: `In the seam ${quoted(seam)} ${what} runs into ${other}.`,
  why: 'A seam cannot be open for both at one place.',
  hint: 'Move one of them along the seam, to another seam, or to the other side.',
}));
