import { produce } from 'immer';
import { admit } from './admit';
import type { CommandDefinition } from './command';
import { findList } from './find-holder';
import type { Path } from './path';
import { pathText } from './path-text';

export interface InsertArguments {
  /** The list: ['walls', 0, 'path']. */
  readonly path: Path;
  /** Place that the value takes, 0 to the length of the list. */
  readonly index: number;
  readonly value: unknown;
  readonly label?: string;
}

/** Puts one entry into a list. */
export const insert: CommandDefinition<'insert', InsertArguments> = {
  name: 'insert',
  label: (_plan, args) => args.label ?? `add to ${pathText(args.path.slice(-1))}`,
  apply(plan, { path, index, value }) {
    const list = findList(plan, path);
    if (list === undefined) return { refused: 'there is no such list', path: pathText(path) };
    if (!Number.isInteger(index) || index < 0 || index > list.length) {
      return { refused: 'the list has no such place', path: pathText([...path, index]) };
    }
    return admit(
      plan,
      produce(plan, (draft) => {
        findList(draft, path)!.splice(index, 0, value);
      }),
    );
  },
};
