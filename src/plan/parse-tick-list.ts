import { pathText } from './commands/path-text';
import { judge } from './judge';
import { type JsonRefusal, readJsonText } from './read-json-text';
import { type TickList, tickList, tickListFormat, tickListVersion } from './tick-list';
import { tidyJsonValue } from './tidy-json-value';

/** Why a text gives no ticks. */
export type TickListRefusal = JsonRefusal | 'not-ticks' | 'newer' | 'invalid';

export type ParsedTickList =
  | { readonly list: TickList }
  /** `path` names the field: 'ticks[3].step'. */
  | { readonly refused: TickListRefusal; readonly path?: string; readonly sentence: string };

/** Reads a list of ticks. Never throws and never half-loads: a whole list, or a named reason. */
export function parseTickList(text: string): ParsedTickList {
  const read = readJsonText(text, 'list of ticks');
  if ('refused' in read) return read;
  const fault = tidyJsonValue(read.value);
  const { format, version } = (read.value ?? {}) as { readonly format?: unknown; readonly version?: unknown };
  if (format !== tickListFormat) return { refused: 'not-ticks', sentence: 'This is no list of ticks of this program.' };
  if (typeof version === 'number' && version > tickListVersion) {
    const sentence = `These ticks were written by a newer version of the program (format ${version}, this one reads up to ${tickListVersion}).`;
    return { refused: 'newer', path: 'version', sentence };
  }
  if (fault !== undefined) return invalid(pathText(fault.path), fault.reason);
  const judged = judge<TickList>(tickList, read.value);
  return 'value' in judged ? { list: judged.value } : invalid(judged.path, judged.reason);
}

function invalid(path: string, reason: string): ParsedTickList {
  return { refused: 'invalid', path, sentence: `Invalid at ${path === '' ? 'the top' : path}: ${reason}.` };
}
