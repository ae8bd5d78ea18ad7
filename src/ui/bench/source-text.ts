import type { Source } from '../../calc/chapter';

const kinds: Readonly<Record<Source['kind'], string>> = {
  source: 'Source',
  practice: 'Common practice, no source',
  sheet: 'From an equipment data sheet',
  given: 'Given by you',
};

/** A source as it is printed under a working. */
export function sourceText({ kind, text, fromMemory = false }: Source): string {
  const said = text === '' ? kinds[kind] : `${kinds[kind]}: ${text}`;
  return fromMemory ? `${said} (from memory)` : said;
}
