import { describe, expect, it } from 'vitest';
import { clientPages } from '../../src/print/papers/client-pages.ts';
import { jobSheet } from '../../src/print/papers/job-sheet.ts';
import type { DrawnViews } from '../../src/print/papers/views-drawing.ts';
import { english } from '../../src/words/english.ts';
import { ENGLISH_PATTERN } from '../../src/words/english-pattern.ts';
import { beside, printedLines, rowsUnder } from '../print/page-rows.ts';
import { gownOf } from './constructions.ts';
import { type Made, made, skirt } from './made.ts';
import { inputOf } from './paper-input.ts';

const words = english('cm');

/** A step as it is printed, with its notes. */
function said({ facts }: Made, kind: string): string {
  return facts.order
    .filter(({ work }) => work.kind === kind)
    .map(({ work }) => words.step(work))
    .map(({ does, notes, holds }) => [does, ...notes, ...holds].join(' '))
    .join(' ');
}

const told = (own: Made) => printedLines(jobSheet(inputOf(own)).pages);

describe('nothing is said that contradicts the construction', () => {
  const full = (by: string) =>
    made(skirt({ layers: `  - {name: shell, cloth: crepe, hem: turned, fullness: {ratio: 2, ${by}}}` }));

  it('a pleated edge keeps its pleats, a gathered one is spread', () => {
    const pleated = said(full('by: pleats, depth: 3, towards: back'), 'join-waist');
    expect(pleated).toMatch(/pleats of the shell stay as they are basted/);
    expect(pleated).not.toMatch(/spread|quarter/);
    const gathered = said(full('by: gathers'), 'join-waist');
    expect(gathered).toMatch(/spread the fullness evenly/);
    expect(gathered).not.toMatch(/pleats/);
  });

  it('straight edges do not drop, and a half on the fold has a side that does', () => {
    const flat = skirt().replaceAll('top: 12, hem: 40', 'top: 12, hem: 12');
    expect(said(made(flat), 'hang')).not.toMatch(/bias edges/);
    const folded = skirt()
      .replace('waist-seam: 72', 'waist-seam: 60')
      .replace('{name: front, top: 12, hem: 40}', '{name: front, on-fold: true, half-top: 6, half-hem: 20}');
    expect(said(made(folded), 'hang')).toMatch(/The bias edges drop: front, side and back\./);
  });

  it('a hem that is a flounce is no other hem', () => {
    const rows = rowsUnder(told(made(gownOf(['hemFlounce']))), [
      'layer',
      'hem',
      'round',
      'allowance',
      'to know',
    ]);
    expect(rows.find(([layer]) => layer === 'shell')![1]).toBe('ring');
  });

  it('the hem is as long as she walks in it, with what is let into it', () => {
    const own = made(gownOf(['godet']));
    const [shell] = own.facts.hems;
    const plain = made(skirt());
    // Two wedges of 30 cm at the hem.
    expect(own.facts.skirt.hem - plain.facts.skirt.hem).toBeCloseTo(600, 0);
    expect(own.facts.skirt.hem).toBeCloseTo(shell!.length, 6);
  });

  it('the lowest tier is finished before the tiers are joined', () => {
    const [tiers] = made(gownOf(['tiers'])).facts.order.filter(({ work }) => work.kind === 'tiers');
    const { notes } = words.step(tiers!.work);
    const at = (text: RegExp) => notes.findIndex((note) => text.test(note));
    expect(at(/finish the lower edge/)).toBeGreaterThanOrEqual(0);
    expect(at(/finish the lower edge/)).toBeLessThan(at(/Gather each tier/));
  });

  it('net does not slip under the shears, organza does', () => {
    expect(said(made(gownOf(['net'])), 'cut')).not.toMatch(/Slippery/);
    expect(said(made(gownOf(['scallops'])), 'cut')).toMatch(/Slippery/);
  });
});

describe('the client approves all of it', () => {
  const own = made(gownOf(['tiers', 'overskirt', 'frill']));
  const lines = printedLines(clientPages(inputOf(own)).pages);

  it('what is sewn on and worn with the skirt, too', () => {
    expect(beside(lines, 'sewn on to it')).toEqual(['frill (cupro)']);
    expect(beside(lines, 'worn with it')).toEqual(['underskirt (tulle) and court-train (crepe)']);
  });

  it('with her name on the page of the drawing, also where two rows of it are tall', () => {
    const box = { left: -300, top: -1700, right: 300, bottom: 0 };
    const view = { side: 'front', box, outlines: [], folds: [], seams: [], edging: [], parts: [] };
    const tall = { ...view, edges: [], figure: [], opening: [], strokes: [] };
    const row = ['front', 'side', 'back'].map((name) => ({ view: tall, name }));
    const views = {
      layer: 'shell',
      notHung: [],
      isBodiceDrafted: false,
      rows: [row, row],
      floor: 'floor',
      scaleBar: 500,
      say: String,
    } as unknown as DrawnViews;
    for (const paper of [
      { width: 210, height: 297 },
      { width: 215.9, height: 279.4 },
    ]) {
      const { pages } = clientPages({ ...inputOf(own, paper), views });
      const [first] = pages.map((page) => printedLines([page]).flat());
      const texts = first!.map(({ text }) => text);
      expect(texts.filter((text) => text === 'front')).toHaveLength(2);
      expect(texts).toContain('worn with it');
      expect(texts).toContain('approved');
    }
  });

  it('and cares for every cloth that goes to the cleaner', () => {
    const cared = lines.flat().flatMap(({ text }) => /^(\S+): care by/.exec(text)?.[1] ?? []);
    expect(cared.sort()).toEqual(['crepe', 'cupro', 'tulle']);
  });
});

it('the legend says of notches what the seams do: one on a front edge meets two on a back edge', () => {
  expect(ENGLISH_PATTERN.legend.notches).toMatch(/one at a front edge, two at a back edge.*one meets two/);
});

it('a costing has no line for what comes to nothing', () => {
  const more = 'labour: {rate: 20, tasks: {making: 10}}\ncurrency: EUR';
  const said = told(made(skirt({ more }))).flatMap((line) => line.map(({ text }) => text));
  expect(said).toContain('price');
  expect(said.filter((text) => /^(overhead|margin|tax|price before tax)/.test(text))).toEqual([]);
});

describe('a paper says a thing once', () => {
  it('thread by the cloth: as much as all its layers take together', () => {
    const own = made(gownOf(['hemFlounce', 'lining']));
    const { thread } = own.facts;
    const crepe = thread.filter(({ cloth }) => cloth === 'crepe');
    expect(crepe.length).toBeGreaterThan(1);
    const all = own.facts.notions.filter((notion) => notion.kind === 'thread');
    expect(new Set(all.map(({ cloth }) => cloth)).size).toBe(all.length);
    const sum = crepe.reduce((total, { need }) => total + need.toBuy, 0);
    expect(all.find(({ cloth }) => cloth === 'crepe')!.length).toBeCloseTo(sum, 6);
  });

  it('a hem with nothing to ease has nothing said of it', () => {
    const flat = made(skirt().replaceAll('top: 12, hem: 40', 'top: 12, hem: 12'));
    const rows = rowsUnder(told(flat), ['layer', 'hem', 'round', 'allowance', 'to know']);
    expect(rows[0]!.join(' ')).not.toMatch(/to ease/);
  });

  it('on the bias, where it is cut', () => {
    const bias = made(skirt({ layers: '  - {name: shell, cloth: crepe, hem: turned, grain: bias}' }));
    const rows = rowsUnder(told(bias), ['piece', 'layers', 'cut', 'across × down', 'allowances']);
    for (const [, , cut] of rows) expect(cut).toMatch(/on the bias/);
  });
});
