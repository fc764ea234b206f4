import { describe, expect, it } from 'vitest';
import { HARMS } from '../../src/making/harms.ts';
import { wrapSteps } from '../../src/making/order/steps-of-wrap.ts';
import { english } from '../../src/words/english.ts';
import { NO_PARTS } from './no-parts.ts';

/** Which harm a gown has, and at which steps it is told; a wrap's steps: of facts made by hand, each alone. */

const GOWN = {
  layers: [],
  ...NO_PARTS,
  waist: {},
};
const cloth = (name: string, weave?: string) => ({ layers: [{ cloth: { name, weave } }] });
const harms = ({ gown = {}, ...facts }: { gown?: object } & Record<string, unknown>, offFloor = 150) =>
  HARMS.filter(({ isIn }) =>
    isIn({ bench: { gown: { ...GOWN, ...gown }, skirt: { offFloor } }, ...facts } as never),
  ).map(({ kind }) => kind);
/** What every gown has, whatever it is. */
const ALWAYS = harms({});

describe('harms of a gown', () => {
  it('what any has', () => {
    expect(ALWAYS.join(' ')).toBe(
      'data irons floor-cutting blades needle-zip many-plies nickel braid-heat weight flame-worn pins',
    );
  });

  it.each<[string, Parameters<typeof harms>[0], string[]]>([
    ['a child', { gown: { body: { wearer: 'child' } } }, ['child']],
    ['a grown wearer', { gown: { body: { wearer: 'adult' } } }, []],
    ['net', { gown: cloth('net') }, ['flame']],
    ['a sheer by its weave', { gown: cloth('overlay', 'chiffon') }, ['flame']],
    ['crepe', { gown: cloth('crepe') }, []],
    ['a flounce', { gown: { flounces: [{ layer: { cloth: { name: 'crepe' } } }] } }, ['flame']],
    ['tiers', { gown: { tiers: [{ layer: { cloth: { name: 'crepe' } } }] } }, ['flame']],
    ['sequins', { gown: cloth('sequinned crepe') }, ['sequins']],
    [
      'sequins of an overskirt',
      { gown: { overskirts: [{ gown: { ...GOWN, ...cloth('beaded lace') } }] } },
      ['sequins'],
    ],
    ['a bodice that comes made', { gown: { waist: undefined } }, ['needle-bone']],
    ['one with bones of its own', { bodice: { asked: { draft: { bones: {} } } } }, ['needle-bone']],
    ['one without', { bodice: { asked: { draft: {} } }, gown: { waist: undefined } }, []],
    ['eyelets', { bodice: { asked: { draft: {} }, lacing: { eyelets: 22 } } }, ['tight-lacing']],
    ['no eyelets', { bodice: { asked: { draft: {} }, lacing: { eyelets: 0 } } }, []],
    ['a laced closure', { closure: { kind: 'lacing' } }, ['tight-lacing']],
    ['a zip', { closure: { kind: 'zip' } }, []],
    ['a hoop', { gown: { petticoat: { hoop: 3000 } } }, ['hoop']],
    ['a petticoat alone', { gown: { petticoat: {} } }, []],
    ['a train', { gown: { train: {} } }, ['train-on-stairs']],
    [
      'a train over it',
      { gown: { overskirts: [{ gown: { ...GOWN, train: {} } }, { gown: GOWN }] } },
      ['train-on-stairs'],
    ],
    ['a bustle', { bustle: {} }, ['dancing']],
  ])('%s', (_, facts, own) => {
    expect(harms(facts).filter((kind) => !ALWAYS.includes(kind))).toEqual(own);
    expect(harms(facts)).toEqual(expect.arrayContaining([...ALWAYS]));
  });

  it('a hem nearer to the floor than 150', () => {
    expect(harms({}, 149)).toContain('stairs');
    expect(harms({}, 150)).not.toContain('stairs');
    expect(harms({}, undefined as never)).not.toContain('stairs');
    // With a train what is said of trains says it.
    expect(harms({ gown: { train: {} } }, 20)).not.toContain('stairs');
  });
});

describe('where harms are told', () => {
  const told = (work: object) => [
    ...new Set(HARMS.filter(({ step }) => step?.at(work as never)).map(({ kind }) => kind)),
  ];
  it.each<[string[], object]>([
    [['irons', 'flame'], { kind: 'test-scraps' }],
    [['floor-cutting', 'blades'], { kind: 'cut', beaded: false }],
    [['floor-cutting', 'blades', 'sequins'], { kind: 'cut', beaded: true }],
    [['needle-zip'], { kind: 'close', closure: 'zip', starts: 0 }],
    [['needle-zip', 'nickel'], { kind: 'close', closure: 'zip', starts: 20 }],
    [['nickel'], { kind: 'close', closure: 'hooks', starts: 0 }],
    [[], { kind: 'close', closure: 'lacing', starts: 20 }],
    [['needle-zip'], { kind: 'bodice-close', closing: { kind: 'zip' } }],
    [['nickel'], { kind: 'bodice-close', closing: { kind: 'hooks' } }],
    [['nickel'], { kind: 'bodice-close', closing: { kind: 'busk' } }],
    [[], { kind: 'bodice-close', closing: { kind: 'lacing' } }],
    [[], { kind: 'bodice-close' }],
    [['needle-bone'], { kind: 'join-waist', crossing: 5 }],
    [['needle-bone', 'many-plies'], { kind: 'join-waist', crossing: 6 }],
    [['needle-bone'], { kind: 'upper-edge' }],
    [['nickel'], { kind: 'finish-opening', finish: 'hook' }],
    [[], { kind: 'finish-opening', finish: 'guard' }],
    [['nickel', 'weight'], { kind: 'own-waist', finish: 'band', overlap: 30, wraps: false }],
    [['weight'], { kind: 'own-waist', finish: 'band', overlap: 0, wraps: false }],
    [['weight'], { kind: 'own-waist', finish: 'band', overlap: 30, wraps: true }],
    [['weight'], { kind: 'own-waist', finish: 'facing', overlap: 30, wraps: false }],
    [['weight'], { kind: 'waist-stay' }],
    [['nickel'], { kind: 'fasten-wrap', fastened: 'hooks' }],
    [['nickel'], { kind: 'fasten-wrap', fastened: 'snaps' }],
    [[], { kind: 'fasten-wrap', fastened: 'ties' }],
    [['nickel'], { kind: 'overskirt', overskirt: { fastened: 'hooks' } }],
    [['nickel'], { kind: 'overskirt', overskirt: { fastened: 'snaps' } }],
    [[], { kind: 'overskirt', overskirt: { fastened: 'sewn' } }],
    [['nickel'], { kind: 'bustle', over: true }],
    [[], { kind: 'bustle', over: false }],
    [['braid-heat'], { kind: 'strip', strip: { kind: 'horsehair' } }],
    [[], { kind: 'strip', strip: { kind: 'stay-tape' } }],
    [['tight-lacing'], { kind: 'toile-bodice' }],
    [['tight-lacing'], { kind: 'fit-bodice' }],
    [['tight-lacing', 'hoop', 'stairs', 'train-on-stairs'], { kind: 'fit' }],
    [['pins'], { kind: 'finish' }],
    [[], { kind: 'hang' }],
  ])('%j at %j', (kinds, work) => expect(told(work)).toEqual(kinds));

  it('at the head of the job sheet, and on the client’s page', () => {
    const of = (paper: 'jobSheet' | 'client') =>
      HARMS.filter((harm) => harm[paper] === true)
        .map(({ kind }) => kind)
        .join(' ');
    expect(of('jobSheet')).toBe('child data');
    expect(of('client')).toBe(
      'child data nickel weight tight-lacing hoop stairs train-on-stairs dancing flame-worn',
    );
  });
});

describe('a wrap’s steps', () => {
  const layer = (name: string, cut: string, apart = false) => ({ name, cloth: { name: cut, apart } });
  const wrap = {
    at: 'front/side',
    over: 'left',
    edges: 'faced',
    overlap: 310,
    overlapAtHem: 420,
    fastened: 'ties',
    facing: { layer: layer('edge-facing', 'cupro'), depth: 55 },
    ties: { layer: layer('ties', 'satin', true), length: 905, width: 24 },
  };
  const layers = [{ name: 'lining' }, { name: 'shell' }];
  const steps = (own: object = {}) =>
    wrapSteps({ bench: { gown: { layers, wrap: { ...wrap, ...own } } } } as never);

  it('edges before the waist and the hanging, ties before the waist, fastened at the fitting', () => {
    expect(steps()).toEqual([
      {
        id: 'wrap-edges',
        after: ['stay-edges', 'seams:lining', 'darts:lining', 'seams:shell', 'darts:shell', 'cut:cupro'],
        before: ['waist:lining+shell', 'hang'],
        hold: false,
        work: {
          kind: 'wrap-edges',
          at: 'front/side',
          layers: ['lining', 'shell'],
          edges: 'faced',
          facing: { name: 'edge-facing', depth: 55 },
        },
      },
      {
        id: 'wrap-ties',
        after: ['cut:satin/ties', 'mark'],
        before: ['waist:lining+shell'],
        hold: false,
        work: { kind: 'wrap-ties', name: 'ties', length: 905, width: 24, over: 'left' },
      },
      {
        id: 'fasten-wrap',
        after: ['fit', 'waist:lining+shell'],
        before: ['finish'],
        hold: false,
        work: {
          kind: 'fasten-wrap',
          at: 'front/side',
          over: 'left',
          overlap: 310,
          overlapAtHem: 420,
          fastened: 'ties',
          tiesCut: true,
        },
      },
    ]);
    expect(steps({ ties: undefined, facing: undefined }).map(({ id, after }) => [id, after.length])).toEqual([
      ['wrap-edges', 5],
      ['fasten-wrap', 2],
    ]);
    expect(steps({ ties: undefined })[1]!.work).toMatchObject({ tiesCut: false });
    expect(wrapSteps({ bench: { gown: { layers } } } as never)).toEqual([]);
  });

  const said = (work: object) => {
    const { does, notes, holds } = english('cm').step(work as never);
    expect(holds).toEqual([]);
    return [does, ...notes];
  };
  it('in words: names, figures and sides each in its place', () => {
    const [edges, ties, fastened] = steps().map(({ work }) => said(work));
    expect(edges).toEqual([
      'Finish both edges of the wrap, past front/side, from waist to hem, lining and shell as one.',
      'Sew the edge-facing, 5.5 cm deep, to both, turn it inside and catch it; its lower end waits for the hem.',
      'A stay tape along each edge keeps it from growing as it hangs.',
      'To hang and to level it, pin it shut as she wears it; the hem of the under edge is levelled too.',
    ]);
    expect(ties).toEqual([
      'Make the ties: fold each lengthwise, sew and turn it, 90.5 cm long and 2.4 cm wide.',
      'Catch one in each end of the waist as that is finished.',
      'The tie of the under edge goes out through a slot at her left, above the seam nearest to where it ends, and round her back: leave that stretch of the seam open and fasten off both its ends.',
    ]);
    expect(fastened!.slice(0, 2)).toEqual([
      'Lay her left side over the other, front/side on front/side: the edges lie over one another by 31 cm at the waist and 42 cm at the hem.',
      'The upper tie and the one that comes round her back meet in a bow at the upper edge.',
    ]);
  });

  it('in words: how edges are finished and how it is held', () => {
    const edges = (own: object) =>
      said({ kind: 'wrap-edges', at: 'centre-front', layers: ['shell'], edges: 'faced', ...own });
    expect(edges({})[0]).toBe('Finish both edges of the wrap, past centre front, from waist to hem.');
    expect(edges({})[1]).toMatch(/^Face them with a strip/);
    expect(edges({ edges: 'bound' })[1]).toMatch(/^Bind them/);
    expect(edges({ edges: 'turned' })[1]).toMatch(/^Turn their allowances in/);
    const held = (fastened: string, tiesCut: boolean) =>
      said({ kind: 'fasten-wrap', at: 'a/b', over: 'right', overlap: 1, overlapAtHem: 2, fastened, tiesCut })
        .slice(1)
        .map((line) => line.split(' ').slice(0, 4).join(' '));
    const last = 'Let her sit, step';
    expect(held('ties', true)).toEqual(['The upper tie and', last]);
    expect(held('ties', false)).toEqual(['The upper tie and', 'Ties of ribbon or', last]);
    const under = 'The under edge needs';
    expect(held('buttons', false)).toEqual(['Work the buttonholes in', under, last]);
    expect(held('hooks', true)).toEqual(['Sew the hooks inside', under, last]);
    expect(held('snaps', false)).toEqual(['Sew the snaps inside', under, last]);
  });
});
