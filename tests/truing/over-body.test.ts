import { describe, expect, it } from 'vitest';
import { draft } from '../../src/pipeline.ts';
import { plainGown, type Tree } from '../outside/plain-gown.ts';

/** A cone of 720 at the waist that is a millimetre wider for every millimetre down: 720 + d at d (closed form). */
function found(girths: readonly Tree[], fields: Tree = {}) {
  const text = plainGown({
    units: 'mm',
    bodice: { 'waist-seam': 720 },
    body: { girths: [{ at: 'waist', girth: 700 }, ...girths] },
    gores: ['front', 'side', 'back'].map((name) => ({ name, top: 120, hem: 120 + 900 / 6 })),
    lengths: { measured: 'finished', 'hem-width-at': 900, at: { 'centre-front': 900, 'centre-back': 900 } },
    ...fields,
  });
  const { diagnostics } = draft({ name: 'body.yaml', text });
  return diagnostics
    .filter(({ code }) => code === 'tighter-than-body')
    .map(({ message, span }) => ({ message, at: text.slice(span.start, span.end) }));
}

const below = (at: string, down: number, girth: number) => ({ at, below: down, girth });

describe('a skirt against her own girths', () => {
  it('is told each of them that it is tighter than, at its own figure', () => {
    const told = found([below('high-hip', 90, 905), below('hip', 200, 1007)]);
    expect(told.map(({ at }) => at)).toEqual(['905', '1007']);
    expect(told[0]!.message).toContain('810 mm');
    expect(told[0]!.message).toContain('905 mm');
    expect(told[1]!.message).toContain('920 mm');
    expect(told[1]!.message).toContain('1007 mm');
    expect(found([below('high-hip', 90, 790), below('hip', 200, 1007)]).map(({ at }) => at)).toEqual([
      '1007',
    ]);
  });

  it('may be as much tighter as a measure is uncertain by: three in a thousand', () => {
    expect(found([below('hip', 200, 922)])).toEqual([]);
    expect(found([below('hip', 200, 924)])).toHaveLength(1);
  });

  it('is not asked above the edge that it is sewn to, nor below its hem', () => {
    const girths = [below('high-hip', 90, 905), below('hip', 200, 1007)];
    const drop = Object.fromEntries(
      ['centre-front', 'front/side', 'side/back', 'centre-back'].map((name) => [name, 100]),
    );
    const dropped = found(girths, { bodice: { 'waist-seam': 720, 'drop-below-waist': drop } });
    expect(dropped.map(({ at }) => at)).toEqual(['1007']);
    // The shorter of its two centres counts.
    const short = {
      measured: 'finished',
      'hem-width-at': 900,
      at: { 'centre-front': 150, 'centre-back': 400 },
    };
    expect(found(girths, { lengths: short }).map(({ at }) => at)).toEqual(['905']);
  });
});
