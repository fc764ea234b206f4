import type { DraftedBodice } from '../../bodice/draft-asked.ts';
import type { MakingFacts } from '../making-facts.ts';
import { step, type UnplacedStep } from './step.ts';
import { cutId, type StepId, togetherId } from './step-id.ts';

/** The last step of a drafted bodice before its waist seam; nothing where the bodice is made elsewhere. */
export const BODICE_READY = 'bodice-close' satisfies StepId;

/**
 * A drafted bodice, from its toile to its upper edge. It is fitted before anything is cut; its bones go in after the
 * waist seam is sewn, so that no needle meets them there; the upper edge is closed over them; its lining comes last.
 */
export function bodiceSteps(facts: MakingFacts): UnplacedStep[] {
  const { bodice } = facts;
  return [...(bodice === undefined ? [] : stepsOf(bodice, facts)), ...besideSteps(facts)];
}

function stepsOf(bodice: DraftedBodice, facts: MakingFacts): UnplacedStep[] {
  const { layers, facing } = bodice.asked;
  const { closing, upperFinish, bones } = bodice.asked.draft;
  const lining = layers.find(({ name }) => /lining/i.test(name));
  const outer = layers.filter((layer) => layer !== lining);
  const carrier = (outer[0] ?? layers[0]!).name;
  const isLaced = (bodice.lacing?.eyelets ?? 0) > 0;
  const afterWaist = facts.waist.groups.map(({ layers: names }) => togetherId('waist', names));
  return [
    step('toile', [], { kind: 'toile-bodice', laced: isLaced }, { hold: true }),
    step('bodice-seams', ['mark'], { kind: 'bodice-seams', layers: layers.map(({ name }) => name) }),
    ...(bones === undefined
      ? []
      : [
          step('casings', ['bodice-seams'], {
            kind: 'casings',
            layer: carrier,
            width: bones.width,
            bones: bodice.bones.map(({ along, side, casing, count }) => ({ along, side, casing, count })),
          }),
        ]),
    step('bodice-layers', ['bodice-seams', 'casings'], {
      kind: 'bodice-layers',
      layers: outer.map(({ name }) => name),
      tape: bodice.tape.length,
      lining: lining?.name,
    }),
    step(BODICE_READY, ['bodice-layers'], { kind: 'bodice-close', closing, lacing: bodice.lacing }),
    step(
      'fit-bodice',
      [...afterWaist, BODICE_READY],
      { kind: 'fit-bodice', beside: besideNames(facts) },
      { hold: true },
    ),
    ...(bones === undefined
      ? []
      : [
          step(
            'bones',
            ['fit-bodice', 'casings'],
            {
              kind: 'bones',
              material: bones.kind,
              clear: bones.clear,
              bones: bodice.bones.map(({ along, side, length, count }) => ({ along, side, length, count })),
            },
            { before: ['level'] },
          ),
        ]),
    ...(facing === undefined
      ? []
      : [
          step(
            'upper-facing',
            [cutId(facing.layer), 'mark'],
            { kind: 'upper-facing', facing: facing.layer.name, depth: facing.depth },
            { before: ['upper-edge'] },
          ),
        ]),
    step(
      'upper-edge',
      ['fit-bodice', 'bones', ...besideNames(facts).map((name): StepId => `beside:${name}`)],
      {
        kind: 'upper-edge',
        finish: upperFinish,
        length: bodice.figures.upper,
        facing: facing?.layer.name,
      },
      { before: ['fit'] },
    ),
    ...(lining === undefined
      ? []
      : [
          step('bodice-lining', ['upper-edge', 'fit', 'bustle', 'fell-lining'], {
            kind: 'bodice-lining',
            layer: lining.name,
          }),
        ]),
  ];
}

function besideNames({ bench: { gown } }: MakingFacts): string[] {
  return [...gown.straps, ...gown.capes].map(({ name }) => name);
}

/** Straps and capes: made by themselves, pinned on at a fitting, caught in the upper edge. */
function besideSteps({ bench: { gown }, bodice }: MakingFacts): UnplacedStep[] {
  const fitted: StepId[] = bodice === undefined ? [] : ['fit-bodice'];
  const straps = gown.straps.map(({ name, layer, from, to, length, width }) =>
    step(
      `beside:${name}`,
      [cutId(layer), 'mark', ...fitted],
      { kind: 'strap', name, from, to, length, width },
      { before: ['fit'] },
    ),
  );
  const capes = gown.capes.map(({ name, from, to, fullness, layers }) =>
    step(
      `beside:${name}`,
      [...layers.map(cutId), 'mark', ...fitted],
      {
        kind: 'cape',
        name,
        from,
        to,
        gathered: fullness !== undefined,
        hems: layers.map((layer) => ({ layer: layer.name, finish: layer.hem, edging: layer.edging })),
      },
      { before: ['fit'] },
    ),
  );
  return [...straps, ...capes];
}
