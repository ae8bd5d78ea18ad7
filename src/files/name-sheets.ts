/** Longest name that a spreadsheet takes for a sheet, in characters. */
const longest = 31;

/** Names for the sheets of a workbook: titles without the signs that no sheet may have, cut, and told apart whatever the case. */
export function nameSheets(titles: readonly string[]): string[] {
  const taken = new Set<string>();
  return titles.map((title) => {
    const plain = title
      .replace(/[[\]/\\:*?]+/g, ' ')
      .replace(/\s+/g, ' ')
      .replace(/^['\s]+|['\s]+$/g, '');
    const base = plain === '' ? 'Sheet' : plain;
    let name = base.slice(0, longest).trimEnd();
    for (let number = 2; taken.has(name.toLowerCase()); number++) {
      name = `${base.slice(0, longest - ` ${number}`.length).trimEnd()} ${number}`;
    }
    taken.add(name.toLowerCase());
    return name;
  });
}
