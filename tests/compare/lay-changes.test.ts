import { describe, expect, it } from 'vitest';
import { type LayFigures, layChanges } from '../../src/compare/lay-changes.ts';

const lay = (cloth: string, layers: string[], length: number, buy = length): LayFigures => ({
  cloth,
  layers,
  length,
  buy,
});

describe('which lay is whose', () => {
  it('a lay that stays as it is is not named', () => {
    expect(layChanges([lay('crepe', ['shell'], 4000)], [lay('crepe', ['shell'], 4000.4)])).toEqual([]);
  });

  it('layers that change their cloths are followed', () => {
    const old = [lay('cupro', ['lining'], 3000), lay('crepe', ['shell'], 4000)];
    const now = [lay('crepe', ['lining'], 3100), lay('satin', ['shell'], 4100)];
    expect(layChanges(old, now)).toEqual([
      { old: old[0], now: now[0] },
      { old: old[1], now: now[1] },
    ]);
  });

  it('a cloth that another layer is cut from too is one lay that grew, and the other lay is gone', () => {
    const old = [lay('cupro', ['lining'], 3000), lay('crepe', ['shell'], 4000)];
    const now = [lay('crepe', ['lining', 'shell'], 6500)];
    expect(layChanges(old, now)).toEqual([{ old: old[1], now: now[0] }, { old: old[0] }]);
  });

  it('kept apart from now on, one lay becomes two', () => {
    const old = [lay('crepe', ['lining', 'shell'], 6500)];
    const now = [lay('crepe', ['lining'], 3000), lay('crepe', ['shell'], 4000)];
    expect(layChanges(old, now)).toEqual([{ old: old[0], now: now[0] }, { now: now[1] }]);
  });

  it('other layers in a lay of one length are another lay', () => {
    expect(layChanges([lay('crepe', ['a'], 4000)], [lay('crepe', ['a', 'b'], 4000)])).toHaveLength(1);
  });
});
