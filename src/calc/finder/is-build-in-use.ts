import { sameValue } from '../../plan/same-value';
import type { Wall } from '../../plan/wall';
import type { Build } from './build';

/** Whether a build stands in the plan as it is: joint by joint and row by row, whatever else was done to its wall. */
export function isBuildInUse({ command }: Pick<Build, 'command'>, walls: readonly Wall[]): boolean {
  if (command.name !== 'use-build') return false;
  const { id, path, bands } = command.args.wall;
  const stands = walls.find((wall) => wall.id === id);
  return (
    stands !== undefined &&
    sameValue(columnsOf(stands.path), columnsOf(path)) &&
    sameValue(rowsOf(stands.bands), rowsOf(bands))
  );
}

/** Without the names that only the file knows. */
const columnsOf = (path: Wall['path']) => path.map(({ id: _id, ...segment }) => segment);
const rowsOf = (bands: Wall['bands']) => bands.map(({ id: _id, ...band }) => band);
