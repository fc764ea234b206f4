import { describe, expect, it } from 'vitest';
import { gownPage } from '../../src/print/screen/gown-page.ts';
import { paperText } from '../../src/sheets/paper.ts';
import { english } from '../../src/words/english.ts';

describe('a finding on the gown’s page', () => {
  const page = gownPage({
    gown: 'Lantern',
    about: [],
    views: [],
    lays: [],
    tables: [],
    findings: [
      {
        level: 'warning',
        place: '12:3',
        message: 'Set `heel` to `8 cm`.',
        why: 'One ` alone is one.',
        hint: 'Not <b>, but `<i>`.',
      },
    ],
    files: [],
    words: english('cm').screen,
  });

  it('has what stands in the spec set as such, and everything else as text', () => {
    expect(page).toContain('<p>Set <code>heel</code> to <code>8 cm</code>.</p>');
    expect(page).toContain('<p>One ` alone is one.</p>');
    expect(page).toContain('<p>Not &lt;b&gt;, but <code>&lt;i&gt;</code>.</p>');
    expect(page).toContain('12:3');
  });
});

it('papers are named as their standard writes them (ISO 216)', () => {
  expect(['a4', 'a3', 'letter', 'roll-914'].map(paperText)).toEqual(['A4', 'A3', 'letter', 'roll-914']);
});
