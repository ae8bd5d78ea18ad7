/**
 * Fields of one line of a table in text, without the space round them. A field in quotation marks may hold the separator and,
 * doubled, quotation marks (RFC 4180), but no line end. Null where a quotation mark is opened and not closed.
 */
export function splitFields(line: string, separator: string): string[] | null {
  const fields: string[] = [];
  let at = 0;
  for (;;) {
    const field = quotedField(line, at) ?? { text: '', end: at };
    if (field.end < 0) return null;
    const found = line.indexOf(separator, field.end);
    const end = found < 0 ? line.length : found;
    fields.push((field.text + line.slice(field.end, end)).trim());
    if (found < 0) return fields;
    at = found + 1;
  }
}

/** The quoted part that a field begins with and where it ends, -1 where it does not; null where the field is not quoted. */
function quotedField(line: string, start: number): { text: string; end: number } | null {
  let at = start;
  while (line[at] === ' ') at++;
  if (line[at] !== '"') return null;
  let text = '';
  for (;;) {
    const close = line.indexOf('"', at + 1);
    if (close < 0) return { text, end: -1 };
    text += line.slice(at + 1, close);
    at = close + 1;
    if (line[at] !== '"') return { text, end: at };
    text += '"';
  }
}
