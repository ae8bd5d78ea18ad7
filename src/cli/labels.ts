import { createEvaluator } from '../calc/evaluate';
import type { Evaluation } from '../calc/evaluation';
import { type PrintFonts, pagesToPdf } from '../files/pages-to-pdf';
import { scheduleToDataCsv } from '../files/schedule-to-data-csv';
import type { Plan } from '../plan/plan';
import { type LabelledCable, labelledKinds } from '../sheets/labels/labelled-cable';
import { layOutLabels } from '../sheets/labels/lay-out-labels';
import { listLabelledCables } from '../sheets/labels/list-labelled-cables';
import { scheduleLabels } from '../sheets/labels/schedule-labels';
import { startingGrids } from '../sheets/labels/starting-grids';
import { type Command, exitCodes, type Given } from './command';
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
    const cables = cablesOf(plan, evaluation);
    if (cables.length === 0) {
      terminal.complain('voussoir: this plan has no cable to label; see check\n');
      return exitCodes.stopped;
    }
    if (options.has('--csv')) {
      const schedule = scheduleLabels(cables, { address: given.address ?? null, planId: plan.id });
      terminal.print(scheduleToDataCsv(schedule));
    }
    if (out !== undefined) {
      const bytes = await labelsPdf(plan, cables, given, terminal.fonts());
      if (!writeFile(out, { name: 'labels.pdf', bytes }, terminal)) return exitCodes.refused;
    }
    complainOfStops(evaluation.checks, terminal);
    return exitCodes.ok;
  },
};

function cablesOf(plan: Plan, { surfaces, runs, power }: Evaluation): readonly LabelledCable[] {
  const inputs = { surfaces, runs: runs.results, power: power.results, cables: plan.catalogue.cables };
  return listLabelledCables(inputs, new Set(labelledKinds));
}

/** The grid of three columns on the paper, which is cut for both and holds a code beside the text. */
function labelsPdf(
  plan: Plan,
  cables: readonly LabelledCable[],
  { paper = 'a4', address }: Given,
  fonts: PrintFonts,
): Promise<Uint8Array> {
  const grid = startingGrids.filter((each) => each.paper === paper && each.columns === 3).at(-1)!;
  const options = { address: address ?? null, planId: plan.id, used: 0, hasLines: false };
  const sheets = layOutLabels(cables, grid, options)!;
  const pages = Array.from({ length: sheets.count }, (_, index) => sheets.page(index));
  return pagesToPdf(pages, fonts, { title: `${plan.name}: labels`, date: null });
}
