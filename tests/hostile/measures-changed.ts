import type { Tree } from './mutate-tree.ts';
import type { Random } from './random.ts';

type Section = { [key: string]: Tree };

/**
 * Many measures of a spec changed at once, some by little and some far, and the bodice made to agree again: what comes
 * out may be a gown, if an odd one, so that it is drafted and not refused at the door.
 */
export function measuresChanged(tree: Tree, random: Random): void {
  const reach = random.pick([0.1, 0.3, 1, 2.5]);
  const share = random.pick([0.05, 0.2, 0.6]);
  changeWithin(tree, (key, measure) => {
    if (FIXED.has(key) || !random.chance(share)) return measure;
    const match = /^(-?[\d.]+)(.*)$/.exec(String(measure));
    if (match === null) return measure;
    const changed = Number((Number(match[1]) * Math.exp(reach * (2 * random.share() - 1))).toPrecision(4));
    return match[2] === '' ? changed : `${changed}${match[2]}`;
  });
  if (random.chance(0.2)) chooseAnother(tree, random);
  agree(tree as Section);
}

/** Not measures: what changes them makes another kind of spec, or none. */
const FIXED = new Set(['format', 'count', 'pieces', 'plies', 'dye-lot', 'fittings-included']);

function changeWithin(value: Tree, change: (key: string, measure: number | string) => Tree): void {
  if (typeof value !== 'object' || value === null) return;
  for (const [key, item] of Object.entries(value)) {
    const isMeasure =
      typeof item === 'number' || (typeof item === 'string' && /^-?[\d.]+(cm|mm|in|m|yd|deg|%)?$/.test(item));
    if (isMeasure) (value as Section)[key] = change(key, item);
    else changeWithin(item, change);
  }
}

const CHOICES: Readonly<Record<string, readonly string[]>> = {
  hem: ['turned', 'faced', 'bagged', 'rolled', 'raw'],
  shape: ['round', 'pointed', 'square'],
  grain: ['centre', 'front-edge', 'back-edge'],
  measured: ['finished', 'cut', 'to-floor', 'along', 'vertical'],
  fold: ['any', 'single', 'lengthwise', 'crosswise'],
  kind: ['over', 'under', 'straight', 'circular', 'zip', 'lacing', 'hooks'],
  size: ['a4', 'a3', 'letter', 'roll:914', 'roll:310'],
  units: ['cm', 'mm', 'in'],
  seams: ['pressed-open', 'french'],
  towards: ['front', 'back', 'box'],
  where: ['throughout', 'waist'],
};

function chooseAnother(value: Tree, random: Random): void {
  if (typeof value !== 'object' || value === null) return;
  for (const [key, item] of Object.entries(value)) {
    const choices = CHOICES[key];
    if (typeof item === 'string' && choices?.includes(item) && random.chance(0.3))
      (value as Section)[key] = random.pick(choices);
    else chooseAnother(item, random);
  }
}

/** The waist seam becomes what the tops make, and panels follow the tops. */
function agree(spec: Section): void {
  const { bodice, gores } = spec as { bodice?: Section; gores?: Section[] };
  if (bodice === undefined || !Array.isArray(gores)) return;
  const panels = (bodice.panels ?? {}) as Section;
  let sum = 0;
  for (const gore of gores) {
    const [key, times] = gore['on-fold'] === true ? ['half-top', 2] : ['top', 1];
    const panel = Number(panels[String(gore.name)] ?? Number.NaN);
    const own = Number(gore[key] ?? Number.NaN);
    const top = Number.isFinite(own) ? own * times : panel;
    if (gore[key] !== undefined) gore[key] = top / times;
    if (panels[String(gore.name)] !== undefined) panels[String(gore.name)] = top;
    sum += top * (gore['on-fold'] === true || spec.symmetry === 'none' ? 1 : 2);
  }
  if (Number.isFinite(sum)) bodice['waist-seam'] = Number(sum.toFixed(3));
}
