import { pathText } from './commands/path-text';
import { judge } from './judge';
import { migrate } from './migrate';
import type { UncheckedRecord } from './migrations/migration';
import { type Plan, planFormat, plan as planSchema, planVersion } from './plan';
import { type JsonRefusal, readJsonText } from './read-json-text';
import { tidyJsonValue } from './tidy-json-value';

/** Why a text gives no plan. */
export type Refusal = JsonRefusal | 'not-a-plan' | 'newer' | 'invalid';

export type ParsedPlan =
  | { readonly plan: Plan }
  /** `path` names the field ('walls[0].path[1].columns'); `sentence` says it in plain words. The text itself is the caller's to keep. */
  | { readonly refused: Refusal; readonly path?: string; readonly sentence: string };

/**
 * Reads the text of a plan's file. Never throws and never half-loads: it gives a whole plan of the present version, or a
 * named reason.
 */
export function parsePlan(text: string): ParsedPlan {
  const document = readJsonText(text, 'plan');
  return 'refused' in document ? document : readDocument(document.value);
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
