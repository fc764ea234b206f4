import { goresOnce } from '../../gown/lines.ts';
import type { HemFacts } from '../hem/hem-facts.ts';
import type { MakingFacts, UnplacedStep } from '../making-facts.ts';
import type { CautionKind } from './step.ts';
import { gapOf, isNet, step, stepStrip } from './steps-on-cloth.ts';

/** From hanging to the hand-over. */
export function hemSteps(facts: MakingFacts): UnplacedStep[] {
  const { bench, closure, bustle } = facts;
  const { gown } = bench;
  const hems = [
    ...stripSteps(facts),
    ...singleHems(facts),
    ...baggedHems(facts),
    ...flounceSteps(facts),
    ...edgingSteps(facts),
    ...pressSteps(facts),
  ];
  const closed = hems.map(({ id }) => id);
  const overskirts = gown.overskirts.map(({ name }) => `overskirt:${name}`);
  const fitted = step(
    'fit',
    ['trim', ...closed, ...overskirts, 'upper-edge'],
    { kind: 'fit', bustle: bustle !== undefined },
    ['long-hem'],
    true,
  );
  const bustled =
    bustle === undefined
      ? []
      : [
          step('bustle', ['fit'], { kind: 'bustle', over: bustle.kind === 'over', number: bustle.number }, [
            ...(bustle.kind === 'over' ? (['nickel'] as const) : []),
          ]),
        ];
  const felled =
    closure === undefined || closure.felled.length === 0
      ? []
      : [
          step('fell-lining', ['fit', 'bustle'], {
            kind: 'fell-lining',
            layers: closure.felled,
            at: closure.at,
          }),
        ];
  const net = gown.layers.some(({ cloth }) => isNet(cloth));
  const last: CautionKind[] = ['pins', ...(net ? (['net-flame'] as const) : [])];
  const finish = step('finish', ['fit', 'bustle', 'fell-lining', 'bodice-lining'], { kind: 'finish' }, last);
  return [hangStep(facts), levelStep(facts), trimStep(facts), ...hems, fitted, ...bustled, ...felled, finish];
}

function hangStep({ bench: { gown }, hems }: MakingFacts): UnplacedStep {
  const roughCut = [...new Set(hems.flatMap((hem) => hem.roughCut.map((cut) => cut.gore)))];
  const offFold = goresOnce(gown).filter(({ fold }) => fold === undefined);
  const bias = roughCut.length > 0 ? roughCut : offFold.map(({ name }) => name);
  const petticoats = gown.tiers.map(({ name }) => `tiers:${name}`);
  return step('hang', ['waist-stay', ...petticoats], { kind: 'hang', bias }, [], true);
}

function levelStep({ bench: { gown, skirt }, edging }: MakingFacts): UnplacedStep {
  return step(
    'level',
    ['hang'],
    {
      kind: 'level',
      offFloor: skirt.offFloor,
      train: gown.train !== undefined,
      scallops: edging?.scallops !== undefined,
    },
    [],
    true,
  );
}

function trimStep({ hems }: MakingFacts): UnplacedStep {
  return step('trim', ['level'], {
    kind: 'trim',
    layers: hems.map(({ layer, allowance, shorter }) => ({ name: layer, below: allowance, shorter })),
    roughCut: hems.some((hem) => hem.roughCut.length > 0),
  });
}

/** Braid, binding and tape along hems. */
function stripSteps({ strips }: MakingFacts): UnplacedStep[] {
  return strips
    .filter((strip) => strip.along === 'hem' && strip.kind !== 'binding')
    .map((strip) => {
      const cautions: CautionKind[] = strip.kind === 'horsehair' ? ['braid-heat'] : [];
      return step(`strip:${strip.layer}`, ['trim'], { kind: 'strip', strip: stepStrip(strip) }, cautions);
    });
}

function singleHems({ hems, edging, strips }: MakingFacts): UnplacedStep[] {
  return hems.flatMap((hem) => {
    if (hem.finish === 'bagged') return [];
    const edged = edging?.hems.some((own) => own.layer === hem.layer) ?? false;
    const binding = strips.find((s) => s.layer === hem.layer && s.along === 'hem' && s.kind === 'binding');
    if (binding !== undefined) {
      return [
        step(`hem:${hem.layer}`, ['trim', `strip:${hem.layer}`], {
          kind: 'strip',
          strip: stepStrip(binding),
        }),
      ];
    }
    return [
      step(`hem:${hem.layer}`, ['trim', `strip:${hem.layer}`], {
        kind: 'hem',
        layer: hem.layer,
        finish: hem.finish,
        length: hem.length,
        allowance: hem.allowance,
        toEase: hem.surplus?.toEase,
        edged,
      }),
    ];
  });
}

/** Each pair once: braid on both first, then the hems together, then through the gap. */
function baggedHems({ hems, bench: { gown } }: MakingFacts): UnplacedStep[] {
  return baggedPairs(hems).flatMap(({ inner, outer }) => {
    const gap = gown.layers.flatMap((layer) =>
      [inner.layer, outer.layer].includes(layer.name) ? (gapOf(layer) ?? []) : [],
    )[0];
    const id = `bag:${inner.layer}+${outer.layer}`;
    return [
      step(id, ['trim', `strip:${inner.layer}`, `strip:${outer.layer}`], {
        kind: 'bag-hem',
        inner: inner.layer,
        outer: outer.layer,
        length: outer.length,
        allowance: outer.allowance,
      }),
      step(`turn:${inner.layer}+${outer.layer}`, [id], {
        kind: 'turn-through',
        inner: inner.layer,
        outer: outer.layer,
        gap,
      }),
    ];
  });
}

function baggedPairs(hems: readonly HemFacts[]): { inner: HemFacts; outer: HemFacts }[] {
  const pairs: { inner: HemFacts; outer: HemFacts }[] = [];
  const paired = new Set<string>();
  for (const inner of hems) {
    const outer = hems.find((hem) => hem.layer === inner.partner);
    if (outer === undefined || paired.has(inner.layer) || paired.has(outer.layer)) continue;
    pairs.push({ inner, outer });
    paired.add(inner.layer);
    paired.add(outer.layer);
  }
  return pairs;
}

/** Pleats whose hem comes first are pressed for good once it is sewn. */
function pressSteps({ bench: { skirt }, hems }: MakingFacts): UnplacedStep[] {
  const turned = baggedPairs(hems).map(({ inner, outer }) => `turn:${inner.layer}+${outer.layer}`);
  return skirt.layers.flatMap(({ layer, pleats }) => {
    const first = pleats.filter(({ pleat }) => pleat.hem === 'first').map(({ pleat }) => pleat.name);
    if (first.length === 0) return [];
    return [
      step(`press-pleats:${layer.name}`, ['trim', `hem:${layer.name}`, ...turned], {
        kind: 'press-pleats',
        layer: layer.name,
        pleats: first,
      }),
    ];
  });
}

/** A flounce is sewn on once the layer that carries it has been levelled. */
function flounceSteps({ bench: { gown } }: MakingFacts): UnplacedStep[] {
  return gown.flounces.map((flounce) =>
    step(
      `flounce:${flounce.name}`,
      ['trim', `cut:${flounce.name}`, ...(flounce.aboveHem > 0 ? [`hem:${flounce.sewnTo.name}`] : [])],
      { kind: 'flounce', flounce },
    ),
  );
}

/** Less is eased in without a thought, mm. */
const WORTH_SAYING = 1;

function edgingSteps({ edging, hems }: MakingFacts): UnplacedStep[] {
  const turned = baggedPairs(hems).map(({ inner, outer }) => `turn:${inner.layer}+${outer.layer}`);
  return (edging?.hems ?? []).map(({ layer, plan, byGore }) =>
    step(`edging:${layer}`, ['trim', `hem:${layer}`, ...turned], {
      kind: 'edging',
      name: edging!.name,
      layer,
      start: edging!.start,
      repeats: plan?.repeats,
      ease: plan?.ease,
      curved: byGore.some(({ lap }) => lap >= WORTH_SAYING),
      hollow: [
        ...new Set(byGore.filter(({ easeOuter }) => easeOuter >= WORTH_SAYING).map(({ gore }) => gore)),
      ],
      own: edging!.from === 'own-edges',
    }),
  );
}
