import { createEvaluator } from '../calc/evaluate';
import { labelsPdf } from '../files/labels-pdf';
import { scheduleToDataCsv } from '../files/schedule-to-data-csv';
import type { LabelGrid } from '../sheets/labels/label-grid';
import { labelInputs } from '../sheets/labels/label-inputs';
import { labelledKinds } from '../sheets/labels/labelled-cable';
import { listLabelledCables } from '../sheets/labels/list-labelled-cables';
import { scheduleLabels } from '../sheets/labels/schedule-labels';
import { startingGrids } from '../sheets/labels/starting-grids';
import type { PaperId } from '../sheets/pages/papers';
import { type Command, exitCodes } from './command';
import { complainOfStops } from './complain-of-stops';
import { readPlan } from './read-plan';
import { writeFile } from './write-file';

export const labels: Command = {
  name: 'labels',
  usage: 'labels PLAN.json --csv | --out DIR [--paper a4|letter] [--address URL]',
  files: 1,
  options: {
    '--csv': 'to standard output, a row for each end of each cable',
    '[--out DIR]': 'folder for labels.pdf; it is made where there is none',
    '[--paper a4|letter]': 'a4 (taken unless stated): 3 columns of 8 labels; letter: 3 columns of 10',
    '[--address URL]': 'of the page, for the code on each label that leads to its port, circuit or breakout',
  },
  summary:
    'Labels for both ends of every home run, return, trunk and circuit, and of the jumpers of every run and circuit: from, to, length class. Ends with 1 where the plan has no cable.',
  async run(given, terminal) {
    const { file, options, out } = given;
    if (!options.has('--csv') && out === undefined) {
      terminal.complain('voussoir: labels wants --csv or --out DIR\n');
      return exitCodes.refused;
    }
    const plan = readPlan(file, terminal);
    if (plan === null) return exitCodes.refused;
    const evaluation = createEvaluator().evaluate(plan);
    const cables = listLabelledCables(labelInputs(plan, evaluation), new Set(labelledKinds));
    if (cables.length === 0) {
      terminal.complain('voussoir: this plan has no cable to label; see check\n');
      return exitCodes.stopped;
    }
    if (options.has('--csv')) {
      const schedule = scheduleLabels(cables, { address: given.address ?? null, planId: plan.id });
      terminal.print(scheduleToDataCsv(schedule));
    }
    if (out !== undefined) {
      const codes = { address: given.address ?? null, planId: plan.id, used: 0, hasLines: false };
      const made = await labelsPdf(plan.name, cables, gridOn(given.paper ?? 'a4'), codes, terminal.fonts());
      if (!writeFile(out, made, terminal)) return exitCodes.refused;
    }
    complainOfStops(evaluation.checks, terminal);
    return exitCodes.ok;
  },
};

/** The grid of three columns on the paper, which is cut for both and holds a code beside the text. */
function gridOn(paper: PaperId): LabelGrid {
  return startingGrids.filter((each) => each.paper === paper && each.columns === 3).at(-1)!;
}
