import type { Gown } from '../../gown/gown.ts';

/** Whose page it is, which state of the spec it was made from, and what must be known of the page, in words. */
export function pageEdges(
  { format, content, ...gown }: Gown,
  mark?: string,
): { headerLeft: string; footerLeft: string } {
  const foot = `format ${format} · ${content}`;
  return { headerLeft: gownLine(gown), footerLeft: mark === undefined ? foot : `${foot} · ${mark}` };
}

/** `Lantern · LAN-07`. */
export function gownLine({ name, client }: Pick<Gown, 'name' | 'client'>): string {
  return client === undefined ? name : `${name} · ${client}`;
}
