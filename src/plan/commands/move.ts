import { produce } from 'immer';
import { admit } from './admit';
import type { CommandDefinition } from './command';
import { findList } from './find-holder';
import type { Path } from './path';
import { pathText } from './path-text';

export interface MoveArguments {
  /** The list: ['walls', 0, 'path']. */
  readonly path: Path;
  readonly from: number;
  /** Place that the entry has afterwards. */
  readonly to: number;
  readonly label?: string;
}

/** Moves one entry of a list to another place of the same list. */
export const move: CommandDefinition<'move', MoveArguments> = {
  name: 'move',
  label: (_plan, args) => args.label ?? `reorder ${pathText(args.path.slice(-1))}`,
  apply(plan, { path, from, to }) {
    const list = findList(plan, path);
    if (list === undefined) return { refused: 'there is no such list', path: pathText(path) };
    const strange = [from, to].find((place) => !Number.isInteger(place) || place < 0 || place >= list.length);
    if (strange !== undefined) return { refused: 'the list has no such entry', path: pathText([...path, strange]) };
    if (from === to) return { plan };
    return admit(
      plan,
      produce(plan, (draft) => {
        const entries = findList(draft, path)!;
        entries.splice(to, 0, ...entries.splice(from, 1));
      }),
    );
  },
};
