import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/main.ts';
import type { DraftedGown } from '../../src/drafted-gown.ts';
import { areaInside } from '../../src/geometry/area.ts';
import { gownToLay } from '../../src/lay/plan/lay-to-plan.ts';
import { laysTooLong } from '../../src/lay/plan/lays-too-long.ts';
import { draft } from '../../src/pipeline.ts';
import { chosenPieces, paperOf, sheetOptions, sheetPlan } from '../../src/publish/pattern-sheets.ts';
import { tooLarge } from '../../src/publish/too-large.ts';
import { groupsOf } from '../../src/sheets/lay-out-grid.ts';
import { roughSheets } from '../../src/sheets/rough-sheets.ts';
import { freshFolder, projectFile } from '../cli/gorewright.ts';
import { RecordingMachine } from '../cli/recording-machine.ts';

const TEMPLATES = readdirSync(projectFile('templates')).sort();
const textOf = (name: string) => readFileSync(projectFile(`templates/${name}`), 'utf8');
const gownOf = (text: string): DraftedGown => draft({ name: 'gown.yaml', text }).gown!;
const PLAIN = textOf('floor-length.yaml');

describe('the rough number of sheets', () => {
  it.each(TEMPLATES)('is within a factor of three of the sheets that %s takes', (name) => {
    const gown = gownOf(textOf(name));
    for (const paper of ['a4', 'a3']) {
      const options = sheetOptions(gown.gown, paperOf(gown, paper));
      const { sheets } = sheetPlan(gown, paperOf(gown, paper));
      const pieces = chosenPieces(gown, {});
      const rough = roughSheets(pieces, groupsOf(pieces, options), options);
      expect(rough).toBeLessThan(3 * sheets.length);
      expect(rough).toBeGreaterThan(sheets.length / 3);
    }
  });
});

describe('what is too large', () => {
  it.each(TEMPLATES)('is nothing of %s', (name) => {
    const gown = gownOf(textOf(name));
    expect(tooLarge(gown, paperOf(gown))).toEqual([]);
  });

  it('is a pattern of over a thousand sheets, unless it is printed on a roll', () => {
    // Forty layers, each cut smaller across by another share, so that none shares a piece: 40 × 40 sheets.
    const layers = Array.from(
      { length: 40 },
      (_, i) => `  - {name: layer-${i}, cloth: shell, hem: turned, cut-smaller-across: ${i / 10}%}`,
    );
    const gown = gownOf(withLayers(layers));
    const sheets = tooLarge(gown, paperOf(gown, 'a4'));
    expect(sheets.map(({ code }) => code)).toEqual(['too-many-sheets']);
    expect(tooLarge(gown, paperOf(gown, 'roll:914'))).toEqual([]);
    expect(tooLarge(gown, paperOf(gown, 'a4'), { layers: ['layer-0'] })).toEqual([]);
  });

  it('is a gown of more than a thousand pieces, every gore in every layer counted', () => {
    const gown = gownOf(PLAIN);
    const { gores, layers } = gown.report;
    const withLayersSaid = (count: number) => ({
      ...gown,
      report: { ...gown.report, layers: Array.from({ length: count }, () => layers[0]!) },
    });
    const most = Math.floor(1000 / gores.length);
    const codes = (count: number) => tooLarge(withLayersSaid(count), paperOf(gown)).map(({ code }) => code);
    expect(codes(most)).not.toContain('too-many-pieces');
    expect(codes(most + 1)).toEqual(['too-many-pieces']);
  });

  it('is a layer that takes over two hundred metres of its cloth by its area alone', () => {
    const narrow = PLAIN.replace('width: 148', 'width: 12');
    const gown = gownOf(narrow);
    // 10 cm between the selvedges; each gore of the lining twice, the half of the front too.
    const area = gown.cut.pieces
      .filter(({ layers }) => layers.includes('lining'))
      .reduce((sum, { cutEdges }) => sum + 2 * areaInside(cutEdges.flatMap(({ curves }) => curves)), 0);
    const metres = area / 100 / 1000;
    const found = laysTooLong(gownToLay(gown), (mm) => `${(mm / 1000).toFixed(3)} m`);
    if (metres > 200) expect(found[0]?.message).toContain(`${metres.toFixed(3)} m`);
    else expect(found).toEqual([]);
    const longer = gownOf(narrow.replaceAll(/\b10(3\.5|6\.5|6|7)\b/g, '900'));
    expect(tooLarge(longer, paperOf(longer)).map(({ code }) => code)).toContain('lay-too-long');
  });

  it.each(['check', 'draft', 'lay', 'quote'])(
    'ends `%s` with a finding, and nothing is written',
    async (command) => {
      const folder = freshFolder();
      const { writeFileSync } = await import('node:fs');
      writeFileSync(
        join(folder, 'gown.yaml'),
        PLAIN.replace('width: 148', 'width: 12').replaceAll(/\b10(3\.5|6\.5|6|7)\b/g, '900'),
      );
      const machine = new RecordingMachine(folder);
      expect(await run([command, 'gown.yaml'], machine)).toBe(1);
      expect(machine.stderr).toContain('error[lay-too-long]');
      expect(readdirSync(folder)).toEqual(['gown.yaml']);
    },
  );
});

function withLayers(layers: readonly string[]): string {
  return PLAIN.replace(/layers:[\s\S]*?\n\n/, `layers:\n${layers.join('\n')}\n\n`).replace(
    /sewn-as-one:[\s\S]*?\n\n/,
    '',
  );
}
