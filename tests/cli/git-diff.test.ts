import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { freshFolder, inShell, projectFile } from './gorewright.ts';

it('git diff shows what a change means, as the README sets it up', () => {
  const folder = freshFolder();
  const readme = readFileSync(projectFile('README.md'), 'utf8');
  const setUp = /```sh\n(echo '\*\.yaml diff=gown'[\s\S]*?)```/.exec(readme)?.[1] ?? 'exit 9';
  const spec = readFileSync(projectFile('templates/full-circle.yaml'), 'utf8');
  const inGit = (script: string) =>
    inShell(`git() { command git -c user.name=t -c user.email=t@t "$@"; }\n${script}`, folder);
  // Git runs the command by its name, so it must be on the path, as `npm link` puts it there.
  writeFileSync(
    join(folder, 'gorewright'),
    `#!/bin/sh\nexec '${process.execPath}' '${projectFile('bin/gorewright.js')}' "$@"\n`,
    { mode: 0o755 },
  );
  writeFileSync(join(folder, 'gown.yaml'), spec);
  expect(
    inGit(`git init -q . && ${setUp}git add gown.yaml .gitattributes && git commit -qm one`),
  ).toMatchObject({ status: 0 });
  const diff = () => inGit('PATH="$PWD:$PATH" git diff').stdout;

  writeFileSync(join(folder, 'gown.yaml'), spec.replace(/^( {4}centre-back: ).*$/m, '$172'));
  const added = diff()
    .split('\n')
    .filter((line) => line.startsWith('+'));
  expect(added).toContain('+lengths.at.centre-back: 720 mm');

  writeFileSync(join(folder, 'gown.yaml'), `# The same gown, in other words.\n${spec}`);
  expect(diff()).not.toMatch(/^[-+][^-+]/m);

  writeFileSync(join(folder, 'gown.yaml'), '- no spec\n');
  expect(diff()).toContain('+- no spec');
});
