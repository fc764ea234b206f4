import { innerAngle, sectorOf } from '../measure/gore.ts';
import type { MeasuredGown } from '../measure/gown.ts';
import { areaOf } from '../measure/path.ts';
import { differs } from './measures.ts';

/** The report's figures and the drawing's are two roundings of one thing, mm. */
const FIGURE = 0.02;

/** Every figure of the report against the same figure measured on the drawing. */
export function figureUntruths(gown: MeasuredGown): string[] {
  return [...goreFigures(gown), ...seamFigures(gown), ...totals(gown)];
}

function goreFigures({ facts, report, layers }: MeasuredGown): string[] {
  const found: string[] = [];
  const names = report.gores.map((gore) => gore.name).join(', ');
  const asked = facts.gores.map((gore) => gore.name).join(', ');
  if (names !== asked) found.push(`the report's gores are ${names}, the spec's ${asked}`);
  for (const [i, gore] of facts.gores.entries()) {
    const drawn = longest(layers, i);
    const said = report.gores.find((one) => one.name === gore.name);
    if (drawn === undefined || said === undefined) continue;
    const where = `report, ${gore.name}`;
    const full = layerOf(layers, i)?.layer.fullness(gore.name).top ?? 1;
    found.push(...differs(`${where}: top`, said.top, drawn.waist.length / full, FIGURE));
    found.push(...differs(`${where}: hem`, said.hem, drawn.hem.length, FIGURE));
    if (!gore.shaped) {
      const flare = (sectorOf(drawn, 0, 0).flare * 180) / Math.PI;
      found.push(...differs(`${where}: flare`, said.flareDegrees, flare, 0.01));
    }
    found.push(...differs(`${where}: area in cm²`, said.area / 100, areaOf(drawn.outline) / 100, 0.05));
    for (const [edge, path] of drawn.piece.sew) {
      const length = said.edges[edge];
      if (length === undefined) found.push(`${where}: no edge ${edge}`);
      else found.push(...differs(`${where}: edge ${edge}`, length, path.length, FIGURE));
    }
    if (said.copies !== (gore.fold === undefined && !facts.closed ? 2 : 1))
      found.push(`${where}: ${said.copies} copies`);
  }
  return found;
}

function seamFigures({ facts, report, layers }: MeasuredGown): string[] {
  const found: string[] = [];
  const last = facts.gores.length;
  for (let i = facts.closed ? 0 : 1; i < last; i++) {
    const name = facts.stations[i]!.name;
    const [ahead, behind] = [longest(layers, (i + last - 1) % last), longest(layers, i)];
    const said = report.seams.find((seam) => seam.name === name);
    if (said === undefined) found.push(`report: no seam ${name}`);
    if (said === undefined || ahead === undefined || behind === undefined) continue;
    const angle = (edge: 'waist' | 'hem') =>
      innerAngle(ahead, edge, 'back') + innerAngle(behind, edge, 'front');
    found.push(...differs(`report, ${name}: first length`, said.lengths[0], ahead.back.length, FIGURE));
    found.push(...differs(`report, ${name}: second length`, said.lengths[1], behind.front.length, FIGURE));
    found.push(...differs(`report, ${name}: hem angle`, said.hemAngle, angle('hem'), 0.05));
    found.push(...differs(`report, ${name}: waist angle`, said.waistAngle, angle('waist'), 0.05));
    found.push(
      ...differs(
        `report, ${name}: difference`,
        Math.abs(said.difference),
        Math.abs(said.lengths[0] - said.lengths[1]),
        FIGURE,
      ),
    );
  }
  return found;
}

function totals({ facts, report, layers, pattern }: MeasuredGown): string[] {
  const found: string[] = [];
  const round = (edge: 'waist' | 'hem', gores: (typeof layers)[number]['gores']) =>
    (facts.closed ? 1 : 2) *
    gores.reduce((sum, gore) => sum + (gore === undefined ? 0 : gore[edge].length), 0);
  for (const { layer, gores } of layers) {
    const said = report.layers.find((one) => one.name === layer.name);
    if (said === undefined) found.push(`report: no layer ${layer.name}`);
    else if (!gores.includes(undefined))
      found.push(
        ...differs(
          `report, ${layer.name}: hem`,
          said.sewnHem,
          round('hem', gores) + godetHems(facts, pattern, layer.name),
          0.1,
        ),
      );
  }
  const whole = layers.filter(
    ({ layer, gores }) =>
      layer.shorter === 0 &&
      !gores.includes(undefined) &&
      facts.gores.every(({ name }) => layer.fullness(name).top === 1),
  );
  if (whole.length > 0) {
    const hems = whole.map((layer) => round('hem', layer.gores));
    const waist = round('waist', whole[0]!.gores);
    found.push(...differs('report: hem', report.hem.sewn, Math.max(...hems), 0.1));
    found.push(...differs('report: waist', report.waist.sewn, waist, 0.1));
    found.push(...differs('report: waist of the bodice', report.waist.bodice, facts.waistSeam, 0.001));
  }
  return found;
}

function godetHems(facts: MeasuredGown['facts'], pattern: MeasuredGown['pattern'], layer: string): number {
  return facts.godets.reduce((sum, { name, copies, layers }) => {
    if (layers !== undefined && !layers.includes(layer)) return sum;
    const piece = pattern.pieces.find((one) => one.gore === name && one.layers.includes(layer));
    return sum + copies * (piece?.sew.get('hem')?.length ?? Number.NaN);
  }, 0);
}

/** The gore of a layer that is no shorter than the spec's own lengths: the one that the report speaks of. */
function longest(layers: MeasuredGown['layers'], i: number) {
  return layerOf(layers, i)?.gores[i];
}

function layerOf(layers: MeasuredGown['layers'], i: number) {
  return layers.find(({ layer, gores }) => layer.shorter === 0 && gores[i] !== undefined);
}
