import { type ExitCode, exitCodes } from './command';
import { commands } from './commands';
import { readArguments } from './read-arguments';
import type { Terminal } from './terminal';

/** Runs what stood after the program's name; without a word it gives help. */
export function runCommandLine(words: readonly string[], terminal: Terminal): ExitCode | Promise<ExitCode> {
  const [name = 'help', ...rest] = words;
  const asked = name === '--help' || name === '-h' ? 'help' : name;
  const command = commands.find((each) => each.name === asked);
  if (command === undefined) return refuse(terminal, `there is no command ${name}`, 'help');
  const given = readArguments(command, rest);
  return 'refused' in given ? refuse(terminal, given.refused, command.usage) : command.run(given, terminal);
}

function refuse(terminal: Terminal, reason: string, usage: string): ExitCode {
  terminal.complain(`voussoir: ${reason}\nTry: npm run -s voussoir -- ${usage}\n`);
  return exitCodes.refused;
}
