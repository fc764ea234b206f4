import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outputNames } from '../../src/cli/output-names.ts';

describe('names of output files', () => {
  it('stay as they are where any system can hold them', () => {
    const plain = ['pattern.svg', 'pattern-a4.pdf', 'lay-side-front.svg', 'lay-Über.svg', 'chalk.csv'];
    expect([...outputNames(plain)]).toEqual(plain.map((name) => [name, name]));
  });

  it.each([
    ['../../etc/passwd', /^-..-etc-passwd-[0-9a-f]{8}$/],
    ['lay-a/b.svg', /^lay-a-b-[0-9a-f]{8}\.svg$/],
    ['lay-a\\b.svg', /^lay-a-b-[0-9a-f]{8}\.svg$/],
    ['CON.svg', /^-CON-[0-9a-f]{8}\.svg$/],
    ['.gorewright-writing', /^gorewright-writing-[0-9a-f]{8}$/],
    ['..', /^unnamed-[0-9a-f]{8}$/],
    ['lay-\u202egvs.exe', /^lay--gvs-[0-9a-f]{8}\.exe$/],
    [`lay-${'ß'.repeat(200)}.svg`, /^lay-ß+-[0-9a-f]{8}\.svg$/],
  ])('%j becomes a plain name', (name, expected) => {
    expect(outputNames([name]).get(name)).toMatch(expected);
  });

  // Names of devices on Windows, with any ending and in any letters (its naming rules for files).
  const DEVICES = ['con', 'prn', 'aux', 'nul', ...[1, 5, 9].flatMap((n) => [`com${n}`, `lpt${n}`])];
  it.each(DEVICES)('%s is a device, with an ending too, and not as a part of a name', (device) => {
    for (const name of [device, device.toUpperCase(), `${device}.svg`])
      expect(outputNames([name]).get(name)).toMatch(/^-/);
    for (const name of [`lay-${device}.svg`, `${device}t.svg`])
      expect(outputNames([name]).get(name)).toBe(name);
  });

  it('tell apart what some systems hold for the same', () => {
    const names = [...outputNames(['lay-Shell.svg', 'lay-shell.svg', 'lay-ﬁn.svg', 'lay-fin.svg']).values()];
    expect(new Set(names.map((name) => name.normalize('NFKC').toLowerCase())).size).toBe(4);
  });

  it('are safe and distinct whatever they are made from', () => {
    const anything = fc.uniqueArray(fc.string({ unit: 'binary', maxLength: 300 }), { maxLength: 8 });
    fc.assert(
      fc.property(anything, (wanted) => {
        const names = [...outputNames(wanted).values()];
        for (const name of names) {
          expect(name).not.toMatch(/[/\\:*?"<>|\p{Cc}]|^\.|[. ]$/u);
          expect(name).not.toBe('');
          expect(Buffer.byteLength(name)).toBeLessThan(200);
        }
        expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(wanted.length);
        expect([...outputNames(wanted).values()]).toEqual(names);
      }),
      { numRuns: 300 },
    );
  });
});
