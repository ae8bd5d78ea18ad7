import { createEvaluator } from '../calc/evaluate';
import { planWorkbook } from '../files/plan-workbook';
import { scheduleToCsv } from '../files/schedule-to-csv';
import { listSchedules } from '../sheets/list-schedules';
import { type Command, exitCodes } from './command';
import { complainOfStops } from './complain-of-stops';
import { readPlan } from './read-plan';
import { writeFile } from './write-file';

export const schedules: Command = {
  name: 'schedules',
  usage: 'schedules PLAN.json --out DIR',
  files: 1,
  options: { '--out DIR': 'folder to write into; it is made where there is none' },
  summary:
    'Every table that a crew works from, in one spreadsheet file with a sheet each and as a CSV file each: bill, zones, ports, nodes, links, sync, addresses, circuits, legs, masses, worst failures, panels, pixel map.',
  async run({ file, out = '.' }, terminal) {
    const plan = readPlan(file, terminal);
    if (plan === null) return exitCodes.refused;
    const evaluation = createEvaluator().evaluate(plan);
    const tables = listSchedules(plan, evaluation).map(({ name, schedule }) => ({
      name: `${name}.csv`,
      bytes: new TextEncoder().encode(scheduleToCsv(schedule, plan.currency)),
    }));
    for (const made of [await planWorkbook(plan, evaluation), ...tables]) {
      if (!writeFile(out, made, terminal)) return exitCodes.refused;
    }
    complainOfStops(evaluation.checks, terminal);
    return exitCodes.ok;
  },
};
