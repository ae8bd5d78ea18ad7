import type { Command } from '../../plan/commands';
import type { Path } from '../../plan/commands/path';
import { pathText } from '../../plan/commands/path-text';
import type { BenchPlace } from './history';
import { pageOfField } from './page-of-field';
import type { PageId } from './pages';

/** Path that a command works on: the first field it sets, or the list it changes; null where it names none. */
function pathOf({ args }: Command): Path | null {
  if ('fields' in args) return args.fields[0]?.path ?? null;
  return 'path' in args ? args.path : null;
}

/** Where a command makes its change, or else the page on which it was given. */
export function placeOfCommand(command: Command, page: PageId): BenchPlace {
  const path = pathOf(command);
  if (!path) return { page, field: null };
  const field = pathText(path);
  return { page: pageOfField(field) ?? page, field };
}
