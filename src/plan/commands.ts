import { addCeiling } from './commands/add-ceiling';
import { addItem } from './commands/add-item';
import { addWall } from './commands/add-wall';
import { clearHandChange } from './commands/clear-hand-change';
import type { CommandDefinition, Outcome } from './commands/command';
import { duplicateItem } from './commands/duplicate-item';
import { insert } from './commands/insert';
import { issueRevision } from './commands/issue-revision';
import { keepAlternative } from './commands/keep-alternative';
import { mirrorWall } from './commands/mirror-wall';
import { move } from './commands/move';
import { putStep } from './commands/put-step';
import { putTicks } from './commands/put-ticks';
import { putWay } from './commands/put-way';
import { releaseNames } from './commands/release-names';
import { remove } from './commands/remove';
import { removeItem } from './commands/remove-item';
import { removeSurface } from './commands/remove-surface';
import { restoreRevision } from './commands/restore-revision';
import { setExistingWiring } from './commands/set-existing-wiring';
import { setFields } from './commands/set-fields';
import { setMode } from './commands/set-mode';
import { setStock } from './commands/set-stock';
import { takeItems } from './commands/take-items';
import { useAlternative } from './commands/use-alternative';
import { useBuild } from './commands/use-build';
import type { Plan } from './plan';

/** Every command by its name: menus, fixes, levers and tests share these definitions. */
export const commands = {
  'add-ceiling': addCeiling,
  'add-item': addItem,
  'add-wall': addWall,
  'clear-hand-change': clearHandChange,
  'duplicate-item': duplicateItem,
  insert,
  'issue-revision': issueRevision,
  'keep-alternative': keepAlternative,
  'mirror-wall': mirrorWall,
  move,
  'put-step': putStep,
  'put-ticks': putTicks,
  'put-way': putWay,
  'release-names': releaseNames,
  remove,
  'remove-item': removeItem,
  'remove-surface': removeSurface,
  'restore-revision': restoreRevision,
  'set-existing-wiring': setExistingWiring,
  'set-fields': setFields,
  'set-mode': setMode,
  'set-stock': setStock,
  'take-items': takeItems,
  'use-alternative': useAlternative,
  'use-build': useBuild,
} as const;

export type CommandName = keyof typeof commands;
type ArgumentsOf<D> = D extends CommandDefinition<string, infer A> ? A : never;

/** A command with its arguments, as plain data: what a fix carries and what history replays. */
export type Command = {
  [Name in CommandName]: { readonly name: Name; readonly args: ArgumentsOf<(typeof commands)[Name]> };
}[CommandName];

type AnyDefinition = CommandDefinition<string, unknown>;

export function applyCommand(plan: Plan, command: Command): Outcome {
  return (commands[command.name] as unknown as AnyDefinition).apply(plan, command.args);
}

export function labelCommand(plan: Plan, command: Command): string {
  return (commands[command.name] as unknown as AnyDefinition).label(plan, command.args);
}
