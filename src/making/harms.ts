import type { Gown } from '../gown/gown.ts';
import { isSequinned, isSheer } from './cloth-kinds.ts';
import { cutLayers } from './cut-layers.ts';
import type { MakingFacts } from './making-facts.ts';
import type { CautionKind } from './order/caution-kind.ts';
import type { StepWork } from './order/step.ts';

/** A harm, when this gown has it, and where it is printed: at which steps, at the head of the job sheet, on the client's page. */
export interface Harm {
  readonly kind: CautionKind;
  readonly isIn: (facts: MakingFacts) => boolean;
  /** Printed once, at the first such step of the order: what stands at every step is read at none. */
  readonly step?: { readonly at: (work: StepWork) => boolean };
  readonly jobSheet?: true;
  readonly client?: true;
}

/** A hem nearer to the floor than this is one to lift on stairs, mm. */
const LONG_HEM = 150;

/** Plies from which common practice counts a seam as bulky. */
const MANY_PLIES = 6;

const always = (): boolean => true;
const of =
  (...kinds: readonly StepWork['kind'][]) =>
  (work: StepWork): boolean =>
    kinds.includes(work.kind);

/** Every harm in the order in which its caution stands where several meet. */
export const HARMS: readonly Harm[] = [
  { kind: 'child', isIn: ({ bench }) => bench.gown.body?.wearer === 'child', jobSheet: true, client: true },
  { kind: 'data', isIn: always, jobSheet: true, client: true },
  { kind: 'irons', isIn: always, step: { at: of('test-scraps') } },
  { kind: 'flame', isIn: ({ bench }) => burnsFast(bench.gown), step: { at: of('test-scraps') } },
  { kind: 'floor-cutting', isIn: always, step: { at: of('cut') } },
  { kind: 'blades', isIn: always, step: { at: of('cut') } },
  {
    kind: 'sequins',
    isIn: ({ bench }) => cutLayers(bench.gown).some(({ cloth }) => isSequinned(cloth)),
    step: { at: (work) => work.kind === 'cut' && work.beaded },
  },
  {
    kind: 'needle-zip',
    isIn: always,
    step: {
      at: (work) =>
        (work.kind === 'close' && work.closure === 'zip') ||
        (work.kind === 'bodice-close' && work.closing?.kind === 'zip'),
    },
  },
  // What comes made may be boned; into a bodice that is made here they go once the waist is sewn.
  { kind: 'needle-bone', isIn: mayComeBoned, step: { at: of('join-waist') } },
  { kind: 'needle-bone', isIn: isBonedHere, step: { at: of('upper-edge') } },
  {
    kind: 'many-plies',
    isIn: always,
    step: { at: (work) => work.kind === 'join-waist' && work.crossing >= MANY_PLIES },
  },
  { kind: 'nickel', isIn: always, step: { at: hasHooks }, client: true },
  { kind: 'braid-heat', isIn: always, step: { at: isBraid } },
  { kind: 'weight', isIn: always, step: { at: of('waist-stay', 'own-waist') }, client: true },
  {
    kind: 'tight-lacing',
    isIn: isLaced,
    step: { at: of('toile-bodice', 'fit-bodice', 'fit') },
    client: true,
  },
  {
    kind: 'hoop',
    isIn: ({ bench }) => bench.gown.petticoat?.hoop !== undefined,
    step: { at: of('fit') },
    client: true,
  },
  { kind: 'stairs', isIn: isLongWithoutTrain, step: { at: of('fit') }, client: true },
  { kind: 'train-on-stairs', isIn: hasTrain, step: { at: of('fit') }, client: true },
  { kind: 'dancing', isIn: ({ bustle }) => bustle !== undefined, client: true },
  { kind: 'flame-worn', isIn: always, client: true },
  { kind: 'pins', isIn: always, step: { at: of('finish') } },
];

/** Net, sheers and loose edges catch first and burn fast: wherever in the gown they are. */
function burnsFast(gown: Gown): boolean {
  return (
    gown.flounces.length > 0 || gown.tiers.length > 0 || cutLayers(gown).some(({ cloth }) => isSheer(cloth))
  );
}

/** A bodice that is not drafted here may hold bones unless nothing is above the waist. */
function mayComeBoned({ bodice, bench: { gown } }: MakingFacts): boolean {
  return bodice === undefined && gown.waist === undefined;
}

function isBonedHere({ bodice }: MakingFacts): boolean {
  return bodice?.asked.draft.bones !== undefined;
}

/** Every hook and bar: closure, bodice, over a zip, bustle, what comes off. */
function hasHooks(work: StepWork): boolean {
  switch (work.kind) {
    case 'close':
      return work.closure === 'hooks' || (work.closure === 'zip' && work.starts > 0);
    case 'bodice-close':
      return work.closing?.kind === 'hooks' || work.closing?.kind === 'busk';
    case 'finish-opening':
      return work.finish === 'hook';
    case 'own-waist':
      return work.finish === 'band' && work.overlap > 0 && !work.wraps;
    case 'fasten-wrap':
      return work.fastened === 'hooks' || work.fastened === 'snaps';
    case 'overskirt':
      return work.overskirt.fastened === 'hooks' || work.overskirt.fastened === 'snaps';
    case 'bustle':
      return work.over;
    default:
      return false;
  }
}

function isBraid(work: StepWork): boolean {
  return work.kind === 'strip' && work.strip.kind === 'horsehair';
}

function isLaced({ bodice, closure }: MakingFacts): boolean {
  return (bodice?.lacing?.eyelets ?? 0) > 0 || closure?.kind === 'lacing';
}

/** A train on the floor, also one that is worn over a short skirt. */
function hasTrain({ bench: { gown } }: MakingFacts): boolean {
  return [gown, ...gown.overskirts.map((own) => own.gown)].some(({ train }) => train !== undefined);
}

/** A hem that shoes step on. */
function isLongWithoutTrain(facts: MakingFacts): boolean {
  return !hasTrain(facts) && (facts.bench.skirt.offFloor ?? 0) < LONG_HEM;
}
