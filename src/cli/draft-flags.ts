import type { LayEffort } from '../lay/plan/plan-lays.ts';
import type { PatternOptions } from '../publish/pattern-sheets.ts';

/** What `draft` is asked for. */
export interface DraftFlags {
  readonly out?: string;
  readonly paper?: string;
  readonly sheets?: 'all' | 'ends';
  readonly layersApart?: boolean;
  readonly gores?: readonly string[];
  readonly layer?: readonly string[];
  readonly sheet?: readonly string[];
  readonly since?: string;
  readonly toile?: boolean;
  readonly projector?: boolean;
  readonly audit?: boolean;
  readonly every?: string;
  readonly effort?: LayEffort;
  readonly replace?: boolean;
  readonly json?: boolean;
  /** Where pieces lay in an earlier version; no option of its own. */
  readonly places?: PatternOptions['places'];
}
