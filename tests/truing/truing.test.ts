import { describe, expect, it } from 'vitest';
import type { GownDraft } from '../../src/draft/draft-gown.ts';
import type { Piece } from '../../src/draft/piece.ts';
import type { Curve, Line } from '../../src/geometry/curve.ts';
import { draft } from '../../src/pipeline.ts';
import { measureGown } from '../../src/truing/measure-gown.ts';
import { trueGown } from '../../src/truing/true-gown.ts';

/** A plain gown whose draft the tests spoil by known amounts; invented. */
const PLAIN = `
format: 1
gown: Plain
units: cm
bodice: {waist-seam: 72, panels: {front: 18, back: 18}}
gores: [{name: front, flare: 20deg}, {name: back, flare: 24deg}]
lengths: {at: {centre-front: 100, front/back: 101, centre-back: 103}}
allowances: {seam: 1.5, waist: 1.5, hem: 2}
layers: [{name: shell, cloth: calico, hem: faced}]
cloths: {calico: {width: 150}}
`;

function drafted() {
  const { gown } = draft({ name: 'plain.yaml', text: PLAIN });
  if (gown === undefined) throw new Error('the plain gown must draft');
  return gown;
}

function withPiece(gown: GownDraft, index: number, change: (piece: Piece) => Piece): GownDraft {
  return { ...gown, pieces: gown.pieces.map((piece, i) => (i === index ? change(piece) : piece)) };
}

function codes(change: (draft: GownDraft) => GownDraft): string[] {
  const { gown, drafts } = drafted();
  const spoiled = change(drafts.gown);
  return trueGown(gown, spoiled, measureGown(spoiled)).map(({ code }) => code);
}

/** The piece with one edge's curves put through a change. */
function edgeChanged(
  piece: Piece,
  edge: number,
  change: (curves: readonly Curve[]) => readonly Curve[],
): Piece {
  return {
    ...piece,
    edges: piece.edges.map((own, i) => (i === edge ? { ...own, curves: change(own.curves) } : own)),
  };
}

function longer(curves: readonly Curve[], by: number): Curve[] {
  const line = curves[0] as Line;
  const length = Math.hypot(line.to.x - line.from.x, line.to.y - line.from.y);
  const factor = 1 + by / length;
  const to = {
    x: line.from.x + (line.to.x - line.from.x) * factor,
    y: line.from.y + (line.to.y - line.from.y) * factor,
  };
  return [{ ...line, to }];
}

describe('truing finds what was spoiled by a known amount', () => {
  it('nothing on a true draft', () => {
    expect(codes((gown) => gown)).toEqual([]);
  });

  it.each([
    [0.05, []],
    [0.3, ['seams-differ']],
  ])('a seam %f mm longer on one side', (by, expected) => {
    const spoiled = codes((gown) =>
      withPiece(gown, 0, (piece) => edgeChanged(piece, 1, (c) => longer(c, by))),
    );
    expect(spoiled.filter((code) => code === 'seams-differ')).toEqual(expected);
  });

  it('a hem that breaks at a seam by half a degree', () => {
    const turn = (curves: readonly Curve[]): readonly Curve[] => {
      const [first, ...rest] = curves;
      const at = first!.kind === 'arc' ? undefined : first!;
      if (at === undefined || at.kind !== 'cubic') throw new Error('the hem here is no arc');
      const angle = (0.5 * Math.PI) / 180;
      const handle = { x: at.control1.x - at.from.x, y: at.control1.y - at.from.y };
      const control1 = {
        x: at.from.x + handle.x * Math.cos(angle) - handle.y * Math.sin(angle),
        y: at.from.y + handle.x * Math.sin(angle) + handle.y * Math.cos(angle),
      };
      return [{ ...at, control1 }, ...rest];
    };
    expect(codes((gown) => withPiece(gown, 0, (piece) => edgeChanged(piece, 2, turn)))).toContain(
      'hem-not-smooth',
    );
  });

  it('says the angle in degrees and the tops by name', () => {
    const { gown, drafts, measures } = drafted();
    const seams = measures.seams.map((seam) => ({ ...seam, hemAngle: Math.PI + Math.PI / 360 }));
    const [broken] = trueGown(gown, drafts.gown, { ...measures, seams });
    expect(broken!.message).toContain('the two angles add to 180.5° instead of 180°');
    const [missed] = trueGown(gown, drafts.gown, { ...measures, waist: { ...measures.waist, sewn: 730 } });
    expect(missed!.table).toEqual([
      ['gore', 'top'],
      ['front', '18 cm'],
      ['back', '18 cm'],
    ]);
  });

  it('a hem that meets a seam far from square is a warning, at 45° and not below', () => {
    const { gown, drafts, measures } = drafted();
    const at = (degrees: number) => {
      const seams = measures.seams.map((seam) => ({ ...seam, offSquare: (-degrees * Math.PI) / 180 }));
      return trueGown(gown, drafts.gown, { ...measures, seams }).map(({ code, message }) => [code, message]);
    };
    expect(at(45 - 0.1)).toEqual([]);
    expect(at(45 + 0.1)).toHaveLength(measures.seams.length);
    expect(at(45 + 0.1)[0]).toEqual([
      'hem-far-from-square',
      `The hem meets seam \`centre-front\` ${(45 + 0.1).toFixed(1)}° off square.`,
    ]);
  });

  it("a corner of the waist is let be at the bodice's point only", () => {
    const { gown, drafts, measures } = drafted();
    const seams = measures.seams.map((seam) => ({ ...seam, waistAngle: 3 }));
    const broken = (point: { pointedAt?: number }) =>
      trueGown(
        gown,
        { ...drafts.gown, gown: { ...drafts.gown.gown, ...point } },
        { ...measures, seams },
      ).filter(({ code }) => code === 'waist-not-smooth').length;
    expect(broken({})).toBe(seams.length);
    expect(broken({ pointedAt: 0 })).toBe(seams.length - 1);
  });

  it('tops that miss the waist seam by more than a specialist allows', () => {
    const { gown, drafts, measures } = drafted();
    const at = (sewn: number) =>
      trueGown(gown, drafts.gown, { ...measures, waist: { ...measures.waist, sewn } });
    expect(at(721.4).map(({ code }) => code)).toEqual([]);
    expect(at(721.6).map(({ code }) => code)).toEqual(['tops-miss-waist-seam']);
  });

  it('an outline that crosses itself', () => {
    const bow = (piece: Piece): Piece =>
      edgeChanged(piece, 1, (curves) => {
        const line = curves[0] as Line;
        const out = { x: line.from.x - 900, y: (line.from.y + line.to.y) / 2 };
        return [
          { kind: 'line', from: line.from, to: out },
          { kind: 'line', from: out, to: line.to },
        ];
      });
    expect(codes((gown) => withPiece(gown, 0, bow))).toContain('outline-crosses-itself');
  });
});
