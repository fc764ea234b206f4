import { test } from 'vitest';
import { readFileSync } from 'node:fs';
import { draft } from '/work/wt/construct/src/pipeline.ts';
import { flattenedRun } from '/work/wt/construct/src/geometry/flatten.ts';
import { selfCrossing } from '/work/wt/construct/src/geometry/self-crossing.ts';
import { cutPieces } from '/work/wt/construct/src/allowances/cut-pieces.ts';
test('x', () => {
  const text = readFileSync('/tmp/construct/t/walking.yaml','utf8');
  const d = draft({ name: 'w', text } as any);
  const g = d.gown!;
  for (const p of g.cut.pieces) {
    console.log(p.gore, p.layers, selfCrossing(p.cutEdges.flatMap(e=>e.curves), 0.02));
    if (p.gore==='back') for (const e of p.cutEdges) console.log(e.name, flattenedRun(e.curves, 2).map(q=>`${q.x.toFixed(1)},${q.y.toFixed(1)}`).join(' '));
  }
});
