/**
 * A text as the content or an attribute of XML 1.0; signs that XML may not hold are blanks (production 2, Char; section
 * 2.4, character data).
 */
export function escapeXml(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, ' ')
    .replace(/[&<>"']/g, (sign) => entities[sign]!);
}

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&apos;',
};
