import { createEvaluator } from '../calc/evaluate';
import { scheduleToCsv } from '../files/schedule-to-csv';
import { scheduleMaterials } from '../sheets/schedule-materials';
import { type Command, exitCodes } from './command';
import { complainOfStops } from './complain-of-stops';
import { displayOptionsOf } from './display-options-of';
import { materialsReport } from './materials-report';
import { readPlan } from './read-plan';

export const materials: Command = {
  name: 'materials',
  usage: 'materials PLAN.json [--csv]',
  files: 1,
  options: { '--csv': 'as a file for a spreadsheet, with every column' },
  summary: 'The bill: every countable thing that the plan needs, its spares, what is owned and what is to be got.',
  run({ file, options }, terminal) {
    const plan = readPlan(file, terminal);
    if (plan === null) return exitCodes.refused;
    const { materials: bill, checks } = createEvaluator().evaluate(plan);
    terminal.print(
      options.has('--csv')
        ? scheduleToCsv(scheduleMaterials(bill.results), plan.currency)
        : materialsReport(plan, bill.results, displayOptionsOf(plan), terminal.columns),
    );
    complainOfStops(checks, terminal);
    return exitCodes.ok;
  },
};
