import { type Dimension, measures } from './measures';

/** The unit at the start of a text (empty where none is) and what stands behind it, or why it cannot stand there. */
export type ReadSpelling = { readonly spelling: string; readonly rest: string } | { readonly refused: string };

/**
 * Reads the longest spelling of a unit that measures `dimension`. Case counts only where it must ('M px').
 * A unit that measures something else is named in the refusal.
 */
export function readSpelling(text: string, dimension: Dimension): ReadSpelling {
  const rest = text.trimStart();
  const own = longestAt(rest, dimension);
  if (own !== undefined) return { spelling: own, rest: rest.slice(own.length).trimStart() };
  if (rest === '' || /^[\d.]/.test(rest)) return { spelling: '', rest };
  const { name, example } = measures[dimension];
  for (const other of Object.keys(measures) as Dimension[]) {
    const spelling = longestAt(rest, other);
    if (spelling === undefined) continue;
    return { refused: `${spelling} is ${measures[other].name}; ${name} belongs here, such as ${example}.` };
  }
  return { refused: `'${rest}' is no unit of ${name.replace(/^an? /, '')}; write ${example}.` };
}

/** The longest spelling of the dimension with which `text` begins, up to the end of a word. */
function longestAt(text: string, dimension: Dimension): string | undefined {
  let longest: string | undefined;
  for (const spelling of Object.keys(measures[dimension].sizes)) {
    const isThere =
      text.startsWith(spelling) ||
      (text.length >= spelling.length && sameButCase(text.slice(0, spelling.length), spelling));
    if (isThere && isEndOfWord(text, spelling) && spelling.length > (longest?.length ?? 0)) longest = spelling;
  }
  return longest;
}

function sameButCase(typed: string, spelling: string): boolean {
  return typed.toLowerCase() === spelling.toLowerCase();
}

/** Whether the word ends behind `spelling`. A sign ends at once; a number may follow feet and hours ('6ft2', '1h30'). */
function isEndOfWord(text: string, spelling: string): boolean {
  const next = text.slice(spelling.length);
  const last = spelling.at(-1)!;
  if (/\d/.test(last)) return !/^[\p{L}\d/]/u.test(next);
  if (!/\p{L}/u.test(last)) return true;
  if (/^[23](?!\d)/.test(next)) return spelling === 'ft';
  return !/^[\p{L}/²³]/u.test(next);
}
