import { createEvaluator } from '../calc/evaluate';
import { scheduleToDataCsv } from '../files/schedule-to-data-csv';
import { outputsOf } from '../sheets/outputs-of';
import { schedulePixelMap } from '../sheets/schedule-pixel-map';
import { type Command, exitCodes } from './command';
import { complainOfStops } from './complain-of-stops';
import { pixelmapReport } from './pixelmap-report';
import { readPlan } from './read-plan';

export const pixelmap: Command = {
  name: 'pixelmap',
  usage: 'pixelmap PLAN.json [--csv]',
  files: 1,
  options: { '--csv': 'every panel, one a line, for a program to read' },
  summary:
    'Where every panel finds its pixels on the canvas of its render node. Without --csv: the nodes, their canvases and how many panels each feeds.',
  run({ file, options }, terminal) {
    const plan = readPlan(file, terminal);
    if (plan === null) return exitCodes.refused;
    const evaluation = createEvaluator().evaluate(plan);
    const inputs = outputsOf(evaluation);
    terminal.print(
      options.has('--csv')
        ? scheduleToDataCsv(schedulePixelMap(inputs, inputs.fed))
        : pixelmapReport(plan, inputs, terminal.columns),
    );
    complainOfStops(evaluation.checks, terminal);
    return exitCodes.ok;
  },
};
