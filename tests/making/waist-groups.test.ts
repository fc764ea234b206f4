import { describe, expect, it } from 'vitest';
import { example, made, skirt } from './made.ts';

const groupsOf = (text: string) => made(text).facts.waist.groups.map(({ layers }) => layers);
const LAYERS = ['lining', 'middle', 'shell']
  .map((name) => `  - {name: ${name}, cloth: crepe, hem: turned}`)
  .join('\n');

describe('layers at the waist seam, from the outside in', () => {
  it('are each sewn by themselves where the spec says nothing', () => {
    expect(groupsOf(skirt({ layers: LAYERS }))).toEqual([['shell'], ['middle'], ['lining']]);
  });

  it('are one where the spec says so, and the rest by themselves', () => {
    const more = 'sewn-as-one: {waist: [[lining], [middle, shell]]}';
    expect(groupsOf(skirt({ layers: LAYERS, more }))).toEqual([['middle', 'shell'], ['lining']]);
  });

  it('those that have the gores that another lacks are one ring with it', () => {
    // Its velvet has the sides and the back, its brocade the front.
    expect(groupsOf(example('puffin'))).toEqual([['chiffon'], ['velvet', 'brocade'], ['lining']]);
  });

  it('take thread for two rows each', () => {
    const waists = made(skirt({ layers: LAYERS })).facts.thread.map(({ waist }) => Math.round(waist));
    expect(waists).toEqual([2 * 720, 2 * 720, 2 * 720]);
  });
});
