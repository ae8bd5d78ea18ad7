import type { Command } from '../../plan/commands';
import { pathText } from '../../plan/commands/path-text';
import type { BenchPlace } from './history';
import { pageOfField } from './page-of-field';
import type { PageId } from './pages';

/** Where a command makes its change: the first field it sets, or the page on which it was given. */
export function placeOfCommand(command: Command, page: PageId): BenchPlace {
  if (command.name !== 'set-fields') return { page, field: null };
  const path = command.args.fields[0]?.path;
  if (!path) return { page, field: null };
  const field = pathText(path);
  return { page: pageOfField(field) ?? page, field };
}
