import { it } from 'vitest';
import { mutantOf } from './mutant.ts';
import { trialOf } from './trial.ts';

it('x', async () => {
  let n = 0,
    drafted = 0,
    written = 0;
  const seen = new Map<string, string>();
  for (const start of [132, 1879, 2822, 20000])
    for (let seed = start; start === 20000 ? n < 160 : seed === start; seed++) {
      const { from, text } = mutantOf(seed);
      if (!/boned-bodice|capelet|laced/.test(from)) continue;
      n++;
      let t = await trialOf(text, { mostSheets: 0, lays: false });
      if (t.isDrafted && (start < 20000 || drafted++ % 5 === 0)) {
        t = await trialOf(text, { mostSheets: 60, lays: true });
        if (t.isWritten) written++;
      }
      for (const f of t.faults)
        if (!f.startsWith('gown.html')) {
          const key = f.slice(0, 60).replace(/[\d.-]+/g, '#');
          if (!seen.has(key)) seen.set(key, `seed ${seed} ${from}: ${f.slice(0, 900)}`);
        }
    }
  console.log(n, drafted, written);
  for (const v of seen.values()) console.log(v);
}, 900000);
