import { InvalidArgumentError } from 'commander';

/** Reads an option that takes names with commas between them, once or several times. */
export function listed(value: string, earlier: readonly string[] = []): string[] {
  const names = value
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');
  // An option that names nothing would silently do nothing.
  if (names.length === 0) throw new InvalidArgumentError('It names nothing.');
  return [...earlier, ...names];
}
