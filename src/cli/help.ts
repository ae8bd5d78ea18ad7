import { cautions } from '../calc/cautions';
import { alignColumns } from './align-columns';
import { type Command, exitCodes } from './command';
import { wrapText } from './wrap-text';

/** The command that lists all others, and itself. */
export function helpOn(others: readonly Command[]): Command {
  const help: Command = {
    name: 'help',
    usage: 'help',
    files: 0,
    options: {},
    summary: 'This text.',
    run(_given, terminal) {
      terminal.print(helpText([...others, help], terminal.columns));
      return exitCodes.ok;
    },
  };
  return help;
}

function helpText(commands: readonly Command[], width: number): string {
  return [
    ...wrapText('Voussoir plans curved LED stages: a plan file is checked, counted and searched for from here.', width),
    '',
    'npm run -s voussoir -- COMMAND',
    '',
    ...commands.flatMap((command) => [...commandLines(command, width), '']),
    'A file named - is standard input.',
    '',
    'Ends with',
    ...alignColumns(
      [
        [`  ${exitCodes.ok}`, 'where nothing stops the plan, or the answer is given'],
        [`  ${exitCodes.stopped}`, 'where a check stops the plan, or two plans that are compared differ'],
        [`  ${exitCodes.refused}`, 'where a file or a call cannot be read: reason and path on standard error'],
      ],
      ['l', 'l'],
    ),
    '',
    ...wrapText(cautions.general, width),
    '',
  ].join('\n');
}

function commandLines({ usage, summary, options }: Command, width: number): string[] {
  return [
    `  ${usage}`,
    ...wrapText(summary, width - 6).map((line) => `      ${line}`),
    ...Object.entries(options).flatMap(([option, what]) =>
      wrapText(`${option}: ${what}`, width - 6, '  ').map((line) => `      ${line}`),
    ),
  ];
}
