/** Parts whose pieces have the name of the gore that they belong to, and are told apart from it by their own word. */
const NAMED_AS_GORES = ['bodice', 'facing'];

/** A piece as it is called: `front`, `bodice front`, `facing front`. */
export function pieceCalled(gore: string, part: string | undefined): string {
  const isOfGore = part !== undefined && NAMED_AS_GORES.includes(part) && !gore.endsWith(part);
  return isOfGore ? `${part} ${gore}` : gore;
}
