import { describe, expect, it } from 'vitest';
import { clothStates, isSameHash, recordedCuts } from '../../src/compare/cloth-state.ts';
import type { GownVersion } from '../../src/compare/gown-version.ts';

/** What the spec's record of cut layers says, by the hash of the version that each was cut from. */
const version = (content: string, cut: Record<string, string>): GownVersion =>
  ({
    content,
    spec: { cut },
    layers: ['lining', 'shell', 'net'].map((name) => ({ name })),
  }) as unknown as GownVersion;

describe('a hash that a maker wrote down', () => {
  it.each([
    ['1a2b3c4d', true],
    ['1a2b', true],
    ['1a2b3c4d9e', true],
    ['1a2c', false],
    ['a2b3c4d', false],
    ['1a2b3c4e', false],
  ])('%s is 1a2b3c4d: %s', (recorded, same) => expect(isSameHash(recorded, '1a2b3c4d')).toBe(same));
});

describe('the layers’ cloth', () => {
  it('was cut from the old version, from the new one, from another, or not yet', () => {
    const states = clothStates(
      version('1a2b3c4d', {}),
      version('5e6f7a8b', { lining: '1A2B', shell: '5e6f7a8b' }),
      new Map(),
    );
    expect([...states]).toEqual([
      ['lining', 'cut-from-old'],
      ['shell', 'cut-from-new'],
      ['net', 'not-cut'],
    ]);
    const other = clothStates(
      version('1a2b3c4d', { shell: '99aa' }),
      version('5e6f7a8b', {}),
      new Map([['shell', { name: 'gown.yaml@HEAD~3' }]]),
    );
    expect(other.get('shell')).toEqual({ cutFrom: '99aa', found: 'gown.yaml@HEAD~3' });
    expect(other.get('lining')).toBe('not-cut');
    expect(clothStates(version('1', {}), version('2', {}), new Map()).get('net')).toBe('not-recorded');
    // Where both record a layer the new one's word holds.
    const both = clothStates(
      version('1a2b3c4d', { net: 'ffff' }),
      version('5e6f7a8b', { net: '1a2b' }),
      new Map(),
    );
    expect(both.get('net')).toBe('cut-from-old');
  });

  it('is as the new version records it, where both do', () => {
    const cuts = recordedCuts(
      version('', { shell: 'AA', net: 'bb' }).spec,
      version('', { shell: 'cc' }).spec,
    );
    expect(cuts).toEqual({ shell: 'cc', net: 'bb' });
  });
});
