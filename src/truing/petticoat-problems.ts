import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';

export function tighterThanPetticoat(
  span: Span,
  { down, skirt, needed }: { readonly down: string; readonly skirt: string; readonly needed: string },
  rows: readonly (readonly string[])[],
): Diagnostic {
  return {
    code: 'tighter-than-petticoat',
    level: 'warning',
    span,
    message: `${down} below the waist the skirt is ${skirt} round and the petticoat with its ease ${needed}`,
    why: 'A skirt that is tighter than what it goes over rides up, and its hem rises with it.',
    hint: 'Give the gores more width there, or leave their widths out so that they take the girths themselves.',
    table: [['below the waist', 'petticoat with ease', 'skirt', 'to spare'], ...rows],
  };
}

export function puckers(
  span: Span,
  found: {
    readonly gore: string;
    readonly down: string;
    readonly share: number;
    readonly most: number;
    readonly satin: boolean;
  },
): Diagnostic {
  const percent = (share: number): string => `${(Math.abs(share) * 100).toFixed(1)} %`;
  const isLong = found.share > 0;
  const rule = found.satin ? 'satin can be eased by 2 %' : 'cloth can be eased by about 5 %';
  return {
    code: 'gore-puckers',
    level: 'warning',
    span,
    message: `gore ${found.gore} is ${percent(found.share)} ${isLong ? 'longer' : 'shorter'} than the body between its seams, ${found.down} below the waist`,
    why: `Flat cloth follows a round body only so far: ${rule} (common practice), and beyond that ${isLong ? 'it puckers in the middle' : 'its seams pucker'}.`,
    hint: 'Share the girth among more gores, put a dart there, or soften the change from one girth to the next.',
  };
}
