/** A place is asked about several times in a row. */
export function lastKept<T>(valueAt: (s: number) => T): (s: number) => T {
  let last: { readonly s: number; readonly value: T } | undefined;
  return (s) => {
    if (last?.s !== s) last = { s, value: valueAt(s) };
    return last.value;
  };
}
