/** `lining`, `lining and shell`, `lining, shell and facing`. */
export function inWords(names: readonly string[]): string {
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;
}
