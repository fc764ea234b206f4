import type { Block } from '../page/page-blocks.ts';
import type { PaperInput } from './paper-input.ts';

/** Sewn lengths of every seam by layer, with the distances of their notches. */
export function seamBlocks(input: PaperInput): Block[] {
  const { words, workroom } = input;
  const { jobSheet: text, number } = words;
  const groups = layersOfOneLength(workroom.skirt.layers);
  const names = workroom.skirt.stations.filter(
    ({ seams, station }) => seams > 0 && station.free === undefined,
  );
  if (names.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: text.seams },
    {
      kind: 'table',
      caption: text.seamsCaption,
      heads: [...text.seamHeads, ...groups.map((group) => words.list(group.names)), text.notches],
      align: ['start', 'end', ...groups.map(() => 'end' as const), 'start'],
      rows: names.map(({ name, side, seams }) => [
        words.closureRows.side(name, side),
        String(seams),
        ...groups.map((group) => {
          const length = group.seams.get(seamKey(name, side));
          return length === undefined ? '' : number(length);
        }),
        notchesAt(input, name),
      ]),
    },
  ];
}

/** Both sides of her may have a seam of one name. */
function seamKey(name: string, side: 'left' | 'right' | undefined): string {
  return side === undefined ? name : `${name} ${side}`;
}

interface LayersAlike {
  readonly names: readonly string[];
  readonly seams: ReadonlyMap<string, number>;
}

/** Layers whose seams are all of the same lengths share a column. */
function layersOfOneLength(layers: PaperInput['workroom']['skirt']['layers']): LayersAlike[] {
  const groups: { names: string[]; seams: Map<string, number> }[] = [];
  for (const layer of layers) {
    const seams = new Map(layer.seams.map((seam) => [seamKey(seam.name, seam.side), seam.length]));
    const alike = groups.find((group) => sameLengths(group.seams, seams));
    if (alike === undefined) groups.push({ names: [layer.layer.name], seams });
    else alike.names.push(layer.layer.name);
  }
  return groups;
}

function sameLengths(a: ReadonlyMap<string, number>, b: ReadonlyMap<string, number>): boolean {
  return (
    a.size === b.size &&
    [...a].every(([name, length]) => Math.abs((b.get(name) ?? Number.NaN) - length) < 0.05)
  );
}

/** Of the gown's outermost layer that has the seam. */
function notchesAt({ cutPieces, words, gown }: PaperInput, seam: string): string {
  const layers = gown.layers.map(({ name }) => name);
  const piece = cutPieces.findLast(
    (own) =>
      own.layers.some((layer) => layers.includes(layer)) &&
      gown.gores.some((gore) => gore.name === own.gore) &&
      own.notches.some((notch) => notch.edge === seam),
  );
  const distances =
    piece?.notches.filter((notch) => notch.edge === seam).map((notch) => notch.distance) ?? [];
  return [...new Set(distances)].map((distance) => words.number(distance)).join('  ');
}
