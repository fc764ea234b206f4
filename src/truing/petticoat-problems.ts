import { warning } from '../diagnostics/finding.ts';
import { quoted } from '../diagnostics/safe-text.ts';

export const tighterThanPetticoat = warning(
  'tighter-than-petticoat',
  (
    { down, skirt, needed }: { readonly down: string; readonly skirt: string; readonly needed: string },
    rows: readonly (readonly string[])[],
  ) => ({
    message: `At ${down} below the waist the skirt is ${skirt} round and the petticoat with its ease ${needed}.`,
    why: 'A skirt that is tighter than what it goes over rides up, and its hem rises with it.',
    hint: 'Give the gores more width there, or leave their widths out so that they take the girths themselves.',
    table: [['below the waist', 'petticoat with ease', 'skirt', 'to spare'], ...rows],
  }),
);

interface Puckering {
  readonly gore: string;
  readonly down: string;
  /** How much longer or shorter than the body, and what cloth can be eased by. */
  readonly by: string;
  readonly most: string;
  readonly longer: boolean;
  readonly satin: boolean;
}

export const puckers = warning('gore-puckers', ({ gore, down, by, most, longer, satin }: Puckering) => ({
  message: `Gore ${quoted(gore)} is ${by} ${longer ? 'longer' : 'shorter'} than the body between its seams, ${down} below the waist.`,
  why: `Flat cloth follows a round body only so far: ${satin ? 'satin' : 'cloth'} can be eased by about ${most} (common practice), and beyond that ${longer ? 'it puckers in the middle' : 'its seams pucker'}.`,
  hint: 'Share the girth among more gores, put a dart there, or soften the change from one girth to the next.',
}));

export const tighterThanBody = warning(
  'tighter-than-body',
  (level: string, skirt: string, girth: string) => ({
    message: `At the ${level} the skirt is ${skirt} round and she is ${girth}.`,
    why: 'It would not go over her, or ride up until it did.',
    hint: 'Give the gores more width there, or write `fitted-to:` with that level, so that they follow her girths.',
  }),
);
