/**
 * The word most likely meant: the fewest letters to change, add, drop or swap, never more than a third of the word.
 * Nothing where none is near.
 */
export function nearest(word: string, words: readonly string[]): string | undefined {
  if (word.length > LONGEST_WORD) return undefined;
  const wanted = fold(word);
  let best: { readonly word: string; readonly distance: number } | undefined;
  for (const candidate of words) {
    const most = Math.max(1, Math.floor(Math.max(word.length, candidate.length) / 3));
    // Every letter more or fewer is one step at least.
    if (Math.abs(word.length - candidate.length) > most) continue;
    const distance = editDistance(wanted, fold(candidate));
    if (distance <= most && distance < (best?.distance ?? Infinity)) best = { word: candidate, distance };
  }
  return best?.word;
}

/** Longer words are no slip of the finger, and the work grows with the square of the length. */
const LONGEST_WORD = 64;

const fold = (word: string) => word.toLowerCase().replaceAll('_', '-').replaceAll(' ', '-');

/** Optimal string alignment: a swap of neighbours counts once. */
function editDistance(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(rows[i - 1]![j]! + 1, row[j - 1]! + 1, rows[i - 1]![j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, rows[i - 2]![j - 2]! + 1);
      row.push(least);
    }
    rows.push(row);
  }
  return rows[a.length]![b.length]!;
}
