import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/print/page/page-blocks.ts';
import { benchPage } from '../../src/print/papers/bench-page.ts';
import { handMade } from './hand-made-facts.ts';

/** The page that is pinned up: its sentences, of facts made by hand. mm. */

const SKIRT = {
  waist: 741,
  hem: 4210,
  stations: [{ name: 'centre-front', drop: 0, finished: 1010 }],
  layers: [],
};
const page = ({
  workroom = {},
  gown = {},
  ...rest
}: { workroom?: object; gown?: object } & Record<string, unknown> = {}) => {
  const blocks = benchPage(
    handMade('mm', {
      ...rest,
      workroom: { skirt: SKIRT, waist: { groups: [] }, edging: undefined, ...workroom },
      gown: { name: 'Lantern', waistSeam: 702, ...gown },
    }),
  );
  const [fitted] = blocks.flatMap((block) => (block.kind === 'fitted' ? [block] : []));
  return { blocks, versions: fitted!.versions as readonly (readonly Block[])[] };
};
const sentences = (own: Parameters<typeof page>[0] = {}) =>
  page(own).versions[0]!.flatMap((block) => (block.kind === 'paragraph' ? [block.text] : []));

describe('the page that is pinned up', () => {
  it('under the gown’s name, as large as leaves the rest its room, on a page of its own', () => {
    const { blocks, versions } = page();
    expect(blocks[0]).toEqual({ kind: 'heading', level: 1, text: 'Lantern' });
    expect(blocks.at(-1)).toEqual({ kind: 'page-break' });
    expect(versions).toHaveLength(12);
  });

  it('what is round it, where it opens; a drop where there is one', () => {
    expect(sentences()).toEqual(
      [
        'The gores’ tops are 741 mm all round, the bodice edge 702 mm. The hem is 4210 mm round. The spec has no closure.',
      ].map((text) => expect.stringContaining(text.split(' The spec')[0]!)),
    );
    expect(sentences({ gown: { waist: {} } })[0]).toMatch(
      /^The gores’ tops are 741 mm all round\. The hem is 4210 mm round\./,
    );
    expect(sentences()[0]).not.toMatch(/^Drop/);
    const dropped = { ...SKIRT, stations: [...SKIRT.stations, { name: 'a/b', drop: 30, finished: 1 }] };
    expect(sentences({ workroom: { skirt: dropped } })[0]).toMatch(/^Drop: how far/);
    const closure = { kind: 'zip', at: 'centre-back', side: 'left', starts: 21, stops: 232 };
    const opens = (own: object) => sentences({ workroom: { closure: { ...closure, ...own } } })[0];
    expect(opens({})).toMatch(
      /Opens by zip at centre back, her left, from 21 mm to 232 mm below the waist seam\.$/,
    );
    expect(opens({ starts: 0, side: undefined })).toMatch(
      /Opens by zip at centre back, down to 232 mm below the waist seam\.$/,
    );
    expect(opens({ stops: undefined, kind: 'hooks' })).toMatch(
      /Opens by hooks(?: and bars)? at centre back, her left\.$/,
    );
    expect(
      sentences({
        gown: { wrap: { at: 'a/b', over: 'left', overlap: 311, overlapAtHem: 422 } },
        workroom: { closure },
      })[0],
    ).toMatch(/Wraps at a\/b, her left side on top, edge over edge by 311 mm .*422 mm/);
  });

  it('her own notes line by line, and how many things are to be settled', () => {
    const diagnostics = ['error', 'warning', 'warning', 'note'].map((level) => ({ level }));
    expect(
      sentences({ diagnostics, gown: { notes: 'Satin side in.\n\n  Second line.\n' } }).slice(0, 3),
    ).toEqual(['Satin side in.', '  Second line.', '3 things to settle before cutting: see the next page.']);
    expect(sentences({ diagnostics: diagnostics.slice(1, 2) })[0]).toBe(
      'One thing to settle before cutting: see the next page.',
    );
    expect(sentences({ diagnostics: diagnostics.slice(3) })).toHaveLength(1);
  });
});
