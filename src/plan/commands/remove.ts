import { produce } from 'immer';
import { admit } from './admit';
import type { CommandDefinition } from './command';
import { findList } from './find-holder';
import type { Path } from './path';
import { pathText } from './path-text';

export interface RemoveArguments {
  /** The list: ['walls', 0, 'path']. */
  readonly path: Path;
  readonly index: number;
  readonly label?: string;
}

/** Takes one entry out of a list. */
export const remove: CommandDefinition<'remove', RemoveArguments> = {
  name: 'remove',
  label: (_plan, args) => args.label ?? `remove from ${pathText(args.path.slice(-1))}`,
  apply(plan, { path, index }) {
    const list = findList(plan, path);
    if (list === undefined) return { refused: 'there is no such list', path: pathText(path) };
    if (!Number.isInteger(index) || index < 0 || index >= list.length) {
      return { refused: 'the list has no such entry', path: pathText([...path, index]) };
    }
    return admit(
      plan,
      produce(plan, (draft) => {
        findList(draft, path)!.splice(index, 1);
      }),
    );
  },
};
