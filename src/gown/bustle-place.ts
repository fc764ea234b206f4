/** Where round the skirt a point of the bustle is: at a seam, or at a share of a gore's width, 0 … 1. */
export type BustlePlace =
  | { readonly seam: string; readonly gore?: undefined; readonly across?: undefined }
  | { readonly seam?: undefined; readonly gore: string; readonly across: number };

/** The place alone, of a point of which more is known. */
export function bustlePlace({ seam, gore, across }: BustlePlace): BustlePlace {
  return seam === undefined ? { gore, across } : { seam };
}
