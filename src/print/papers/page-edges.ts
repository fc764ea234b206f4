import type { Gown } from '../../gown/gown.ts';

/** Whose page it is, and which state of the spec it was made from. */
export function pageEdges({ format, content, ...gown }: Gown): { headerLeft: string; footerLeft: string } {
  return { headerLeft: gownLine(gown), footerLeft: `format ${format} · ${content}` };
}

/** `Lantern · LAN-07`. */
export function gownLine({ name, client }: Pick<Gown, 'name' | 'client'>): string {
  return client === undefined ? name : `${name} · ${client}`;
}
