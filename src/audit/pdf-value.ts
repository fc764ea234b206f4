/** Values of a PDF file (ISO 32000-1, 7.3) as read: names and references as objects, strings as bytes in a text. */
export type PdfValue =
  | number
  | boolean
  | null
  | PdfName
  | PdfString
  | PdfReference
  | PdfDictionary
  | PdfStream
  | readonly PdfValue[];

export interface PdfName {
  readonly name: string;
}

/** One character a byte. */
export interface PdfString {
  readonly bytes: string;
}

export interface PdfReference {
  readonly object: number;
}

export interface PdfDictionary {
  readonly entries: ReadonlyMap<string, PdfValue>;
}

export interface PdfStream {
  readonly dictionary: PdfDictionary;
  /** As it stands in the file, filters not undone. */
  readonly raw: Uint8Array;
}

export function isName(value: PdfValue | undefined): value is PdfName {
  return isObject(value) && 'name' in value;
}

export function isString(value: PdfValue | undefined): value is PdfString {
  return isObject(value) && 'bytes' in value;
}

export function isReference(value: PdfValue | undefined): value is PdfReference {
  return isObject(value) && 'object' in value;
}

export function isDictionary(value: PdfValue | undefined): value is PdfDictionary {
  return isObject(value) && 'entries' in value && !Array.isArray(value);
}

export function isStream(value: PdfValue | undefined): value is PdfStream {
  return isObject(value) && 'raw' in value;
}

export function isArray(value: PdfValue | undefined): value is readonly PdfValue[] {
  return Array.isArray(value);
}

function isObject(value: PdfValue | undefined): value is Exclude<PdfValue, number | boolean | null> {
  return typeof value === 'object' && value !== null;
}
