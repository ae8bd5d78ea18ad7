import { comparePlans } from '../calc/compare/compare-plans';
import { followedPlan } from '../calc/compare/followed-plan';
import { createEvaluator } from '../calc/evaluate';
import type { Plan } from '../plan/plan';
import { type Command, exitCodes } from './command';
import { compareReport } from './compare-report';
import { readPlan } from './read-plan';

export const compare: Command = {
  name: 'compare',
  usage: 'compare OLD.json NEW.json [--json]',
  files: 2,
  options: {
    '--json':
      'one object: changes, each with kind, what, name, before and after; these are lists of words and of figures with their unit, lengths in mm, or null',
  },
  summary:
    'What the crew reads otherwise in the new plan than in the old one: head figures, checks, and by their names panels, ports, trunks, processors, nodes, circuits and the bill. Ends with 1 where something changed.',
  run({ file, secondFile = '', options }, terminal) {
    const before = readPlan(file, terminal);
    const after = readPlan(secondFile, terminal);
    if (before === null || after === null) return exitCodes.refused;
    const { evaluate } = createEvaluator();
    // Two states of one document follow a panel to another name by its place in it.
    const isSame = before.id === after.id;
    const stateOf = (plan: Plan) => (isSame ? followedPlan(plan, evaluate(plan)) : evaluate(plan));
    const changes = comparePlans(stateOf(before), stateOf(after));
    terminal.print(
      options.has('--json')
        ? `${JSON.stringify({ changes }, null, 2)}\n`
        : compareReport({ before, after }, changes, terminal.columns),
    );
    return changes.length === 0 ? exitCodes.ok : exitCodes.changed;
  },
};
