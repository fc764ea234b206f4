/** Reads an option that takes names with commas between them, once or several times. */
export function listed(value: string, earlier: readonly string[] = []): string[] {
  const names = value.split(',').map((name) => name.trim());
  return [...earlier, ...names.filter((name) => name !== '')];
}
