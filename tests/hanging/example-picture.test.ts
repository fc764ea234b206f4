import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { hangTask } from '../../src/hanging/hang-task.ts';
import { hungGown } from '../../src/hanging/hung-gown.ts';
import { draft } from '../../src/pipeline.ts';
import { viewsOf } from '../../src/publish/views-file.ts';

const EXAMPLES = join(import.meta.dirname, '../../examples');

/** To make it anew: `npm run example`, then copy `out/lantern/views.svg` over it, and look at it. */
it('the picture of Lantern in the README is what is drawn of it today', () => {
  const text = readFileSync(join(EXAMPLES, 'lantern.yaml'), 'utf8');
  const { gown } = draft({ name: 'lantern.yaml', text });
  const task = hangTask(gown!);
  const { files } = viewsOf(gown!, { task, hung: hungGown(task) });
  expect(files.get('views.svg') === readFileSync(join(EXAMPLES, 'lantern-views.svg'), 'utf8')).toBe(true);
});
