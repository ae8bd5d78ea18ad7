import { createEvaluator } from '../calc/evaluate';
import { drawingFiles } from '../files/drawing-files';
import { stageParts } from '../sheets/stage-parts';
import { formatQuantity } from '../units/format-quantity';
import { type Command, exitCodes } from './command';
import { complainOfStops } from './complain-of-stops';
import { displayOptionsOf } from './display-options-of';
import { readPlan } from './read-plan';
import { writeFile } from './write-file';

export const drawings: Command = {
  name: 'drawings',
  usage: 'drawings PLAN.json --format dxf|svg --out DIR',
  files: 1,
  options: {
    '--format dxf|svg': 'dxf: millimetres at full size, y up, one layer for each kind of line; svg: at 1:50',
    '--out DIR': 'folder to write into; it is made where there is none',
  },
  summary:
    'The stage from above, and every surface laid flat as seen from both sides, for other programs. Ends with 1 where the plan has no panels.',
  run({ file, format = 'dxf', out = '.' }, terminal) {
    const plan = readPlan(file, terminal);
    if (plan === null) return exitCodes.refused;
    const evaluation = createEvaluator().evaluate(plan);
    if (evaluation.surfaces.total === 0) {
      terminal.complain('voussoir: this plan has no panels, so there is nothing to draw; see check\n');
      return exitCodes.stopped;
    }
    const display = displayOptionsOf(plan);
    const made = drawingFiles(
      stageParts(plan, evaluation),
      (value, unit) => formatQuantity(value, unit, display),
      format,
    );
    for (const drawing of made) if (!writeFile(out, drawing, terminal)) return exitCodes.refused;
    complainOfStops(evaluation.checks, terminal);
    return exitCodes.ok;
  },
};
