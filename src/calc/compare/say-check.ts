import type { Check } from '../chapter';
import type { Said } from './change';

/** What a check says after how bad it is, its figures kept apart for the edge to write out. */
export function sayCheck(check: Check): Said {
  return [`${check.severity}: `, ...check.sentence.split(/(\{\w+\})/).map((part) => figureOf(check, part))];
}

/** The figure that a token stands for; other words, and a token that names nothing, as they stand. */
function figureOf({ measured, limit, unit, values }: Check, part: string): Said[number] {
  if (part === '{measured}') return measured === null ? 'not known' : { value: measured, unit };
  if (part === '{limit}') return limit === null ? 'not stated' : { value: limit, unit };
  const name = part.slice(1, -1);
  return part.startsWith('{') && values !== undefined && Object.hasOwn(values, name) ? values[name]! : part;
}
