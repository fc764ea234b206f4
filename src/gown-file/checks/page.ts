import type { Span } from '../../diagnostics/diagnostic.ts';
import type { ValueKind } from '../../diagnostics/value-text.ts';
import { lengthInUnits } from '../../diagnostics/value-text.ts';
import { type Form, formBelow, kindOfForm, WHOLE } from '../shape/form.ts';
import type { FilePath, SketchedSpec } from '../spec.ts';
import { stationsOf } from '../stations.ts';
import { childOf, isScalar, placeOfWritten, type Written, type WrittenMap } from '../written.ts';

/** A spec under checking: its values, anything of which may be missing, and where each stands. */
export class Page {
  readonly sketch: SketchedSpec;
  private readonly root: Written;
  /** What the first and the last station are called: an overskirt begins at its outer edge. */
  readonly front: string;
  readonly back: string;

  constructor(sketch: SketchedSpec, root: Written, front = 'centre-front', back = 'centre-back') {
    this.front = front;
    this.back = back;
    this.sketch = sketch;
    this.root = root;
  }

  get mirrored(): boolean {
    return this.sketch.symmetry !== 'none';
  }

  /** Names of the gores in order; nothing where one is missing or faulty, as what depends on them cannot be judged. */
  get goreNames(): readonly string[] | undefined {
    const names = (this.sketch.gores ?? []).map((gore) => gore.name);
    return names.length > 0 && names.every((name) => name !== undefined) ? names : undefined;
  }

  /** Stations from the centre front round; nothing where the gores cannot be told. */
  get stations(): readonly string[] | undefined {
    const names = this.goreNames && stationsOf(this.goreNames, this.mirrored ? 'mirrored' : 'none');
    const called: Readonly<Record<string, string>> = { 'centre-front': this.front, 'centre-back': this.back };
    return names?.map((name) => called[name] ?? name);
  }

  /** Stations with a fold of the cloth in place of a seam. */
  get folds(): readonly string[] {
    const gores = this.sketch.gores ?? [];
    if (!this.mirrored) return [];
    const front = gores[0]?.onFold === true ? [this.front] : [];
    return gores.length > 1 && gores.at(-1)?.onFold === true ? [...front, this.back] : front;
  }

  /** Where a value stands, or the nearest section round it. */
  at(...path: FilePath): Span {
    return placeOfWritten(this.nearest(path));
  }

  /** Where the key of a value stands. */
  keyAt(...path: FilePath): Span {
    const written = this.nearest(path);
    return written.key ?? placeOfWritten(written);
  }

  has(...path: FilePath): boolean {
    return this.sectionAt(...path) !== undefined;
  }

  /** Whether a section stands here, be it empty. */
  hasSection(...path: FilePath): boolean {
    return this.sectionAt(...path)?.kind === 'map';
  }

  sectionAt(...path: FilePath): Written | undefined {
    return path.reduce<Written | undefined>(childOf, this.root);
  }

  hasList(...path: FilePath): boolean {
    return this.sectionAt(...path)?.kind === 'list';
  }

  /** A flag as it is written, before anything usual stands in for it. */
  flagAt(...path: FilePath): boolean | undefined {
    const written = this.sectionAt(...path);
    return written?.kind === 'flag' ? written.text === 'true' : undefined;
  }

  keysOf(...path: FilePath): readonly string[] {
    const written = this.sectionAt(...path);
    return written?.kind === 'map' ? [...(written as WrittenMap).entries.keys()] : [];
  }

  /** Where the first value of a kind stands. */
  placeOfKind(
    kind: ValueKind,
    written: Written = this.root,
    form: Form | undefined = WHOLE,
  ): Span | undefined {
    if (isScalar(written)) return kindOfForm(form) === kind ? placeOfWritten(written) : undefined;
    const steps = written.kind === 'list' ? written.items.keys() : written.entries.keys();
    for (const step of steps) {
      const place = this.placeOfKind(kind, childOf(written, step), formBelow(form, step));
      if (place !== undefined) return place;
    }
    return undefined;
  }

  /** A length in the file's units. */
  say(millimetres: number): string {
    return lengthInUnits(millimetres, this.sketch.units);
  }

  private nearest(path: FilePath): Written {
    let written = this.root;
    for (const step of path) {
      const child = childOf(written, step);
      if (child === undefined) break;
      written = child;
    }
    return written;
  }
}
