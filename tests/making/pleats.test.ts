import { describe, expect, it } from 'vitest';
import { english } from '../../src/words/english.ts';
import { made, skirt } from './made.ts';

const pleats = `pleats:
  - {name: walking, kind: inverted, at: centre-back, fold-depth: 6.2, stitched-down: 21}
  - {name: beside, kind: knife, at: front/side, gore: side, from-seam: 5, fold-depth: 3, towards: back, hem: after}
`;

describe('the order of making, with pleats that have their place', () => {
  const { facts, gown } = made(skirt({ more: pleats }));
  const words = english('cm');
  const said = facts.order.map(({ work, id }) => ({ id, ...words.step(work) }));
  const at = (id: string): number => said.findIndex((step) => step.id === id);

  it('says the depth of a fold, as the spec does, and how far it is stitched', () => {
    const { does, notes } = said[at('pleat:shell:walking')]!;
    expect(does).toContain('each of its 2 folds 6.2 cm deep, from its outer edge to its inner edge');
    expect(notes.join(' ')).toContain('Stitch it down from the waist seam for 21 cm');
    expect(said[at('pleat:shell:beside')]!.does).toContain(
      '5 cm from front/side along the waist seam: its fold 3 cm',
    );
  });

  it('lays them between the seams and the waist; those hemmed first are pressed after the hem, others before', () => {
    const order = [
      'seams:shell',
      'pleat:shell:walking',
      'waist:shell',
      'hang',
      'hem:shell',
      'press-pleats:shell',
      'fit',
    ];
    const places = order.map(at);
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(said[at('press-pleats:shell')]!.does).toContain('walking');
    expect(said[at('press-pleats:shell')]!.does).not.toContain('beside');
  });

  it('turns up the whole hem, what lies under the folds too: 4 × 6.2 at the back, 2 × 3 on each side', () => {
    const [hem] = facts.hems;
    const sewn = gown.facts.skirt.layers[0]!.hem;
    // Along the hem a fold's cloth is a little longer than across the grain: less than 1 mm on these gores.
    expect(hem!.length - sewn).toBeGreaterThan(248 + 120);
    expect(hem!.length - sewn).toBeLessThan(248 + 120 + 8);
  });
});
