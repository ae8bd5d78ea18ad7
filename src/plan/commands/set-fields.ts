import { produce } from 'immer';
import { plan as planSchema } from '../plan';
import type { CommandDefinition } from './command';
import { pathText } from './path-text';

/** Keys from the plan's root: ['walls', 0, 'path', 2, 'columns']. */
export type Path = readonly (string | number)[];

export interface SetFieldsArguments {
  readonly fields: readonly { readonly path: Path; readonly value: unknown }[];
  /** What the history calls it; the last key of the first path where it is left out. */
  readonly label?: string;
}

/** Sets one or several fields at once; all of them or none. */
export const setFields: CommandDefinition<'set-fields', SetFieldsArguments> = {
  name: 'set-fields',
  label: (_plan, args) => args.label ?? String(args.fields[0]?.path.at(-1) ?? 'nothing'),
  apply(plan, args) {
    let missing: string | undefined;
    const next = produce(plan, (draft) => {
      for (const { path, value } of args.fields) {
        let holder: unknown = draft;
        for (const key of path.slice(0, -1)) {
          holder =
            typeof holder === 'object' && holder !== null && Object.hasOwn(holder, key)
              ? (holder as Record<string, unknown>)[key]
              : undefined;
        }
        const last = path.at(-1);
        if (typeof holder !== 'object' || holder === null || last === undefined || !Object.hasOwn(holder, last)) {
          missing = pathText(path);
          return;
        }
        (holder as Record<string | number, unknown>)[last] = value;
      }
    });
    if (missing !== undefined) return { refused: 'there is no such field', path: missing };
    const checked = planSchema.safeParse(next);
    if (checked.success) return { plan: next };
    const issue = checked.error.issues[0];
    return { refused: issue?.message ?? 'not a valid value', path: pathText((issue?.path ?? []) as Path) };
  },
};
