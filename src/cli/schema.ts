import { planJsonSchema } from '../plan/plan-json-schema';
import { type Command, exitCodes } from './command';

export const schema: Command = {
  name: 'schema',
  usage: 'schema',
  files: 0,
  options: {},
  summary: 'The JSON Schema of a plan file.',
  run(_given, terminal) {
    terminal.print(`${JSON.stringify(planJsonSchema(), null, 2)}\n`);
    return exitCodes.ok;
  },
};
