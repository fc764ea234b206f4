import { execFileSync } from 'node:child_process';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { projectFile } from '../cli/gorewright.ts';
import { RecordingMachine } from '../cli/recording-machine.ts';
import { Repository } from './repository.ts';
import { cone } from './versions.ts';

const inches = cone({
  units: 'in',
  bodice: { 'waist-seam': '720mm' },
  gores: [
    { name: 'front', 'on-fold': true, 'half-top': '80mm', 'half-flare': '8deg' },
    { name: 'side', top: '150mm', flare: '18deg' },
    { name: 'back', top: '130mm', flare: '16deg' },
  ],
  lengths: { measured: 'finished', at: { 'centre-back': '1000mm', 'centre-front': '1000mm' } },
});

describe('a spec read aloud', () => {
  const repository = new Repository();
  afterAll(() => repository.remove());
  const read = async (text: string) => {
    repository.write('gown.yaml', text);
    const machine = new RecordingMachine(repository.folder);
    const status = await run(['read', 'gown.yaml'], machine);
    return { status, lines: machine.stdout.trimEnd().split('\n'), stderr: machine.stderr };
  };

  it('a line a value, in millimetres, with the figures of the draft', async () => {
    const { status, lines, stderr } = await read(cone({ notes: 'Shoes 6.5 cm.\nStone stairs.' }));
    expect([status, stderr]).toEqual([0, '']);
    expect(lines).toContain('bodice.waist-seam: 720 mm');
    expect(lines).toContain('gores: front, side, back');
    expect(lines).toContain('gores.side.flare: 18°');
    expect(lines.slice(lines.indexOf('notes:'), lines.indexOf('notes:') + 3)).toEqual([
      'notes:',
      '  | Shoes 6.5 cm.',
      '  | Stone stairs.',
    ]);
    expect(lines).toContain('drafted waist all round: 720 mm');
    expect(new Set(lines).size).toBe(lines.length);
  });

  it('the same lines for other units, another order and comments', async () => {
    const plain = await read(cone());
    const other = await read(`# pinned on Tuesday\n${inches}`);
    expect(other.lines).toEqual(plain.lines);
  });

  it('a file that is no spec comes out as it is, and is no failure', async () => {
    const { status, lines, stderr } = await read('shopping:\n\t- thread\u001b[31m\n');
    expect([status, stderr]).toEqual([0, '']);
    expect(lines.join('\n')).not.toContain('\u001b');
    const broken = await read(cone().replace('gores:', 'gorse:'));
    expect(broken.status).toBe(0);
    expect(broken.lines[0]).toMatch(/^# not a spec that can be read: /);
    expect(broken.lines).toContain('gorse:');
  });
});

describe('git diff through it, in a real repository', () => {
  let repository: Repository;
  beforeAll(() => {
    repository = new Repository();
    repository.git(
      'config',
      'diff.gown.textconv',
      `'${process.execPath}' '${projectFile('bin/gorewright.js')}' read`,
    );
    repository.commit({ '.gitattributes': '*.yaml diff=gown\n', 'gown.yaml': 'not: [yet\n' });
    repository.commit({ 'gown.yaml': cone() });
    repository.commit({ 'gown.yaml': `# in her inches now\n${inches}` });
    repository.commit({ 'gown.yaml': inches.replaceAll('1000mm', '980mm') });
  });
  afterAll(() => repository.remove());
  const changed = (from: string, to: string): string[] =>
    repository
      .git('diff', '--textconv', '--unified=0', from, to, '--', 'gown.yaml')
      .split('\n')
      .filter((line) => /^[-+](?![-+])/.test(line));

  it('comments, units and order are no difference', () => {
    expect(changed('HEAD~2', 'HEAD~1')).toEqual([]);
  });

  it('a change shows with what follows from it', () => {
    const lines = changed('HEAD~1', 'HEAD');
    expect(lines).toContain('-lengths.at.centre-back: 1000 mm');
    expect(lines).toContain('+lengths.at.centre-back: 980 mm');
    expect(lines.some((line) => line.startsWith('+drafted hem all round: '))).toBe(true);
    expect(lines.every((line) => /lengths\.at|drafted/.test(line))).toBe(true);
  });

  it('a version that was no spec does not stop it', () => {
    expect(changed('HEAD~3', 'HEAD~2').some((line) => line.startsWith('-not: [yet'))).toBe(true);
    expect(() => execFileSync('git', ['log', '-p', '--textconv'], { cwd: repository.folder })).not.toThrow();
  });
});
