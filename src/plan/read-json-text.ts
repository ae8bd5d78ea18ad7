import { locateJsonFault } from './locate-json-fault';
import { scanJsonText } from './scan-json-text';

/** Why a text gives no value. */
export type JsonRefusal = 'empty' | 'too-large' | 'cut-short' | 'too-deep' | 'not-json';

export type ReadJson = { readonly value: unknown } | { readonly refused: JsonRefusal; readonly sentence: string };

/** More than the largest plan that the schema accepts comes to. */
const mostCharacters = 100_000_000;
const mostCharactersToLocate = 10_000_000;
/** The deepest field of a plan stands 8 deep; what lies far beyond it is none. */
const mostDepth = 64;

/** The value that the text of a file holds, or a named reason; never throws. `what` the file should be: 'plan'. */
export function readJsonText(text: string, what: string): ReadJson {
  if (text.length > mostCharacters) {
    return { refused: 'too-large', sentence: `This file is larger than any ${what} comes to.` };
  }
  if (text.trim() === '') return { refused: 'empty', sentence: 'This file is empty.' };
  return readValue(text.startsWith('\ufeff') ? text.slice(1) : text, what);
}

function readValue(text: string, what: string): ReadJson {
  const { deepest, endsInside } = scanJsonText(text);
  if (deepest > mostDepth) return { refused: 'too-deep', sentence: `This file is nested deeper than any ${what} is.` };
  try {
    return { value: JSON.parse(text) };
  } catch {
    if (endsInside) return { refused: 'cut-short', sentence: 'This file ends in the middle: a part of it is missing.' };
    return { refused: 'not-json', sentence: `This file is not JSON${placeOf(text)}.` };
  }
}

/** ' from line 3, column 7 on'; empty for a text so long that nobody would look there. */
function placeOf(text: string): string {
  if (text.length > mostCharactersToLocate) return '';
  const before = text.slice(0, locateJsonFault(text)).split('\n');
  return ` from line ${before.length}, column ${before.at(-1)!.length + 1} on`;
}
