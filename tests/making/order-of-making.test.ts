import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { prerequisiteOrder } from '../../src/making/order/prerequisite-order.ts';
import { english } from '../../src/words/english.ts';
import { example, type Made, made, skirt } from './made.ts';

/** Every step's id in order. */
function ids({ facts }: Made): string[] {
  return facts.order.map((step) => step.id);
}

function inOrder(made: Made, ...wanted: string[]): void {
  const order = ids(made);
  const places = wanted.map((id) => order.indexOf(id));
  expect(
    places.every((place) => place >= 0),
    `${wanted.join(' < ')} in ${order.join(' ')}`,
  ).toBe(true);
  expect(places).toEqual([...places].sort((a, b) => a - b));
}

function codes(made: Made): string[] {
  return made.findings.map((finding) => finding.code);
}

/** All that a maker reads of the order, as one text. */
function told({ facts, gown }: Made): string {
  const words = english(gown.gown.units);
  return facts.order
    .map((step) => {
      const { does, notes, holds } = words.step(step.work);
      return [`${step.number} ${does}`, ...notes, ...holds.map((hold) => `Hold: ${hold}`)].join('\n');
    })
    .join('\n');
}

const TWO_BAGGED = `
  - {name: lining, cloth: cupro, hem: bagged, gap: {at: centre-back, from: 40, length: 45}}
  - {name: shell, cloth: crepe, hem: bagged}`;

describe('prerequisites', () => {
  it('come first whatever the list says, and the rest keeps its order', () => {
    const things = [
      { id: 'c', after: ['a'] },
      { id: 'b', after: [] },
      { id: 'a', after: ['nobody'] },
    ];
    expect(prerequisiteOrder(things).order.map((thing) => thing.id)).toEqual(['b', 'a', 'c']);
  });

  it('that wait for each other are stuck', () => {
    const things = [
      { id: 'a', after: ['b'] },
      { id: 'b', after: ['a'] },
      { id: 'c', after: [] },
    ];
    const { order, stuck } = prerequisiteOrder(things);
    expect(order.map((thing) => thing.id)).toEqual(['c']);
    expect(stuck.map((thing) => thing.id)).toEqual(['a', 'b']);
  });

  it('hold for any graph without circles', () => {
    const graph = fc
      .array(fc.array(fc.nat(), { maxLength: 4 }), { minLength: 1, maxLength: 15 })
      .map((rows) =>
        rows.map((after, i) => ({ id: String(i), after: i === 0 ? [] : after.map((n) => String(n % i)) })),
      );
    fc.assert(
      fc.property(graph, fc.integer(), (things, seed) => {
        const shuffled = [...things].sort(
          (a, b) => ((Number(a.id) * seed) % 7) - ((Number(b.id) * seed) % 7),
        );
        const { order, stuck } = prerequisiteOrder(shuffled);
        expect(stuck).toEqual([]);
        const place = new Map(order.map((thing, i) => [thing.id, i]));
        for (const thing of order) {
          for (const id of thing.after) expect(place.get(id)!).toBeLessThan(place.get(thing.id)!);
        }
      }),
    );
  });
});

describe('the order that is often got wrong', () => {
  const lantern = made(example('lantern'));

  it('tests scraps before anything is cut, and shrinks a cloth before it is laid', () => {
    expect(ids(lantern)[0]).toBe('test-scraps');
    inOrder(lantern, 'test-scraps', 'shrink:cupro', 'cut:cupro');
    inOrder(lantern, 'test-scraps', 'shrink:organza', 'cut:organza');
  });

  it('hangs, levels and trims before any hem is finished', () => {
    for (const hem of ['hem:lining', 'hem:shell', 'hem:organza', 'strip:shell', 'edging:organza']) {
      inOrder(lantern, 'hang', 'level', 'trim', hem);
    }
    inOrder(made(skirt({ layers: TWO_BAGGED })), 'hang', 'level', 'trim', 'bag:lining+shell');
  });

  it('puts braid on before the hem is faced or bagged', () => {
    inOrder(lantern, 'strip:shell', 'hem:shell');
    const bagged = made(
      skirt({ layers: TWO_BAGGED, more: 'trims: [{kind: horsehair, layer: shell, along: hem, width: 8}]' }),
    );
    inOrder(bagged, 'strip:shell', 'bag:lining+shell', 'turn:lining+shell');
  });

  it('seams each layer by itself, leaving the opening, and takes only its layers into the closure', () => {
    inOrder(lantern, 'seams:lining', 'seams:shell', 'seams:organza', 'baste:shell+organza', 'close');
    const seams = lantern.facts.order.flatMap(({ work }) => (work.kind === 'sew-seams' ? [work] : []));
    expect(seams.map((work) => work.openAbove?.stops)).toEqual([255, 255, 255]);
    expect(lantern.facts.closure).toMatchObject({ takes: ['shell', 'organza'], felled: ['lining'] });
  });

  it('fells the lining to the closure last: only pressing and packing follow', () => {
    expect(ids(lantern).slice(-2)).toEqual(['fell-lining', 'finish']);
  });

  it('sews the waist from the outside in, after the closure', () => {
    inOrder(lantern, 'close', 'waist:shell+organza', 'waist:lining', 'waist-stay', 'hang');
  });

  it('obeys every prerequisite in every example', () => {
    for (const one of [lantern, made(example('puffin'))]) {
      const order = ids(one);
      for (const step of one.facts.order) {
        for (const id of step.after.filter((own) => order.includes(own))) {
          expect(order.indexOf(id), `${id} before ${step.id}`).toBeLessThan(order.indexOf(step.id));
        }
      }
    }
  });
});

describe('a bagged hem', () => {
  it('is turned through its gap, which the seam leaves open', () => {
    const bagged = made(skirt({ layers: TWO_BAGGED }));
    expect(codes(bagged)).not.toContain('bagged-hem-without-gap');
    inOrder(bagged, 'seams:lining', 'bag:lining+shell', 'turn:lining+shell', 'finish');
    expect(told(bagged)).toContain('Hold: leave the lining’s centre back open 45 cm to turn the hem.');
    expect(told(bagged)).toContain('from 40 cm to 85 cm below the waist seam');
  });

  it('without a gap is a finding, and so is one alone, unequal, or a gap that does not fit', () => {
    const without = skirt({
      layers:
        '  - {name: lining, cloth: cupro, hem: bagged, shorter: 2}\n  - {name: shell, cloth: crepe, hem: bagged}',
    });
    expect(codes(made(without))).toEqual(
      expect.arrayContaining(['bagged-hem-without-gap', 'bagged-hem-not-equal']),
    );
    expect(codes(made(skirt({ layers: '  - {name: shell, cloth: crepe, hem: bagged}' })))).toContain(
      'bagged-hem-alone',
    );
    const long = TWO_BAGGED.replace('length: 45', 'length: 90');
    expect(codes(made(skirt({ layers: long })))).toContain('gap-does-not-fit');
  });

  it('gets its own-edge scallops only when it is turned, cut off the cloth before the lay', () => {
    const scalloped = made(
      skirt({
        layers: TWO_BAGGED.replace('cloth: crepe, hem: bagged', 'cloth: lace, hem: bagged, edging: scallops'),
        more: 'edging: {name: scallops, from: own-edges, cloth: lace, depth: 6, repeat: 12, scallop: 1.5}',
      }),
      [{ cloth: 'lace', layers: ['shell'], length: 2000, buy: 2000 }],
    );
    inOrder(scalloped, 'cut-own-edges', 'cut:lace', 'turn:lining+shell', 'edging:shell');
    // Two edges of 2 m are 4 m; the hem is longer than that.
    expect(scalloped.facts.edging?.own?.supply).toBe(4000);
    expect(scalloped.facts.skirt.hem).toBeGreaterThan(2400);
    expect(codes(scalloped)).not.toContain('edging-short');
    const short = made(
      skirt({
        layers: '  - {name: shell, cloth: lace, hem: raw, edging: scallops}',
        more: 'edging: {name: scallops, from: own-edges, cloth: lace, depth: 6, repeat: 12}',
      }),
      [{ cloth: 'lace', layers: ['shell'], length: 1200, buy: 1200 }],
    );
    expect(codes(short)).toContain('edging-short');
  });
});

describe('other gowns', () => {
  it('a laced back has its edges finished before the waist, or says that nothing is decided', () => {
    const laced = (finish: string): Made =>
      made(
        skirt({
          more: `closure: {kind: lacing, at: centre-back, opening: 25, hip: 98, entry: steps-in${finish}}`,
        }),
      );
    inOrder(laced(', finish: placket'), 'seams:shell', 'finish-opening', 'close', 'waist:shell');
    expect(codes(laced(', finish: placket'))).not.toContain('closure-edge-unfinished');
    expect(codes(laced(''))).toContain('closure-edge-unfinished');
    expect(told(laced(', finish: facing'))).toContain(
      'Finish the skirt’s raw edges at centre back with a facing',
    );
  });

  it('a stretching layer lies loose before it is cut and is stretched to the panels as it is pinned', () => {
    const stretching = made(
      skirt({
        layers:
          '  - {name: lining, cloth: jersey, hem: turned, cut-smaller-across: 3%}\n  - {name: shell, cloth: crepe, hem: turned}',
        more: 'sewn-as-one: {waist: [[lining], [shell]]}',
      }),
    );
    expect(told(stretching)).toContain('Let it lie loose overnight');
    expect(told(stretching)).toContain('The lining is cut smaller: stretch it to each panel');
  });

  it('layers that do not lie next to each other cannot be one', () => {
    const split = skirt({
      layers: ['lining', 'middle', 'shell']
        .map((name) => `  - {name: ${name}, cloth: crepe, hem: turned}`)
        .join('\n'),
      more: 'sewn-as-one: {waist: [[lining, shell], [middle]]}',
    });
    expect(codes(made(split))).toContain('layers-not-neighbours');
  });

  it('says where a layer of some gores is sewn to the layer of the others', () => {
    const puffin = made(example('puffin'));
    expect(told(puffin)).toContain('At front/side it is sewn to the brocade.');
    expect(ids(puffin)).not.toContain('seams:brocade');
  });

  it('with nothing but the needed sections still has an order', () => {
    const plain = made(skirt());
    expect(ids(plain)).toEqual(
      expect.arrayContaining([
        'test-scraps',
        'cut:crepe',
        'seams:shell',
        'waist:shell',
        'hem:shell',
        'finish',
      ]),
    );
    expect(plain.facts.missing.map((one) => one.fact)).toEqual(
      expect.arrayContaining(['closure', 'bones-end', 'no-prices', 'event']),
    );
  });
});
