import { expect, test } from 'vitest';
import { type Command, exitCodes } from '../../src/cli/command';
import { commands } from '../../src/cli/commands';
import { helpOn } from '../../src/cli/help';
import { givenTerminal } from './given-terminal';

const given = { file: '', options: new Set<string>() };

test('helpOn names every command with what it does and its options, and itself', () => {
  const weigh: Command = {
    name: 'weigh',
    usage: 'weigh PLAN.json [--heavy]',
    files: 1,
    options: { '--heavy': 'the heaviest column only' },
    summary: 'What a plan weighs.',
    run: () => exitCodes.ok,
  };
  const terminal = givenTerminal();
  expect(helpOn([weigh]).run(given, terminal)).toBe(0);
  for (const words of [weigh.usage, weigh.summary, '--heavy: the heaviest', '\n  help\n', 'standard error']) {
    expect(terminal.output()).toContain(words);
  }
});

test('the command line has the commands that were agreed', () => {
  expect(commands.map((command) => command.name)).toEqual([
    'check',
    'compare',
    'find',
    'materials',
    'schedules',
    'pictures',
    'pixelmap',
    'mesh',
    'drawings',
    'sheets',
    'labels',
    'schema',
    'help',
  ]);
});

test('help fits eighty columns and carries the caution', () => {
  const terminal = givenTerminal();
  helpOn(commands).run(given, terminal);
  for (const line of terminal.output().split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  expect(terminal.output().replace(/\s+/g, ' ')).toContain('a structural engineer decide');
});
