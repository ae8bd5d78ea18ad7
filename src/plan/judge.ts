import type { z } from 'zod';
import { pathText } from './commands/path-text';

type Issue = z.core.$ZodIssue;

/** What a schema makes of a value: the value in the schema's own order of keys, or the first fault with its place. */
export type Judgement<Value> =
  | { readonly value: Value }
  | { readonly path: string; readonly reason: string; readonly faults: number };

/** Reads `value` by `schema`; never throws. `root` is the path of the value in the document. */
export function judge<Value>(schema: z.ZodType<Value>, value: unknown, root: Issue['path'] = []): Judgement<Value> {
  const checked = schema.safeParse(value, { reportInput: true });
  if (checked.success) return { value: checked.data };
  const issue = checked.error.issues[0]!;
  const path = [...root, ...issue.path, ...(issue.code === 'unrecognized_keys' ? issue.keys.slice(0, 1) : [])];
  return {
    path: pathText(path.map((key) => (typeof key === 'number' ? key : String(key)))),
    reason: reasonOf(issue, unitOf(path.at(-1))),
    faults: checked.error.issues.length,
  };
}

function reasonOf(issue: Issue, unit: string): string {
  switch (issue.code) {
    case 'invalid_type':
      return `${kinds[issue.expected] ?? issue.expected} ${issue.input === undefined ? 'is missing' : 'belongs'} here`;
    case 'too_big':
      return `at most ${issue.maximum}${countedIn[issue.origin] ?? unit}`;
    case 'too_small':
      return `at least ${issue.minimum}${countedIn[issue.origin] ?? unit}`;
    case 'invalid_value':
      return issue.values.length === 1
        ? `only ${String(issue.values[0])} may stand here`
        : `one of ${issue.values.map(String).join(', ')} belongs here`;
    case 'invalid_union':
      return 'of no kind that this program knows';
    case 'unrecognized_keys':
      return 'this program knows no such field';
    default:
      return issue.message;
  }
}

const kinds: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'a record',
  null: 'nothing',
};

const countedIn: Readonly<Record<string, string>> = { string: ' characters', array: ' entries' };

const unitsBySuffix: readonly (readonly [RegExp, string])[] = [
  [/Mm$/, ' mm'],
  [/Deg$/, ' degrees'],
  [/KgPerM2$/, ' kg to the square metre'],
  [/Kg$/, ' kg'],
  [/M2$/, ' square metres'],
  [/Kpa$/, ' kPa'],
  [/Hz$/, ' Hz'],
  [/Nits$/, ' cd/m2'],
  [/Mbps$/, ' Mbit/s'],
  [/Gbps$/, ' Gbit/s'],
  [/Days$/, ' days'],
  [/Ma$/, ' mA'],
  [/[a-z]A$/, ' A'],
  [/[a-z]V$/, ' V'],
  [/[a-z]W$/, ' W'],
  [/[a-z]K$/, ' K'],
];

/** The unit that a field's name ends in, with a space before it; empty where it names none. */
function unitOf(key: PropertyKey | undefined): string {
  return unitsBySuffix.find(([suffix]) => suffix.test(String(key)))?.[1] ?? '';
}
