import { createEvaluator } from '../calc/evaluate';
import { checkRecord } from './check-record';
import { checkReport } from './check-report';
import { type Command, exitCodes } from './command';
import { displayOptionsOf } from './display-options-of';
import { readPlan } from './read-plan';

export const check: Command = {
  name: 'check',
  usage: 'check PLAN.json [--json]',
  files: 1,
  options: {
    '--json':
      'one object: headline, checks, surfaces, zones, runs, circuits, legs; lengths in mm, panels of runs and circuits by name, entry first',
  },
  summary: 'The headline figures of a plan and its checks, worst first. Ends with 1 where a check stops the plan.',
  run({ file, options }, terminal) {
    const plan = readPlan(file, terminal);
    if (plan === null) return exitCodes.refused;
    const evaluation = createEvaluator().evaluate(plan);
    const display = displayOptionsOf(plan);
    terminal.print(
      options.has('--json')
        ? `${JSON.stringify(checkRecord(evaluation, display), null, 2)}\n`
        : checkReport(plan, evaluation, display, terminal.columns),
    );
    const isStopped = evaluation.checks.some((each) => each.severity === 'stop');
    return isStopped ? exitCodes.stopped : exitCodes.ok;
  },
};
