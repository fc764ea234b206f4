import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { toileOf } from '../../src/gown/toile.ts';
import { readSpec } from '../../src/gown-file/read-spec.ts';
import { draftWhole, gownAsked } from '../../src/pipeline.ts';
import { freshFolder, projectFile } from './gorewright.ts';
import { RecordingMachine } from './recording-machine.ts';

describe('a toile', () => {
  const specs = ['templates', 'examples'].flatMap((folder) =>
    readdirSync(projectFile(folder))
      .filter((file) => file.endsWith('.yaml'))
      .map((file) => `${folder}/${file}`),
  );

  it.each(specs)('of %s is its gores in calico', (file) => {
    const { spec } = readSpec({ name: basename(file), text: readFileSync(projectFile(file), 'utf8') });
    if (spec === undefined) throw new Error('every one of these is a whole spec');
    const { gown, diagnostics } = draftWhole(toileOf(gownAsked(spec).gown!));
    expect(diagnostics.filter(({ level }) => level === 'error')).toEqual([]);
    const pieces = gown?.cut.pieces ?? [];
    for (const { name } of spec.gores) expect(pieces.map(({ gore }) => gore)).toContain(name);
    for (const piece of pieces) expect(piece.layers).toEqual(['toile']);
  });

  it('is drafted into a folder of its own', async () => {
    const folder = freshFolder();
    const machine = new RecordingMachine(folder);
    expect(await run(['draft', '--toile', projectFile('templates/full-circle.yaml')], machine)).toBe(0);
    expect(readdirSync(join(folder, 'out')).filter((name) => !name.startsWith('.'))).toEqual([
      'full-circle-toile',
    ]);
    const files = readdirSync(join(folder, 'out/full-circle-toile'));
    expect(files).toContain('lay-calico.svg');
    // The client approves the gown, not its toile.
    expect(files.filter((name) => name.startsWith('client-'))).toEqual([]);
    expect(files.filter((name) => name.startsWith('job-sheet-'))).toHaveLength(1);
  });
});
