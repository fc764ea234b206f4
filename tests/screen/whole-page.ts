import { hangTask } from '../../src/hanging/hang-task.ts';
import { hungAtFirst } from '../../src/hanging/hung-gown.ts';
import { gownToLay } from '../../src/lay/plan/lay-to-plan.ts';
import { planLays } from '../../src/lay/plan/plan-lays.ts';
import { draft, draftOutputs } from '../../src/pipeline.ts';

/** The page of a draft with all that it shows: lays that are stopped at once, and the first hanging, stand for the whole ones. */
export function wholePage(text: string): Promise<string> {
  const made = pages.get(text) ?? madePage(text);
  pages.set(text, made);
  return made;
}

const pages = new Map<string, Promise<string>>();

async function madePage(text: string): Promise<string> {
  const { gown, diagnostics } = draft({ name: 'gown.yaml', text });
  if (gown === undefined) throw new Error('it does not draft');
  const lays = planLays(gownToLay(gown), { say: (mm) => `${mm} mm`, shouldStop: () => true });
  const task = hangTask(gown);
  const hanging = { task, hung: hungAtFirst(task) };
  const { files } = await draftOutputs(gown, diagnostics, {
    lays: Promise.resolve(lays),
    hanging: Promise.resolve(hanging),
  });
  const page = files.get('gown.html');
  if (typeof page !== 'string') throw new Error('no page');
  return page;
}
