import { allowanceAt } from '../../gown/layer.ts';
import { type BaggedPair, baggedPairs } from '../hem/bagged-pairs.ts';
import type { MakingFacts } from '../making-facts.ts';
import { step, type UnplacedStep } from './step.ts';
import { type StepId, togetherId } from './step-id.ts';
import { edgingSteps, isCutBehind } from './steps-of-edging.ts';
import { hasFlounceAtHem } from './steps-of-parts.ts';
import { gapOf, stepStrip } from './steps-on-cloth.ts';

/** From hanging to the hand-over. */
export function hemSteps(facts: MakingFacts): UnplacedStep[] {
  return [
    hangStep(facts),
    levelStep(facts),
    trimStep(facts),
    ...stripSteps(facts),
    ...singleHems(facts),
    ...baggedHems(facts),
    ...edgingSteps(facts),
    ...lastSteps(facts),
  ];
}

function hangStep(facts: MakingFacts): UnplacedStep {
  const { gown } = facts.bench;
  const roughCut = [...new Set(facts.hems.flatMap((hem) => hem.roughCut.map((cut) => cut.gore)))];
  return step(
    'hang',
    ['waist-stay'],
    {
      kind: 'hang',
      bias: roughCut.length > 0 ? roughCut : facts.bench.skirt.offThread,
      onBias: facts.bench.skirt.layers.flatMap(({ layer, bias }) =>
        bias === undefined ? [] : [{ layer: layer.name, drop: bias.drop }],
      ),
      flounces: gown.flounces.map(({ name }) => name),
      petticoat: hasPetticoat(facts),
    },
    { hold: true },
  );
}

function levelStep(facts: MakingFacts): UnplacedStep {
  const { gown, skirt } = facts.bench;
  return step(
    'level',
    ['hang'],
    {
      kind: 'level',
      offFloor: skirt.offFloor,
      train: gown.train !== undefined,
      petticoat: hasPetticoat(facts),
      flounces: gown.flounces.map(({ name }) => name),
      atHem: gown.flounces.filter(({ aboveHem }) => aboveHem === 0).map(({ name }) => name),
      overskirts: gown.overskirts.map(({ name }) => name),
    },
    { hold: true },
  );
}

function hasPetticoat({ bench: { gown } }: MakingFacts): boolean {
  return gown.petticoat !== undefined || gown.tiers.length > 0;
}

function trimStep(facts: MakingFacts): UnplacedStep {
  const { hems, bench } = facts;
  const own = hems.filter(({ layer }) => !hasFlounceAtHem(facts, layer));
  return step('trim', ['level'], {
    kind: 'trim',
    layers: [
      ...own.map(({ layer, allowance, shorter }) => ({ name: layer, below: allowance, shorter })),
      ...bench.gown.flounces.map(({ name, layer }) => ({
        name,
        below: allowanceAt(layer, 'hem'),
        shorter: 0,
      })),
      ...bench.gown.overskirts.flatMap(({ gown }) =>
        gown.layers.map((layer) => ({
          name: layer.name,
          below: allowanceAt(layer, 'hem'),
          shorter: layer.shape.shorter,
        })),
      ),
    ],
    roughCut: hems.some((hem) => hem.roughCut.length > 0),
  });
}

/** Braid and tape along hems; a layer's steps are told apart by number where it has more than one. */
function stripSteps({ strips, hems }: MakingFacts): UnplacedStep[] {
  const pairs = baggedPairs(hems);
  const along = strips.filter((strip) => strip.along === 'hem' && strip.kind !== 'binding');
  return along.map((strip, i) => {
    const earlier = along.slice(0, i).filter(({ layer }) => layer === strip.layer).length;
    const id: StepId = earlier === 0 ? `strip:${strip.layer}` : `strip:${strip.layer}/${earlier + 1}`;
    const before: StepId[] = [
      `hem:${strip.layer}`,
      ...pairs.filter((pair) => has(pair, strip.layer)).map(bagId),
      'fit',
    ];
    return step(id, ['trim'], { kind: 'strip', strip: stepStrip(strip) }, { before });
  });
}

function singleHems(facts: MakingFacts): UnplacedStep[] {
  const { hems, edging, strips, bench } = facts;
  return hems.flatMap((hem) => {
    const { layer, finish } = hem;
    const id: StepId = `hem:${layer}`;
    if (finish === 'bagged') return [];
    const binding = strips.find((s) => s.layer === layer && s.along === 'hem' && s.kind === 'binding');
    if (binding !== undefined)
      return [step(id, ['trim'], { kind: 'strip', strip: stepStrip(binding) }, { before: ['fit'] })];
    if (hasFlounceAtHem(facts, layer) || isCutBehind(facts, hem)) return [];
    return [
      step(
        id,
        ['trim'],
        {
          kind: 'hem',
          layer,
          finish,
          length: hem.length,
          allowance: hem.allowance,
          toEase: hem.surplus?.toEase,
          facing: bench.gown.layers.find(({ name }) => name === layer)?.facing?.layer.name,
          edged: edging?.hems.some((own) => own.layer === layer) ?? false,
        },
        { before: ['fit'] },
      ),
    ];
  });
}

/** Each pair once: braid on both first, then the hems together, then through the gap. */
function baggedHems({ hems, bench: { gown } }: MakingFacts): UnplacedStep[] {
  return baggedPairs(hems).flatMap((pair) => {
    const [inner, outer] = [pair.inner.layer, pair.outer.layer];
    const gap = gown.layers.flatMap((layer) => (has(pair, layer.name) ? (gapOf(layer) ?? []) : []))[0];
    const { length, allowance } = pair.outer;
    return [
      step(bagId(pair), ['trim'], { kind: 'bag-hem', inner, outer, length, allowance }),
      step(
        togetherId('turn', [inner, outer]),
        [bagId(pair)],
        { kind: 'turn-through', inner, outer, gap },
        { before: ['fit'] },
      ),
    ];
  });
}

function bagId({ inner, outer }: BaggedPair): StepId {
  return togetherId('bag', [inner.layer, outer.layer]);
}

function has({ inner, outer }: BaggedPair, layer: string): boolean {
  return inner.layer === layer || outer.layer === layer;
}

/** From the last fitting to the hand-over. */
function lastSteps({ closure, bustle }: MakingFacts): UnplacedStep[] {
  const pinnedUp = bustle !== undefined;
  const fitted = step('fit', ['trim'], { kind: 'fit', bustle: pinnedUp }, { hold: true });
  const bustled = !pinnedUp
    ? []
    : [step('bustle', ['fit'], { kind: 'bustle', over: bustle.kind === 'over', number: bustle.number })];
  const felled =
    closure === undefined || closure.felled.length === 0
      ? []
      : [
          step('fell-lining', ['fit', 'bustle'], {
            kind: 'fell-lining',
            layers: closure.felled,
            at: closure.at,
            side: closure.side,
          }),
        ];
  const finish = step('finish', ['fit', 'bustle', 'fell-lining', 'bodice-lining'], { kind: 'finish' });
  return [fitted, ...bustled, ...felled, finish];
}
