import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/gore-problems.ts';
import { WAIST_AGREES } from '../../geometry/tolerances.ts';
import { nearest } from '../nearest.ts';
import type { Page } from './page.ts';

/** One gore's sewn top and its bodice panel, whole even on the fold, mm. */
interface Meeting {
  readonly gore: string;
  readonly index: number;
  readonly top: number;
  readonly panel?: number;
  /** How often it is in the gown: once on a fold or all the way round, else twice. */
  readonly copies: number;
}

/** Each top against its panel, and all of them against the waist seam. */
export function checkTops(page: Page): Diagnostic[] {
  return [...checkPanels(page), ...checkMeetings(page)];
}

function checkPanels(page: Page): Diagnostic[] {
  const names = page.goreNames;
  if (names === undefined) return [];
  return page
    .keysOf('bodice', 'panels')
    .filter((panel) => !names.includes(panel))
    .map((panel) =>
      problems.panelOfNoGore(page.keyAt('bodice', 'panels', panel), panel, names, nearest(panel, names)),
    );
}

function checkMeetings(page: Page): Diagnostic[] {
  const gores = page.sketch.gores ?? [];
  const faults: Diagnostic[] = [];
  const meetings: Meeting[] = [];
  for (const [index, gore] of gores.entries()) {
    const meeting = meetingOf(page, index);
    if (meeting !== undefined) meetings.push(meeting);
    else if (gore.name !== undefined && !topWasTried(page, index) && !sharesWaist(page))
      faults.push(
        problems.noTop(page.at('gores', index), gore.name, gore.onFold === true ? 'half-top' : 'top'),
      );
  }
  return [...faults, ...checkAgainstPanels(page, meetings), ...checkSums(page, meetings)];
}

/** Its top is its panel's where a bodice is drafted, or its part of her waist where the skirt has a waist of its own. */
function sharesWaist(page: Page): boolean {
  if (page.hasSection('bodice', 'draft')) return true;
  const isKnown =
    page.has('bodice', 'waist-seam') || page.sketch.body?.girths?.some(({ at }) => at === 'waist') === true;
  return page.has('waist') && isKnown;
}

function checkAgainstPanels(page: Page, meetings: readonly Meeting[]): Diagnostic[] {
  const gores = page.sketch.gores ?? [];
  const apart = meetings.filter(({ top, panel }) => panel !== undefined && differ(top, panel));
  return apart.map(({ gore, index, top, panel }, i) => {
    const span = page.at('gores', index, gores[index]?.onFold === true ? 'half-top' : 'top');
    return problems.topMissesPanel(
      span,
      gore,
      page.say(top),
      page.say(panel!),
      apartBy(page, top, panel!),
      page.say(WAIST_AGREES),
      i === 0 ? tableOf(page, meetings) : [],
    );
  });
}

function checkSums(page: Page, meetings: readonly Meeting[]): Diagnostic[] {
  const waist = page.waistSeam;
  if (waist === undefined || meetings.length === 0 || meetings.length < (page.sketch.gores ?? []).length)
    return [];
  const sum = (width: (meeting: Meeting) => number) =>
    meetings.reduce((all, m) => all + width(m) * m.copies, 0);
  const [tops, panels] = [sum((m) => m.top), sum((m) => m.panel ?? m.top)];
  // Tops that miss panels which themselves make the waist seam have been spoken of one by one.
  if (differ(tops, waist) && !differ(panels, waist)) return [];
  const [what, all] = differ(tops, waist)
    ? (['The tops of the gores', tops] as const)
    : (['The panels of the bodice', panels] as const);
  if (!differ(all, waist)) return [];
  const span = page.at('bodice', 'waist-seam');
  return [
    problems.topsMissWaist(
      span,
      what,
      page.say(all),
      page.say(waist),
      apartBy(page, all, waist),
      tableOf(page, meetings),
    ),
  ];
}

function apartBy(page: Page, width: number, other: number): string {
  return `${page.say(Math.abs(width - other))} too ${width > other ? 'wide' : 'narrow'}`;
}

function meetingOf(page: Page, index: number): Meeting | undefined {
  const gore = page.sketch.gores![index]!;
  if (gore.name === undefined || (gore.onFold === undefined && page.has('gores', index, 'on-fold')))
    return undefined;
  const onFold = gore.onFold === true;
  const panel = page.sketch.bodice?.panels?.[gore.name];
  const given = onFold ? (gore.halfTop === undefined ? undefined : gore.halfTop * 2) : gore.top;
  if (given === undefined && topWasTried(page, index)) return undefined;
  const top = given ?? panel;
  if (top === undefined) return undefined;
  const copies = onFold || !page.mirrored ? 1 : 2;
  return { gore: gore.name, index, top, copies, ...(panel !== undefined && { panel }) };
}

/** A top that is written but faulty has been spoken of; the panel must not stand in for it. */
function topWasTried(page: Page, index: number): boolean {
  const gore = page.sketch.gores![index]!;
  const tried = (['top', 'half-top'] as const).some((key) => page.has('gores', index, key));
  if (gore.onFold === undefined && page.has('gores', index, 'on-fold')) return true;
  const panel = gore.name !== undefined && page.has('bodice', 'panels', gore.name);
  return tried || (panel && page.sketch.bodice?.panels?.[gore.name!] === undefined);
}

/** Rounded to a nanometre, so that a difference of exactly the tolerance passes. */
function differ(a: number, b: number): boolean {
  return Math.round(Math.abs(a - b) * 1e6) > WAIST_AGREES * 1e6;
}

function tableOf(page: Page, meetings: readonly Meeting[]): string[][] {
  const rows = meetings.map(({ gore, top, panel, copies }) => [
    copies === 1 && page.mirrored ? `${gore} (whole, on the fold)` : gore,
    copies === 1 ? '' : '2 ×',
    page.say(top),
    panel === undefined ? '–' : page.say(panel),
    panel === undefined ? '–' : page.say(top - panel),
  ]);
  const all = (width: (meeting: Meeting) => number) =>
    meetings.reduce((sum, m) => sum + width(m) * m.copies, 0);
  const tops = all((m) => m.top);
  const panels = meetings.every((m) => m.panel !== undefined) ? all((m) => m.panel!) : undefined;
  const last = [
    'all round',
    '',
    page.say(tops),
    panels === undefined ? '–' : page.say(panels),
    panels === undefined ? '–' : page.say(tops - panels),
  ];
  return [['gore', '', 'top', 'panel', 'difference'], ...rows, last];
}
