import { type Comparison, compare } from '../../src/compare/compare.ts';
import { comparePieces } from '../../src/compare/compare-pieces.ts';
import type { PieceChange } from '../../src/compare/piece-change.ts';
import { type DraftedGown, draft } from '../../src/pipeline.ts';
import { compareGowns } from '../../src/publish/comparison.ts';
import { plainGown, type Tree } from '../outside/plain-gown.ts';

export { compare };

/** Two seamed gores and a fold, a plain cone skirt: every consequence of a change is known in closed form. */
export function cone(fields: Tree = {}): string {
  return plainGown({
    units: 'mm',
    bodice: { 'waist-seam': 720 },
    gores: [
      { name: 'front', 'on-fold': true, 'half-top': 80, 'half-flare': '8deg' },
      { name: 'side', top: 150, flare: '18deg' },
      { name: 'back', top: 130, flare: '16deg' },
    ],
    lengths: { measured: 'finished', at: { 'centre-front': 1000, 'centre-back': 1000 } },
    ...fields,
  });
}

export function drafted(text: string, name = 'gown.yaml'): DraftedGown {
  return draftedWithSpec(text, name).gown;
}

/** Many tests hold their change against one and the same gown. */
const known = new Map<string, ReturnType<typeof freshlyDrafted>>();

export function draftedWithSpec(text: string, name = 'gown.yaml') {
  const key = `${name}\n${text}`;
  const found = known.get(key) ?? freshlyDrafted(text, name);
  known.set(key, found);
  return found;
}

function freshlyDrafted(text: string, name: string) {
  const { spec, gown, diagnostics } = draft({ name, text });
  const errors = diagnostics.filter(({ level }) => level === 'error');
  if (spec === undefined || gown === undefined || errors.length > 0)
    throw new Error(`the spec was refused:\n${errors.map((d) => `${d.code}: ${d.message}`).join('\n')}`);
  return { spec, gown };
}

export function compared(old: string, now: string): Comparison {
  const named = (name: string, text: string) => ({ name, ...draftedWithSpec(text, name), diagnostics: [] });
  return compareGowns(named('old.yaml', old), named('new.yaml', now));
}

/** What becomes of the pieces alone: nothing is laid on sheets. */
export function piecesCompared(old: string, now: string): Pick<Comparison, 'pieces'> {
  const [before, after] = [old, now].map((text) => {
    const { spec, gown } = draftedWithSpec(text);
    const layers = gown.layers.map(({ name, cloth }) => ({ name, cloth: cloth.name }));
    return { spec, pieces: gown.cut.pieces, layers };
  });
  return { pieces: comparePieces(before!, after!) };
}

export function changeOf({ pieces }: Pick<Comparison, 'pieces'>, gore: string, layer = 'shell'): PieceChange {
  const found = pieces.changes.find((change) => change.gore === gore && change.layer === layer);
  if (found === undefined) throw new Error(`no piece ${gore} of ${layer}`);
  return found;
}
