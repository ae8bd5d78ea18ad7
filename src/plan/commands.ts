import type { CommandDefinition, Outcome } from './commands/command';
import { insert } from './commands/insert';
import { move } from './commands/move';
import { remove } from './commands/remove';
import { setFields } from './commands/set-fields';
import type { Plan } from './plan';

/** Every command by its name: menus, fixes, levers and tests share these definitions. */
export const commands = {
  'set-fields': setFields,
  insert,
  remove,
  move,
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
