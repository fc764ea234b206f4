/** Text as it stands in markup: the five characters of XML that would be read as markup, named. */
export function markupText(text: string): string {
  return text.replace(/[&<>"']/g, (character) => ENTITIES[character]!);
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};
