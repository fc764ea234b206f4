import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import type { BoughtCloth } from '../../src/lay/plan/lay-facts.ts';
import { type DraftedGown, draft } from '../../src/pipeline.ts';
import { type Workroom, workroom } from '../../src/workroom/workroom.ts';

export interface Made {
  readonly gown: DraftedGown;
  readonly facts: Workroom;
  /** Of the whole run. */
  readonly findings: readonly Diagnostic[];
}

/** Drafts a spec and hands it to the workroom; throws where it cannot be drafted. */
export function made(text: string, bought: readonly BoughtCloth[] = []): Made {
  const { gown, diagnostics } = draft({ name: 'trial.yaml', text });
  if (gown === undefined) throw new Error(diagnostics.map((one) => one.message).join('; '));
  const { facts, findings } = workroom(gown, bought);
  return { gown, facts, findings };
}

export function example(name: string): string {
  return readFileSync(join(import.meta.dirname, '../../examples', `${name}.yaml`), 'utf8');
}

/** A plain invented skirt of three gores a half; `more` is put at its end, `layers` in place of its one layer. */
export function skirt({
  layers = '  - {name: shell, cloth: crepe, hem: turned}',
  more = '',
  bodice = '',
  train = '',
}: {
  readonly layers?: string;
  readonly more?: string;
  readonly bodice?: string;
  readonly train?: string;
} = {}): string {
  const used = [...new Set([...layers.matchAll(/cloth: ([a-z]+)/g)].map((match) => match[1]!))];
  return `format: 1
gown: Trial
units: cm
bodice:
  waist-seam: 72
  panels: {front: 12, side: 12, back: 12}
${bodice}
gores:
  - {name: front, top: 12, hem: 40}
  - {name: side, top: 12, hem: 40}
  - {name: back, top: 12, hem: 40}
lengths:
  measured: to-floor
  off-floor: 2.5
  hem-width-at: 100
  at: {centre-front: 104, centre-back: 106}
${train}
allowances: {seam: 1.5, waist: 1.5, hem: 1.5}
layers:
${layers}
cloths:
${used.map((name) => `  ${name}: {width: 140, selvedge: 1, weight: 100}`).join('\n')}
${more}
`;
}
