import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { sortDiagnostics } from '../diagnostics/place.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { Units } from '../diagnostics/units.ts';
import type { Cloth } from '../gown/cloth.ts';
import type { Gown } from '../gown/gown.ts';
import { inOtherCloths } from '../gown/other-cloths.ts';
import type { LayPlan, LayWay } from '../lay/plan/lay-plan.ts';
import type { LayEffort } from '../lay/plan/plan-lays.ts';
import { type DraftedGown, draftWhole } from '../pipeline.ts';
import { layReport } from '../report/lay-report.ts';
import { ENGLISH_LAY } from '../words/english-lay.ts';
import { ENGLISH_BUYING } from '../words/english-tables.ts';
import { layRemarks } from '../words/lay-remarks.ts';
import { askedLength } from './asked-length.ts';
import { type ExitStatus, statusOf } from './exit-status.ts';
import { findingsJson } from './findings-json.ts';
import { jsonText } from './json-text.ts';
import { knowAll } from './know-all.ts';
import { buyingTable, handlingText, layTable, tooWideText } from './lay-table.ts';
import type { Machine } from './machine.ts';
import { planGownLays } from './plan-gown-lays.ts';
import { hasErrors, printFindings } from './print-findings.ts';
import { readGown } from './read-gown.ts';

export interface LayFlags {
  readonly layer?: readonly string[];
  readonly width?: readonly string[];
  readonly oneWay?: boolean;
  readonly fold?: Cloth['fold'];
  readonly effort?: LayEffort;
  readonly json?: boolean;
}

/** One set of lays: the gown's own cloths, or what they would be. */
interface Variant {
  /** What is supposed, in words; empty for the gown's own cloths. */
  readonly supposed: string;
  readonly gown: Gown;
  readonly lays: readonly LayPlan[];
}

/** `lay`: the lay of each cloth and what to buy, also of cloths that are not bought yet. */
export async function layGown(file: string, flags: LayFlags, machine: Machine): Promise<ExitStatus> {
  const { gown, diagnostics: found } = readGown(file, machine);
  let diagnostics = found;
  const variants: Variant[] = [];
  if (gown !== undefined && !hasErrors(found)) {
    knowAll('--layer', flags.layer, new Set(gown.layers.map(({ name }) => name)));
    for (const { supposed, change } of suppositions(gown.gown, flags)) {
      const drafted = change === undefined ? gown : draftWhole(withCloths(gown, flags.layer, change)).gown;
      if (drafted === undefined) continue;
      const layers = drafted.layers.filter(({ name }) => flags.layer?.includes(name) ?? true);
      const planned = await planGownLays(
        { asked: drafted.asked, gown: drafted.gown, cut: drafted.cut, layers },
        flags.effort ?? 'quick',
        machine,
      );
      diagnostics = withNew(diagnostics, planned.diagnostics);
      variants.push({ supposed, gown: drafted.gown, lays: planned.lays });
    }
  }
  if (flags.json) machine.out(jsonText(json(variants, diagnostics)));
  else {
    printFindings(diagnostics, machine);
    machine.out(variants.map(text).join('\n'));
  }
  return statusOf(diagnostics);
}

/** What is supposed of the cloths, in words and as a change of them; nothing for those of the spec. */
function suppositions(
  { units }: Pick<Gown, 'units'>,
  flags: LayFlags,
): { supposed: string; change?: Partial<Cloth> }[] {
  const widths = flags.width?.map((width) => askedLength('--width', width, units)) ?? [undefined];
  return widths.map((width) => {
    const wide = width === undefined ? undefined : tapeText(width, units);
    const supposed = ENGLISH_BUYING.supposed(wide, flags.oneWay ?? false, flags.fold);
    if (supposed === '') return { supposed };
    const change = {
      ...(width !== undefined && { width }),
      ...(flags.oneWay && { oneWay: true }),
      ...(flags.fold !== undefined && { fold: flags.fold }),
    };
    return { supposed, change };
  });
}

/** The gown as it was asked for, with other cloths for these layers, or for all. */
function withCloths(
  { asked, layers }: DraftedGown,
  chosen: readonly string[] | undefined,
  change: Partial<Cloth>,
): Gown {
  const own = layers.filter(({ name }) => chosen?.includes(name) ?? true).map(({ cloth }) => cloth.name);
  return inOtherCloths(asked, (cloth) => (own.includes(cloth.name) ? { ...cloth, ...change } : cloth));
}

function withNew(known: readonly Diagnostic[], found: readonly Diagnostic[]): readonly Diagnostic[] {
  const isNew = ({ code, message }: Diagnostic) =>
    !known.some((one) => one.code === code && one.message === message);
  return sortDiagnostics([...known, ...found.filter(isNew)]);
}

function wayJson(way: LayWay, units: Units): object {
  const { folds, fold, taken, length, used, buy } = way;
  const why = way.tooWide && tooWideText(way, (mm) => tapeText(mm, units));
  return { name: ENGLISH_LAY.way(folds), fold, why, taken, length, used, buy, handling: handlingText(way) };
}

function text({ supposed, gown, lays }: Variant): string {
  const head = supposed === '' ? '' : ENGLISH_BUYING.ifCloth(supposed);
  return `${head}${lays.map((lay) => layTable(lay, gown)).join('\n')}\n${buyingTable(lays, gown)}`;
}

function json(variants: readonly Variant[], diagnostics: readonly Diagnostic[]): object {
  const lays = variants.flatMap(({ supposed, gown, lays: own }) =>
    layReport(gown, own).map((lay, i) => ({
      ...(supposed === '' ? {} : { supposed }),
      ...lay,
      ways: (own[i]?.ways ?? []).map((way) => wayJson(way, gown.units)),
      remarks: own[i] === undefined ? [] : layRemarks(own[i], gown.units),
    })),
  );
  return { lays, findings: findingsJson(diagnostics) };
}
