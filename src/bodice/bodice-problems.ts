import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';
import { error, finding, listed, note, type Words } from '../diagnostics/finding.ts';
import { quoted } from '../diagnostics/safe-text.ts';
import type { BodiceFault, HalfPart, PanelWidth } from './bodice-fault.ts';

/**
 * A fault as it is told to the maker.
 * @param say a length in the units of her spec
 */
export function bodiceProblem(fault: BodiceFault, span: Span, say: (length: number) => string): Diagnostic {
  return finding(fault.code, 'error', span, said(fault, say));
}

function said(fault: BodiceFault, say: (length: number) => string): Words {
  switch (fault.code) {
    case 'no-panels':
      return {
        message: 'The bodice has no panels.',
        why: 'Her girths are shared out among them.',
        hint: 'Name them from the centre front round to the centre back, as the gores below them are named.',
      };
    case 'panel-twice':
      return {
        message: `Two panels are called ${quoted(fault.panel)}.`,
        why: 'A seam is named by the two panels that it joins.',
        hint: 'Give one of them another name.',
      };
    case 'fold-not-at-centre':
      return {
        message: `The panel ${quoted(fault.panel)} lies on the fold, and is at neither centre.`,
        why: 'A half that mirrors has its folds at the centre front and the centre back.',
        hint: 'Take `on-fold` out, or move the panel to the centre that it belongs to.',
      };
    case 'level-twice':
      return {
        message:
          fault.level === fault.other
            ? `The level ${quoted(fault.level)} stands here twice.`
            : `${quoted(fault.level)} and ${quoted(fault.other)} are measured at one height, ${heightOf(fault.above, say)}.`,
        why: 'One of the two girths would not be used.',
        hint: 'Give each level its own height, or take one out.',
      };
    case 'waist-missing':
      return {
        message: 'No girth is given at the waist.',
        why: 'Heights count from it, and the skirt is sewn there.',
        hint: 'Add `{at: waist, girth: …}`, without `above` or `below`.',
      };
    case 'nothing-above-waist':
      return {
        message: 'No girth is given above the waist.',
        why: 'Nothing says how wide the bodice is at its upper edge.',
        hint: 'Add the underbust or the bust with its height, `above`.',
      };
    case 'level-out-of-place':
      return {
        message: `${quoted(fault.level)} lies ${fault.wants} the ${fault.of} on any body, and here it does not.`,
        why: 'A height with the wrong sign turns the panels upside down there.',
        hint: 'Write `above:` or `below:` the waist, along the body.',
      };
    case 'front-exceeds-girth':
      return {
        message: `At the ${fault.level} the front is ${say(fault.front)} and the whole girth ${say(fault.girth)}.`,
        why: 'Nothing is left for the back.',
        hint: 'Measure `front` from side seam to side seam over the front alone.',
      };
    case 'front-without-side-seam':
      return {
        message: `At the ${fault.level} a front is given, and no \`side-seam\`.`,
        why: 'Nothing says which panels are in front.',
        hint: 'Add `side-seam:` with the seam at which front and back part.',
      };
    case 'unknown-level':
      return {
        message: `${quoted(fault.level)} is no level of this body.`,
        why: 'What stands here would apply nowhere.',
        hint: `It can be ${listed(fault.levels)}.`,
      };
    case 'unknown-bodice-station':
      return {
        message: `${quoted(fault.station)} is no station of this bodice.`,
        why: 'What stands here would apply nowhere.',
        hint: `It can be ${listed(fault.stations)}.`,
      };
    case 'edge-height-missing':
      return {
        message: `Nothing says how high the ${plain(fault.edge)} is at the ${plain(fault.station)}.`,
        why: 'Heights between are filled in from it.',
        hint: `Add ${quoted(`${fault.station}:`)} with its height above the waist.`,
      };
    case 'point-without-height':
      return {
        message: `The edge comes to a point at ${quoted(fault.station)}, where it has no height of its own.`,
        why: 'A point that is filled in from its neighbours is none.',
        hint: `Give its height at ${quoted(fault.station)}, or take the point out.`,
      };
    case 'laced-fold':
      return {
        message: `The bodice is laced at the ${plain(fault.station)}, where its panel lies on the fold.`,
        why: 'A fold has no edges to lace.',
        hint: 'Take `on-fold` out of the panel, or lace it elsewhere.',
      };
    case 'reduced-to-nothing':
      return {
        message: `At the ${fault.level} she is ${say(fault.body)} and laced in by ${say(fault.by)}.`,
        why: 'No bodice is left.',
        hint: 'Look at both; how far she can be laced is for her and, if tightly, for her doctor.',
      };
    case 'gap-takes-all':
      return {
        message: `At the ${fault.level} the lacing leaves ${say(fault.left)} for the ${plain(fault.part)}.`,
        why: 'The panels there have no width.',
        hint: 'Make the gap smaller, or look at the girth, the front and the reduction.',
      };
    case 'bust-points-too-far':
      return {
        message: `The bust points are ${say(fault.apart)} apart, and the sewn front is ${say(fault.front)} at the ${fault.level}.`,
        why: 'The seam over the bust point would lie behind the side seam.',
        hint: 'Measure from point to point over the body, and the front from side to side.',
      };
    case 'widths-do-not-add-up':
      return addUp(fault, say);
    case 'panel-without-width':
      return {
        message: `The panel ${quoted(fault.panel)} is ${say(fault.width)} wide at the ${fault.level}.`,
        why: 'A panel needs cloth between its seams at every level.',
        hint: 'Share the girth among fewer panels, or give this level `widths` of its own.',
      };
    case 'panel-widens-too-fast':
      return {
        message: `The panel ${quoted(fault.panel)} widens faster than a flat piece can.`,
        why: 'A seam that runs away from the grain more steeply than 80° meets no level squarely.',
        hint: 'Share the girth among more panels, or look at heights that lie close together.',
      };
    case 'edges-cross':
      return {
        message: `At ${quoted(fault.station)} the upper edge is ${heightOf(fault.upper, say)} and the lower edge ${heightOf(fault.lower, say)}.`,
        why: 'No bodice is left between them.',
        hint: 'Look at `upper-edge` and at `drop-below-waist` there.',
      };
    case 'no-girth-so-low':
      return {
        message: `At ${quoted(fault.station)} the lower edge is ${say(fault.below)} below the waist, and the lowest girth is the ${fault.lowest}, ${heightOf(-fault.at, say)}.`,
        why: 'Nothing says how wide she is at the edge, and a body widens there.',
        hint: 'Add a girth at least as low, commonly the high hip: `{at: high-hip, below: …, girth: …}`.',
      };
    case 'edge-does-not-settle':
      return {
        message: `The ${plain(fault.edge)} cannot be laid over these panels.`,
        why: 'Its heights and the widths beside it contradict each other.',
        hint: 'Look for a height or a girth that is far from its neighbours.',
      };
    case 'bones-do-not-fit':
      return {
        message: `The seam ${quoted(fault.seam)} is ${say(fault.length)} long, and its bone is to be ${say(fault.clear)} clear of each edge.`,
        why: 'No room is left for a bone.',
        hint: 'Make `clear` smaller, or leave this seam without a bone.',
      };
    case 'eyelets-do-not-fit':
      return {
        message: `The laced edge ${quoted(fault.seam)} is ${say(fault.length)} long, and its eyelets begin ${say(fault.end)} from each end.`,
        why: 'No room is left for two eyelets.',
        hint: 'Look at the heights of the edges there and at `from-edge`.',
      };
    case 'modesty-too-narrow':
      return {
        message: `The modesty panel is ${say(fault.width)} wide and the gap that it covers ${say(fault.gap)}.`,
        why: 'Skin would show at its sides.',
        hint: `Give it the gap and an overlap on both sides, commonly ${say(35)} each.`,
      };
  }
}

export const panelMissesTop = error(
  'panel-misses-top',
  (gore: string, key: string, top: string, panel: string) => ({
    message: `The gore ${quoted(gore)} has a ${quoted(key)} of ${top}, and its drafted panel is ${panel} there.`,
    why: 'Beyond 1.5 mm the seam lines of skirt and bodice do not meet at the waist.',
    hint: `Take ${quoted(key)} out: the gore takes its panel's edge.`,
  }),
);

export const goresOfEachSide = note('gores-of-each-side', (panels: readonly string[], below: string) => ({
  message: `The lower edge of the bodice differs between her two sides at ${listed(panels)}: the gores there are cut for each side, with the difference run out ${below} below the waist seam.`,
  why: 'Each gore meets the panel of its own side.',
  hint: 'Mark left and right on every piece as it is cut; nothing else is needed.',
}));

export const goresTakenIn = note(
  'fitting-reaches-gores',
  (words: 'in' | 'out', by: string, below: string) => ({
    message: `As it was pinned, the lower edge of the bodice is ${words === 'in' ? 'taken in' : 'let out'} by ${by} all round; the tops of the gores follow.`,
    why: 'Skirt and bodice meet at one seam.',
    hint: `The gores are ${words === 'in' ? 'taken in' : 'let out'} beside their seams, run out ${below} below; pin the skirt under \`seams\` where it should be otherwise.`,
  }),
);

function addUp(
  {
    level,
    part,
    wanted,
    rows,
  }: {
    readonly level: string;
    readonly part: HalfPart;
    readonly wanted: number;
    readonly rows: readonly PanelWidth[];
  },
  say: (length: number) => string,
): Words {
  const sum = rows.reduce((total, { width }) => total + width, 0);
  const miss = sum - wanted;
  return {
    message: `At the ${level} the panels of the ${plain(part)} make ${say(sum)} and the body wants ${say(wanted)}: ${say(Math.abs(miss))} too ${miss > 0 ? 'much' : 'little'}.`,
    why: 'Beyond 1.5 mm the bodice would not close, or would gape.',
    hint: 'Correct the widths in the table; a width by the rule changes when the spec says it.',
    table: [
      ['panel', 'width', ''],
      ...rows.map((row) => [row.panel, say(row.width), row.said ? 'given' : 'by the rule']),
      ['together', say(sum), ''],
      ['wanted', say(wanted), ''],
    ],
  };
}

/** `centre front`, `upper edge`. */
function plain(name: string): string {
  return name.replace('-', ' ');
}

function heightOf(above: number, say: (length: number) => string): string {
  if (above === 0) return 'at the waist';
  return `${say(Math.abs(above))} ${above > 0 ? 'above' : 'below'} the waist`;
}
