import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { gownToLay } from '../../../src/lay/plan/lay-to-plan.ts';
import { planLays } from '../../../src/lay/plan/plan-lays.ts';
import { draft } from '../../../src/pipeline.ts';
import { layFiles } from '../../../src/publish/lay-files.ts';
import { polygonOf, readPath } from '../measure/path.ts';
import { overlapOf } from '../measure/polygons.ts';

const root = new URL('../../..', import.meta.url);

interface Placed {
  /** With its layer, where the lay has pieces of several. */
  readonly gore: string;
  readonly mirrored: boolean;
  readonly turned: number;
  readonly outline: readonly { readonly x: number; readonly y: number }[];
}

/** The lays of a template as a script would read them. */
function laysOf(template: string): Map<string, Placed[]> {
  const text = readFileSync(new URL(`templates/${template}.yaml`, root), 'utf8');
  const { gown } = draft({ name: template, text });
  const { lays } = planLays(gownToLay(gown!), { say: String });
  return new Map([...layFiles(gown!.gown, lays)].map(([name, svg]) => [name, placedIn(svg)]));
}

function placedIn(svg: string): Placed[] {
  const tags = [...svg.matchAll(/<path class="placed"[^>]*>/g)].map(([tag]) => tag);
  const several = new Set(tags.map((tag) => /data-layer="[^"]+"/.exec(tag)?.[0])).size > 1;
  return tags.map((tag) => {
    const attribute = (name: string) => new RegExp(`\\b${name}="([^"]*)"`).exec(tag)?.[1] ?? '';
    return {
      gore: `${several ? `${attribute('data-layer')} ` : ''}${attribute('data-gore')}`,
      mirrored: attribute('data-mirrored') === 'true',
      turned: Number(attribute('data-turned')),
      outline: polygonOf(readPath(attribute('d')), 0.005),
    };
  });
}

/** How often each gore lies as drawn and mirrored: `1+1` is a pair. */
function counts(placed: readonly Placed[]): Record<string, string> {
  const names = [...new Set(placed.map(({ gore }) => gore))].sort();
  return Object.fromEntries(
    names.map((name) => {
      const own = placed.filter(({ gore }) => gore === name);
      const mirrored = own.filter((piece) => piece.mirrored).length;
      return [name, `${own.length - mirrored}+${mirrored}`];
    }),
  );
}

describe('what is cut of each shape, and how often mirrored', () => {
  const expected: Record<string, Record<string, Record<string, string>>> = {
    'one-sided-train': {
      'lay-shell.svg': Object.fromEntries(
        ['left-front', 'left-side', 'left-back', 'right-back', 'right-side', 'right-front'].map((name) => [
          name,
          '1+0',
        ]),
      ),
    },
    godets: {
      'lay-shell.svg': {
        front: '1+0',
        'side-front': '1+1',
        side: '1+1',
        back: '1+1',
        'side-godet': '1+1',
        'back-godet': '1+1',
        tail: '1+0',
      },
    },
    'tiered-net': {
      'lay-net.svg': { petticoat: '5+0' },
      'lay-shell.svg': { front: '1+1', back: '1+1' },
    },
    'circular-flounce': {
      // The skirt and both of its flounces come from one length.
      'lay-shell.svg': {
        'shell front': '1+0',
        'shell side': '1+1',
        'shell back': '1+1',
        'hem-flounce hem-flounce': '1+0',
        'frill frill': '2+0',
      },
    },
    'train-that-comes-off': {
      'lay-shell.svg': {
        'shell front': '1+0',
        'shell side-front': '1+1',
        'shell side-back': '1+1',
        'shell back': '1+1',
        'train-shell train-side': '1+1',
        'train-shell train-back': '1+1',
      },
    },
    gathered: { 'lay-tulle.svg': { front: '1+0', 'side-front': '1+1', 'side-back': '1+1', back: '1+1' } },
  };
  for (const [template, layers] of Object.entries(expected)) {
    it(template, () => {
      const lays = laysOf(template);
      for (const [file, own] of Object.entries(layers)) {
        const placed = lays.get(file);
        expect(placed, `${template} has ${[...lays.keys()].join(', ')}`).toBeDefined();
        expect(counts(placed!)).toEqual(own);
      }
      for (const placed of lays.values())
        for (const [i, piece] of placed.entries())
          for (const other of placed.slice(0, i)) {
            // Single everywhere, so no ply lies on another. A hundredth of a millimetre all along a side is touching.
            expect(overlapOf(piece.outline, other.outline)).toBeLessThan(0.0105 * extent(piece.outline));
          }
    }, 60_000);
  }
});

/** Width and height of the bounds added up, mm: no side is longer. */
function extent(outline: readonly { readonly x: number; readonly y: number }[]): number {
  const xs = outline.map(({ x }) => x);
  const ys = outline.map(({ y }) => y);
  return Math.max(...xs) - Math.min(...xs) + Math.max(...ys) - Math.min(...ys);
}
