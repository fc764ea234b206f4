import type { Curve, Point } from '../geometry/curve.ts';

/** How a line is drawn: hairlines in black, told apart by dashes and width only. */
export interface LineStyle {
  /** mm. */
  readonly width: number;
  /** mm on, mm off, …; solid when absent. */
  readonly dash?: readonly number[];
  /** How far into the dashes the line begins, mm. */
  readonly dashPhase?: number;
  /** 0 black to 1 white; lines on paper stay black, screens may use greys for areas in lay plans. */
  readonly grey?: number;
}

/** Runs of curves drawn in one style. */
export interface PathMark {
  readonly kind: 'path';
  readonly runs: readonly (readonly Curve[])[];
  readonly closed: boolean;
  readonly line: LineStyle;
  /** Grey fill, 0 black to 1 white; only for arrowheads and small marks. */
  readonly fill?: number;
  /** SVG class and data attributes; the PDF ignores them. */
  readonly class?: string;
  readonly data?: Readonly<Record<string, string>>;
}

export interface TextMark {
  readonly kind: 'text';
  readonly text: string;
  /** Baseline point. */
  readonly at: Point;
  /** Height of the font's em, mm. */
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Radians, clockwise as drawn. */
  readonly angle?: number;
  readonly bold?: boolean;
  readonly class?: string;
}

/** Marks that belong together; a `<g>` in SVG. */
export interface GroupMark {
  readonly kind: 'group';
  readonly marks: readonly Mark[];
  /** PDF layers (optional content) that a viewer can switch; with several names it shows while any of them is on. */
  readonly switchedBy?: readonly string[];
  /** Those layers are off when the file is opened. */
  readonly offAtFirst?: boolean;
  readonly class?: string;
  readonly data?: Readonly<Record<string, string>>;
}

/**
 * Another drawing, moved by `offset`, seen through `clip` (in this drawing's mm). The PDF writes each distinct
 * drawing once and uses it many times: that is how sheets show parts of a piece with their dashes meeting.
 */
export interface UseMark {
  readonly kind: 'use';
  readonly drawing: Drawing;
  readonly offset: Point;
  readonly scale?: { readonly x: number; readonly y: number };
  readonly clip?: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
}

export type Mark = PathMark | TextMark | GroupMark | UseMark;

/** A page or a figure in mm: no file format, so PDF and SVG come from the same thing and cannot disagree. */
export interface Drawing {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
  /** Title for SVG and for PDF bookmarks. */
  readonly title?: string;
}
