/** Unicode of the WinAnsi codes 0x80 to 0x9f (ISO 32000-1, annex D); 0 where there is none. Elsewhere they agree. */
const HIGH = [
  0x20ac, 0, 0x201a, 0x0192, 0x201e, 0x2026, 0x2020, 0x2021, 0x02c6, 0x2030, 0x0160, 0x2039, 0x0152, 0,
  0x017d, 0, 0, 0x2018, 0x2019, 0x201c, 0x201d, 0x2022, 0x2013, 0x2014, 0x02dc, 0x2122, 0x0161, 0x203a,
  0x0153, 0, 0x017e, 0x0178,
];

const CODE_OF_HIGH = new Map(
  HIGH.flatMap((unicode, index) => (unicode === 0 ? [] : [[unicode, 0x80 + index]])),
);

/** The WinAnsi code of a character, or undefined where the standard PDF fonts cannot show it. */
export function winAnsiCode(codePoint: number): number | undefined {
  const plain = (codePoint >= 0x20 && codePoint <= 0x7e) || (codePoint >= 0xa0 && codePoint <= 0xff);
  return plain ? codePoint : CODE_OF_HIGH.get(codePoint);
}

/** Whether the standard PDF fonts can show all of a text, so that no font need be embedded. */
export function isWinAnsi(text: string): boolean {
  return WIN_ANSI.test(text);
}

const WIN_ANSI =
  /^[\x20-\x7e\xa0-\xff\u0152\u0153\u0160\u0161\u0178\u017d\u017e\u0192\u02c6\u02dc\u2013\u2014\u2018-\u201a\u201c-\u201e\u2020-\u2022\u2026\u2030\u2039\u203a\u20ac\u2122]*$/;
