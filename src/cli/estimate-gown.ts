import { readSpec } from '../gown-file/read-spec.ts';
import type { Spec } from '../gown-file/spec.ts';
import { withMeasures } from '../gown-file/with-measures.ts';
import { draftSpec } from '../pipeline.ts';
import { chosenTemplate } from './chosen-template.ts';
import { checkRate, type EstimateFlags, supposedMeasures } from './estimate-flags.ts';
import { estimateOf } from './estimate-of.ts';
import { estimateText } from './estimate-text.ts';
import { ExitStatus } from './exit-status.ts';
import { jsonText } from './json-text.ts';
import type { Machine } from './machine.ts';
import { templates } from './package-files.ts';
import { hasErrors, printFindings } from './print-findings.ts';

/** `estimate`: cloth, paper, hours and a price for a first talk, from a template and a size. */
export async function estimateGown(flags: EstimateFlags, machine: Machine): Promise<ExitStatus> {
  checkRate(flags);
  const template = chosenTemplate(templates(), flags.from);
  const { spec: own } = readSpec({ name: `${template.name}.yaml`, text: template.text });
  if (own === undefined) throw new Error(`the template ${template.name} cannot be read`);
  const measures = supposedMeasures(flags, own);
  const supposed = withoutRecord(withMeasures(own, measures));
  const drafting = draftSpec(supposed);
  if (drafting.gown === undefined || hasErrors(drafting.diagnostics)) {
    printFindings(drafting.diagnostics, machine);
    return ExitStatus.specWrong;
  }
  const estimate = await estimateOf(drafting.gown, flags, machine);
  if (flags.json) machine.out(jsonText({ template: template.name, ...estimate, measures }));
  else machine.out(estimateText(template.name, estimate, { flags, measures, gown: drafting.gown.gown }));
  return ExitStatus.done;
}

/** A template's own prices, hours and dates are somebody's, not this client's. */
function withoutRecord(spec: Spec): Spec {
  const { labour: _labour, dates: _dates, notions: _notions, cut: _cut, fittings: _fittings, ...rest } = spec;
  return rest;
}
