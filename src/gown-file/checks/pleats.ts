import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/pleat-problems.ts';
import type { Page } from './page.ts';

type Pleat = NonNullable<Page['sketch']['pleats']>[number];

/** Each pleat by itself: what its kind must have and cannot have, and what else lies at its place. */
export function checkPleats(page: Page): Diagnostic[] {
  return (page.sketch.pleats ?? []).flatMap((pleat, i) => {
    const { name, kind, at } = pleat;
    if (name === undefined || kind === undefined || at === undefined) return [];
    const own = { ...pleat, name, kind, at };
    return [
      ...checkBias(page, own, i),
      ...checkFacing(page, own, i),
      ...checkKind(page, own, i),
      ...checkPlace(page, own, i),
      ...checkBeside(page, own, i),
    ];
  });
}

type Told = Pleat & {
  readonly name: string;
  readonly kind: NonNullable<Pleat['kind']>;
  readonly at: string;
};

/** A kick pleat's facing is cut over its extensions; of other pleats it would not reach under the folds. */
function checkFacing(page: Page, { name, kind, layers }: Told, i: number): Diagnostic[] {
  if (kind === 'kick') return [];
  return (page.sketch.layers ?? []).flatMap((layer) =>
    layer.facing === undefined || layers?.includes(layer.name ?? '') === false
      ? []
      : [problems.pleatWithFacing(page.at('pleats', i, 'layers'), name, layer.name ?? '')],
  );
}

function checkBias(page: Page, { name, layers }: Told, i: number): Diagnostic[] {
  const own = (page.sketch.layers ?? []).find(
    (layer) => layer.grain === 'bias' && (layers === undefined || layers.includes(layer.name ?? '')),
  );
  return own === undefined
    ? []
    : [problems.pleatOnBias(page.at('pleats', i, 'layers'), name, own.name ?? '')];
}

/** What a kind has beside its depth; what else is written is refused. */
const OWN_KEYS = {
  knife: ['from-seam', 'gore', 'towards', 'stitched-down'],
  box: ['from-seam', 'gore', 'stitched-down'],
  inverted: ['from-seam', 'gore', 'stitched-down'],
  kick: ['towards', 'above-hem'],
} as const;
const KEYS = ['from-seam', 'gore', 'towards', 'stitched-down', 'above-hem'] as const;
const NEEDED = { knife: 'towards', kick: 'above-hem', box: undefined, inverted: undefined } as const;

function checkKind(page: Page, { name, kind }: Told, i: number): Diagnostic[] {
  const own: readonly string[] = OWN_KEYS[kind];
  const unused = KEYS.filter((key) => !own.includes(key) && page.has('pleats', i, key));
  const needed = NEEDED[kind];
  return [
    ...unused.map((key) => problems.pleatHasNo(page.keyAt('pleats', i, key), name, kind, key)),
    ...(needed === undefined || page.has('pleats', i, needed)
      ? []
      : [problems.pleatWithout(page.at('pleats', i), name, kind, needed)]),
  ];
}

function checkPlace(page: Page, { name, kind, at, gore, fromSeam }: Told, i: number): Diagnostic[] {
  const faults: Diagnostic[] = [];
  const span = page.at('pleats', i, 'at');
  const isCentre = page.mirrored && [page.front, page.back].includes(at);
  if (kind === 'knife' && isCentre && fromSeam === undefined && !page.has('pleats', i, 'from-seam'))
    faults.push(problems.pleatAtCentre(span, name, kind, at));
  if (kind === 'kick' && page.folds.includes(at)) faults.push(problems.pleatOnFold(span, name, at));
  const { goreNames: gores = [], stations = [] } = page;
  const station = stations.indexOf(at);
  if (gore === undefined || station < 0 || !gores.includes(gore)) return faults;
  const around = page.mirrored
    ? [gores[station - 1], gores[station]]
    : [gores.at(station - 1), gores[station]];
  if (!around.includes(gore))
    faults.push(problems.pleatOnOtherGore(page.at('pleats', i, 'gore'), name, gore, at));
  return faults;
}

function checkBeside(page: Page, { name, kind, at, stitchedDown }: Told, i: number): Diagnostic[] {
  const { closure, gores = [], layers = [] } = page.sketch;
  const opens = closure?.at === at && kind !== 'kick' && (stitchedDown ?? 0) > 0;
  const inOpening =
    opens && !page.has('pleats', i, 'from-seam')
      ? [problems.pleatInOpening(page.at('pleats', i, 'at'), name, at)]
      : [];
  const full = gores.find(
    (gore) =>
      gore.fullness !== undefined &&
      (at.split('/').includes(gore.name ?? '') || isAtCentre(page, at, gore.name)),
  );
  const isFull = full !== undefined || layers.some((layer) => layer.fullness !== undefined);
  return [
    ...inOpening,
    ...(isFull && kind !== 'kick'
      ? [problems.pleatOnFullness(page.at('pleats', i, 'at'), name, full?.name ?? gores[0]?.name ?? '')]
      : []),
  ];
}

function isAtCentre(page: Page, at: string, gore: string | undefined): boolean {
  const names = page.goreNames ?? [];
  return (at === page.front && gore === names[0]) || (at === page.back && gore === names.at(-1));
}
