import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { lineAndColumn } from '../../src/diagnostics/place.ts';
import type { CutPiece } from '../../src/draft/piece.ts';
import { toileOf } from '../../src/gown/toile.ts';
import { type DraftedGown, draft, draftWhole } from '../../src/pipeline.ts';
import { workroom } from '../../src/workroom/workroom.ts';
import { walked } from './measured.ts';

/** A whole gown whose bodice is drafted: its edge feeds the gores, and what is made of it are pieces like any other. */

const TEMPLATE = new URL('../../templates/boned-bodice.yaml', import.meta.url);
const LACED = new URL('../../templates/laced-bodice.yaml', import.meta.url);
const CAPELET = new URL('../../templates/capelet.yaml', import.meta.url);

function textOf(file: URL, ...changes: readonly (readonly [string, string])[]): string {
  let text = readFileSync(file, 'utf8');
  for (const [from, to] of changes) {
    expect(text).toContain(from);
    text = text.replace(from, to);
  }
  return text;
}

function gownOf(text: string): DraftedGown {
  const { gown, diagnostics } = draft({ name: 'gown.yaml', text });
  expect(diagnostics.filter(({ level }) => level === 'error')).toEqual([]);
  return gown!;
}

function messages(text: string): string[] {
  return draft({ name: 'gown.yaml', text }).diagnostics.map(
    ({ code, span }) => `${lineAndColumn(span).line} ${code}`,
  );
}

const bodicePieces = (gown: DraftedGown): CutPiece[] =>
  gown.cut.pieces.filter(({ piece }) => piece.part === 'bodice');
const edgeOf = ({ piece }: CutPiece, name: string): number =>
  walked(piece.edges.find((edge) => edge.name === name)!.curves).length;

describe('the edge is shared, never typed again', () => {
  it.each([
    ['boned', TEMPLATE],
    ['laced', LACED],
    ['with a capelet', CAPELET],
  ])('%s: each panel meets the top of its gore, and both come to the same round her', (_name, file) => {
    const gown = gownOf(textOf(file));
    const panels = bodicePieces(gown).filter(({ gore }) => gore !== 'modesty-panel');
    expect(panels.map(({ gore }) => gore)).toEqual(gown.gown.gores.map(({ name }) => name));
    for (const panel of panels) {
      const gore = gown.cut.pieces.find((own) => own.gore === panel.gore && own.piece.part === undefined)!;
      expect(edgeOf(panel, 'waist')).toBeCloseTo(edgeOf(gore, 'waist'), 2);
    }
    const round = panels.reduce((sum, panel) => sum + 2 * edgeOf(panel, 'waist'), 0);
    expect(gown.report.waist.sewn).toBeCloseTo(round, 1);
    expect(gown.report.waist.difference).toBeLessThan(0.01);
    for (const { name, drop } of gown.report.stations)
      expect(drop).toBeCloseTo(gown.gown.askedBodice!.drops[name] ?? 0, 6);
  });

  it('a waist 4 cm larger: the gores and the seam follow, and nothing else moves', () => {
    const before = gownOf(textOf(LACED));
    const after = gownOf(textOf(LACED, ['girth: 70, front: 36', 'girth: 74, front: 38']));
    // A level edge at the waist: 4 cm all round, each panel its part.
    expect(after.report.waist.sewn - before.report.waist.sewn).toBeCloseTo(40, 1);
    for (const [i, { top }] of after.report.gores.entries())
      expect(top).toBeGreaterThan(before.report.gores[i]!.top);
    const widths = (gown: DraftedGown, at: string) => gown.report.bodice!.panels.map((own) => own.widths[at]);
    for (const at of ['high-bust', 'bust', 'underbust', 'high-hip'])
      expect(widths(after, at)).toEqual(widths(before, at));
    expect(after.report.stations.map(({ length }) => length)).toEqual(
      before.report.stations.map(({ length }) => length),
    );
    // The seams bend a little otherwise on their way to the bust, and the edge with them: by hairs.
    expect(after.report.bodice!.upper.sewn).toBeCloseTo(before.report.bodice!.upper.sewn, 0);
  });

  it('a top that is typed beside it must agree with its panel', () => {
    const typed = (top: string) =>
      messages(
        textOf(TEMPLATE, [
          '  - {name: side}\n  - {name: side-back}\n  - {name: back}\n\nsweep',
          `  - {name: side, top: ${top}}\n  - {name: side-back}\n  - {name: back}\n\nsweep`,
        ]),
      );
    const own = gownOf(textOf(TEMPLATE)).report.gores.find(({ name }) => name === 'side')!.top / 10;
    expect(typed((own + 0.1).toFixed(3)).filter((one) => one.includes('panel-misses-top'))).toEqual([]);
    expect(typed((own + 0.2).toFixed(3)).filter((one) => one.includes('panel-misses-top'))).toHaveLength(1);
  });
});

describe('what is said of it', () => {
  it('stands in the report as it is measured on the pieces', () => {
    const gown = gownOf(textOf(TEMPLATE));
    const { bodice } = gown.report;
    const panels = bodicePieces(gown);
    for (const [i, { name, upper, lower }] of bodice!.panels.entries()) {
      expect(panels[i]!.gore).toBe(name);
      expect(upper).toBeCloseTo(edgeOf(panels[i]!, 'upper-edge'), 2);
      expect(lower).toBeCloseTo(edgeOf(panels[i]!, 'waist'), 2);
    }
    // (girth − reduction): nothing is left open by a zip.
    expect(bodice!.levels.map(({ at, sewn }) => [at, sewn])).toEqual(
      [
        ['high-bust', 860],
        ['bust', 920],
        ['underbust', 770],
        ['waist', 670],
        ['high-hip', 880],
      ].map(([at, sewn]) => [at, expect.closeTo(sewn as number, 1)]),
    );
    for (const { difference, upperAngle, lowerAngle } of bodice!.seams) {
      expect(difference).toBeLessThan(0.1);
      expect([upperAngle, lowerAngle]).toEqual([expect.closeTo(180, 1), expect.closeTo(180, 1)]);
    }
    expect(bodice!.bones.map(({ along, count }) => [along, count])).toEqual([
      ['front/side-front', 2],
      ['side-front/side', 2],
      ['side/side-back', 2],
      ['side-back/back', 2],
      ['centre-back', 2],
    ]);
  });

  it('a gown with a measured edge has no word of it', () => {
    const { report } = gownOf(
      readFileSync(new URL('../../templates/floor-length.yaml', import.meta.url), 'utf8'),
    );
    expect(report).not.toHaveProperty('bodice');
  });

  it('faults stand where the spec says the figure', () => {
    const lineOf = (text: string, words: string): number =>
      text.slice(0, text.indexOf(words)).split('\n').length;
    const off = textOf(TEMPLATE, ['- {name: side}', '- {name: side, widths: {waist: 9}}']);
    expect(messages(off)).toContain(`${lineOf(off, 'widths: {waist')} widths-do-not-add-up`);
    const nowhere = textOf(CAPELET, ['to: side-back/back', 'to: side/back']);
    expect(messages(nowhere)).toContain(`${lineOf(nowhere, 'to: side/back')} unknown-bodice-station`);
    const short = textOf(CAPELET, [
      'length: {centre-front: 28, over-arm: 40, centre-back: 32}',
      'length: {over-arm: 40, centre-back: 32}',
    ]);
    expect(messages(short)).toContain(`${lineOf(short, 'length: {over-arm')} cape-length-missing`);
    const high = textOf(LACED, ['front/side-front: 20', 'front/side-front: 28']);
    expect(messages(high)).toContain(`${lineOf(high, 'front/side-front: 28')} edge-above-girths`);
    const tight = textOf(LACED, ['waist: 5}         #', 'waist: 8}         #']);
    expect(messages(tight)).toContain(`${lineOf(tight, 'waist: 8}')} laced-tightly`);
  });
});

it('her hip is measured once: the closure takes it from the body unless it says another', () => {
  const hip = '    - {at: hip,       below: 20,   girth: 99}\n  bust-points-apart';
  const measured: readonly [string, string] = ['  bust-points-apart', hip];
  expect(gownOf(textOf(TEMPLATE, measured)).gown.closure!.hip).toBe(980);
  expect(gownOf(textOf(TEMPLATE, measured, [', hip: 98', ''])).gown.closure!.hip).toBe(990);
});

describe('what was pinned', () => {
  const fitted = (entry: string): string =>
    `${textOf(TEMPLATE)}\nfittings:\n  - {date: 2027-05-01, ${entry}}\n`;

  it('a waist taken in at a fitting is said: the panels above it follow her girths', () => {
    const text = fitted('seams: [{seam: side/side-back, from: 0, to: 30, take-in: 0.5}]');
    expect(messages(text).filter((one) => one.endsWith('fitting-beside-draft'))).toHaveLength(1);
  });

  it('a hem that is pinned up says nothing of the bodice', () => {
    const text = fitted('hem: {centre-back: 1}');
    expect(messages(text).filter((one) => one.endsWith('fitting-beside-draft'))).toEqual([]);
  });
});

describe('its pieces', () => {
  it('have allowances of their own, none where the upper edge is bound', () => {
    const [front] = bodicePieces(gownOf(textOf(TEMPLATE)));
    expect(front!.allowances).toEqual({ 'upper-edge': 0, waist: 15, fold: 0, 'front/side-front': 15 });
    expect(front!.layers).toEqual(['strength', 'bodice-shell', 'bodice-lining']);
    const own = textOf(TEMPLATE, [
      '- {name: strength, cloth: coutil}',
      '- {name: strength, cloth: coutil, allowances: {seam: 2, upper-edge: 1}}',
    ]);
    const strength = bodicePieces(gownOf(own)).find(
      ({ gore, layers }) => gore === 'front' && layers[0] === 'strength',
    );
    expect(strength!.allowances).toEqual({ 'upper-edge': 10, waist: 15, fold: 0, 'front/side-front': 20 });
  });

  it('keep the rough cut of the gore of the same name to the gore', () => {
    const text = `${textOf(TEMPLATE)}\nrough-cut: {back: 3}\n`;
    const backs = gownOf(text).cut.pieces.filter(({ gore }) => gore === 'back');
    expect(backs.map(({ piece, roughCut }) => [piece.part, roughCut])).toEqual([
      ...backs.filter(({ piece }) => piece.part === undefined).map(() => [undefined, 30]),
      ['bodice', 0],
    ]);
  });

  it('pair up at their seams: the same marks at the same distances on both sides, others on every other seam', () => {
    const panels = bodicePieces(gownOf(textOf(TEMPLATE)));
    const marks = new Map<string, number[][]>();
    for (const { notches } of panels)
      for (const edge of new Set(notches.map((notch) => notch.edge)))
        marks.set(edge, [
          ...(marks.get(edge) ?? []),
          notches.filter((notch) => notch.edge === edge).map(({ distance }) => distance),
        ]);
    const first = [...marks.values()].map((sides) => {
      if (sides.length > 1) expect(sides[0]).toEqual(sides[1]);
      return sides[0]![0]!;
    });
    const apart = first.flatMap((a, i) => first.slice(i + 1).map((b) => Math.abs(a - b)));
    // Textbook: notches of different seams at least 1.3 cm apart.
    expect(Math.min(...apart)).toBeGreaterThan(13);
  });

  it('laced: crosses for the eyelets, and a panel behind them as long as the edge', () => {
    const gown = gownOf(textOf(LACED));
    const { lacing } = gown.report.bodice!;
    const back = bodicePieces(gown).find(({ gore }) => gore === 'back')!;
    expect(back.marks.filter(({ name }) => name === 'eyelet')).toHaveLength(2 * lacing!.eyelets);
    const modesty = bodicePieces(gown).find(({ gore }) => gore === 'modesty-panel')!;
    expect(modesty.piece.edges.map(({ curves }) => walked(curves).length)).toEqual(
      [130, 150, 130, 150].map((length) => expect.closeTo(length, 1)),
    );
    expect(edgeOf(back, 'centre-back')).toBeCloseTo(150, 1);
  });

  it('a strap is twice its width; a cape has its three lengths, its inner edge and net without a hem', () => {
    const gown = gownOf(textOf(CAPELET));
    const strap = gown.cut.pieces.find(({ piece }) => piece.part === 'strap')!;
    expect(strap.piece.edges.map(({ curves }) => walked(curves).length)).toEqual([24, 380, 24, 380]);
    expect(strap.piece.copies).toBe(2);
    const [net, shell] = gown.cut.pieces.filter(({ piece }) => piece.part === 'cape');
    const upper = bodicePieces(gown).reduce((sum, panel) => sum + edgeOf(panel, 'upper-edge'), 0);
    expect(edgeOf(net!, 'inner-edge')).toBeCloseTo(upper + 280, 1);
    expect(edgeOf(net!, 'front-edge')).toBeCloseTo(280, 3);
    expect(edgeOf(net!, 'back-edge')).toBeCloseTo(320, 3);
    // R = inner edge ÷ angle.
    expect(gown.report.capes![0]!.radius).toBeCloseTo((upper + 280) / ((150 * Math.PI) / 180), 1);
    expect([net!, shell!].map(({ allowances }) => allowances)).toEqual([
      { 'inner-edge': 15, 'front-edge': 0, 'back-edge': 0, hem: 0 },
      { 'inner-edge': 15, 'front-edge': 8, 'back-edge': 8, hem: 8 },
    ]);
  });

  it('a toile has the same panels in calico, with cloth above the upper edge to draw on', () => {
    const gown = gownOf(textOf(CAPELET));
    const toile = draftWhole(toileOf(gown.asked)).gown!;
    for (const panel of bodicePieces(toile)) {
      expect(panel.layers).toEqual(['toile']);
      expect(panel.allowances['upper-edge']).toBe(30);
      const own = bodicePieces(gown).find(({ gore }) => gore === panel.gore)!;
      expect(panel.piece.edges).toEqual(own.piece.edges);
    }
  });
});

describe('the order of making', () => {
  const orderOf = (file: URL): string[] => workroom(gownOf(textOf(file)), []).facts.order.map(({ id }) => id);
  const comesBefore = (order: readonly string[], ...ids: readonly string[]): void => {
    const places = ids.map((id) =>
      order.findIndex((own) => own === id || (id.endsWith(':') && own.startsWith(id))),
    );
    expect(places, `${ids} in ${order}`).toEqual([...places].sort((a, b) => a - b));
    expect(Math.min(...places)).toBeGreaterThanOrEqual(0);
  };

  it('toile first; bones after the waist seam and the fitting; the lining last', () => {
    const order = orderOf(LACED);
    comesBefore(order, 'toile', 'cut:coutil', 'bodice-seams', 'casings', 'bodice-layers', 'bodice-close');
    comesBefore(order, 'bodice-close', 'waist:', 'fit-bodice', 'bones', 'upper-edge', 'fit', 'bodice-lining');
    expect(order[0]).toBe('toile');
  });

  it('straps and capes are pinned at the fitting before they are caught in the upper edge', () => {
    const order = orderOf(CAPELET);
    comesBefore(order, 'cut:net', 'fit-bodice', 'beside:capelet', 'upper-edge');
    comesBefore(order, 'cut:shell', 'fit-bodice', 'beside:strap', 'upper-edge');
  });

  it('a needle at the waist seam keeps clear of the bones by what the draft says, not by what is asked', () => {
    const { facts } = workroom(gownOf(textOf(LACED)), []);
    // 13 mm clear less a second row of 3 mm.
    expect(facts.waist.clearance).toBeCloseTo(10, 6);
    const near = textOf(LACED, ['width: 0.7, clear: 1.3', 'width: 0.7, clear: 0.5']);
    expect(messages(near).some((one) => one.endsWith('needle-near-bone'))).toBe(true);
  });

  it('one zip runs through bodice and skirt where both close at one seam', () => {
    const { facts } = workroom(gownOf(textOf(TEMPLATE)), []);
    const zips = facts.notions.filter(({ kind }) => /zip/.test(kind));
    // 14 cm of bodice at the centre back and 22 of the skirt.
    expect(zips).toEqual([{ kind: 'through-zip', length: expect.closeTo(360, 1) }]);
  });
});
