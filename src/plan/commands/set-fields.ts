import { produce } from 'immer';
import { admit } from './admit';
import type { CommandDefinition } from './command';
import { findHolder } from './find-holder';
import type { Path } from './path';
import { pathText } from './path-text';

export type { Path };

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
    let missing: Path | undefined;
    const next = produce(plan, (draft) => {
      for (const { path, value } of args.fields) {
        const found = findHolder(draft, path);
        if (found === undefined) {
          missing = path;
          return;
        }
        found.holder[found.key] = value;
      }
    });
    if (missing !== undefined) return { refused: 'there is no such field', path: pathText(missing) };
    return admit(plan, next);
  },
};
