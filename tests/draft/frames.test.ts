import { describe, expect, it } from 'vitest';
import { raisedFrame } from '../../src/draft/raised-frame.ts';
import { sectorFrame } from '../../src/draft/sector-frame.ts';
import { draft } from '../../src/pipeline.ts';
import { fitted } from '../fittings/fitted.ts';
import { plainGown, type Tree } from '../outside/plain-gown.ts';
import { expectFrame } from './frame-holds.ts';

const LEVELS = [0, 60, 240, 520, 980];

function framesOf(fields: Tree) {
  const text = plainGown({ units: 'mm', bodice: { 'waist-seam': 720 }, ...fields });
  const { gown, diagnostics } = draft({ name: 'frames.yaml', text });
  if (gown === undefined) throw new Error(diagnostics.map(({ message }) => message).join('; '));
  return gown.drafts;
}

const at = { 'centre-front': 1000, 'centre-back': 1000 };

describe('a gore laid flat', () => {
  it.each([
    ['a sector', {}],
    ['a rectangle', { flare: 0 }],
    ['one that narrows', { flare: '-4deg' }],
    ['one with two flares', { flare: ['3deg', '12deg'] }],
    ['by its front edge', { grain: 'front-edge' }],
    ['by its back edge', { grain: 'back-edge' }],
  ])('as %s', (_, gore) => {
    const { gown } = framesOf({
      gores: ['front', 'side', 'back'].map((name) => ({ name, top: 120, flare: '14deg', ...gore })),
      lengths: { at },
    });
    for (const frame of gown.frames) expectFrame(frame, LEVELS, 1e-4);
  });

  it('shaped over girths, with its grain anywhere, on a fold, full at its waist', () => {
    const drafts = framesOf({
      gores: [
        { name: 'front', 'on-fold': true, 'half-top': 120 },
        { name: 'side', top: 120, grain: 'front-edge' },
        { name: 'back', top: 120, grain: 'back-edge' },
      ],
      petticoat: {
        girths: [
          { down: 0, girth: 720 },
          { down: 200, girth: 950 },
          { down: 600, girth: 1300 },
          { down: 1000, girth: 1500 },
        ],
      },
      lengths: { at },
      layers: [
        { name: 'shell', cloth: 'calico', hem: 'faced' },
        { name: 'net', cloth: 'calico', hem: 'raw', fullness: { ratio: 1.5, where: 'waist' } },
        { name: 'small', cloth: 'calico', hem: 'raw', 'cut-smaller-along': '4%' },
      ],
    });
    for (const { draft: own } of drafts.layers)
      for (const frame of own.frames) expectFrame(frame, LEVELS, 0.02);
  });

  it('taken in and let out, on one side of her and on both', () => {
    for (const side of [{}, { side: 'left' }]) {
      const { drafts } = fitted([
        {
          date: '2027-03-01',
          ...side,
          seams: [
            { seam: 'side/back', from: 100, to: 500, 'take-in': 9 },
            { seam: 'side-front/side', from: 0, to: 300, 'take-in': -4 },
          ],
        },
      ]);
      // The gore between the two seams, and on her other side its mirror image.
      for (const i of [2, 5].filter((one) => one < drafts.gown.frames.length))
        expectFrame(drafts.gown.frames[i]!, [60, 240, 460], 0.02);
    }
  });

  it('raised, counts from above: every place is where it was', () => {
    const own = sectorFrame(120, 0.2, 0.1);
    const raised = raisedFrame(own, 150);
    expectFrame(raised, [0, 100, 400, 900], 1e-4);
    const [was, is] = [own.pointAt(200, 0.25), raised.pointAt(50, 0.25)];
    expect(raised.widthAt(50)).toBeCloseTo(own.widthAt(200), 9);
    expect([is.x, is.y + 150, raised.downAt(50, 0.25)]).toEqual(
      [was.x, was.y, own.downAt(200, 0.25)].map((value) => expect.closeTo(value, 9)),
    );
  });
});
