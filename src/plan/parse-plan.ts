import { pathText } from './commands/path-text';
import { judge } from './judge';
import { locateJsonFault } from './locate-json-fault';
import { migrate } from './migrate';
import type { UncheckedRecord } from './migrations/migration';
import { type Plan, planFormat, plan as planSchema, planVersion } from './plan';
import { scanJsonText } from './scan-json-text';
import { tidyJsonValue } from './tidy-json-value';

/** Why a text gives no plan. */
export type Refusal =
  | 'empty'
  | 'too-large'
  | 'cut-short'
  | 'too-deep'
  | 'not-json'
  | 'not-a-plan'
  | 'newer'
  | 'invalid';

export type ParsedPlan =
  | { readonly plan: Plan }
  /** `path` names the field ('walls[0].path[1].columns'); `sentence` says it in plain words. The text itself is the caller's to keep. */
  | { readonly refused: Refusal; readonly path?: string; readonly sentence: string };

/** More than the largest plan that the schema accepts comes to. */
const mostCharacters = 100_000_000;
const mostCharactersToLocate = 10_000_000;
/** The schema's deepest field stands 8 deep; what lies far beyond it is no plan. */
const mostDepth = 64;

/**
 * Reads the text of a plan's file. Never throws and never half-loads: it gives a whole plan of the present version, or a
 * named reason.
 */
export function parsePlan(text: string): ParsedPlan {
  if (text.length > mostCharacters) {
    return { refused: 'too-large', sentence: 'This file is larger than any plan comes to.' };
  }
  if (text.trim() === '') return { refused: 'empty', sentence: 'This file is empty.' };
  const document = readJson(text.startsWith('\ufeff') ? text.slice(1) : text);
  return 'refused' in document ? document : readDocument(document.value);
}

function readJson(text: string): { readonly value: unknown } | Exclude<ParsedPlan, { plan: Plan }> {
  const { deepest, endsInside } = scanJsonText(text);
  if (deepest > mostDepth) return { refused: 'too-deep', sentence: 'This file is nested deeper than any plan is.' };
  try {
    return { value: JSON.parse(text) };
  } catch {
    if (endsInside) return { refused: 'cut-short', sentence: 'This file ends in the middle: a part of it is missing.' };
    return {
      refused: 'not-json',
      sentence: `This file is not JSON${placeOf(text)}.`,
    };
  }
}

/** ' from line 3, column 7 on'; empty for a text so long that nobody would look there. */
function placeOf(text: string): string {
  if (text.length > mostCharactersToLocate) return '';
  const before = text.slice(0, locateJsonFault(text)).split('\n');
  return ` from line ${before.length}, column ${before.at(-1)!.length + 1} on`;
}

function readDocument(value: unknown): ParsedPlan {
  const fault = tidyJsonValue(value);
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return notAPlan;
  const document = value as UncheckedRecord;
  if (document.format !== planFormat) return notAPlan;
  const { version } = document;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 0) {
    return invalid('version', 'a whole number belongs here');
  }
  if (version > planVersion) {
    const sentence = `This plan was written by a newer version of the program (format ${version}, this one reads up to ${planVersion}).`;
    return { refused: 'newer', path: 'version', sentence };
  }
  if (fault !== undefined) return invalid(pathText(fault.path), fault.reason);
  const judged = judge<Plan>(planSchema, migrate(document, version));
  return 'value' in judged ? { plan: judged.value } : invalid(judged.path, judged.reason, judged.faults - 1);
}

const notAPlan: ParsedPlan = { refused: 'not-a-plan', sentence: 'This is no plan of this program.' };

function invalid(path: string, reason: string, more = 0): ParsedPlan {
  const others = more === 0 ? '' : more === 1 ? ' One more place is invalid.' : ` ${more} more places are invalid.`;
  return { refused: 'invalid', path, sentence: `Invalid at ${path === '' ? 'the top' : path}: ${reason}.${others}` };
}
