import { createEvaluator } from '../calc/evaluate';
import { type CrewSetAsked, crewPageSteps, crewParts, crewPdf } from '../files/make-crew-set';
import { papers } from '../sheets/pages/papers';
import { type Command, exitCodes } from './command';
import { complainOfStops } from './complain-of-stops';
import { displayOptionsOf } from './display-options-of';
import { readPlan } from './read-plan';
import { writeFile } from './write-file';

const paperIds = papers.map(({ id }) => id).join('|');

export const sheets: Command = {
  name: 'sheets',
  usage: `sheets PLAN.json --out DIR --paper ${paperIds} [--black]`,
  files: 1,
  options: {
    '--out DIR': 'folder to write into; it is made where there is none',
    [`--paper ${paperIds}`]: 'size of the paper',
    '[--parts NAMES]': 'only these parts, their names with commas between: cover,zones,ports; left out: all',
    '[--date YYYY-MM-DD]': 'day of the print; left out: today',
    '[--address URL]': 'of the page, for the code on the cover that opens a copy of the plan',
    '--black': 'no tints and no colours',
  },
  summary:
    'The crew set as one PDF: cover, bill, walls and ceilings from both sides, zones, ports, circuits, counts, check sheets, commissioning. Drawings are to scale where it is printed at its actual size.',
  async run({ file, options, out = '.', paper = 'a4', parts, date, address }, terminal) {
    const plan = readPlan(file, terminal);
    if (plan === null) return exitCodes.refused;
    const evaluation = createEvaluator().evaluate(plan);
    const asked: Omit<CrewSetAsked, 'fonts'> = {
      paper,
      inks: options.has('--black') ? 'black' : 'colour',
      display: displayOptionsOf(plan),
      date: date ?? terminal.today(),
      address: address ?? null,
      parts: parts === undefined ? null : parts.split(','),
    };
    const all = crewParts(asked, plan, evaluation);
    const known = all.map(({ id }) => id);
    const unknown = asked.parts?.find((part) => !known.some((id) => id === part));
    const wrong =
      unknown !== undefined
        ? `there is no part ${unknown} in this set: ${known.join(', ')}`
        : isDay(asked.date)
          ? null
          : `${asked.date} is no day: it reads 2026-11-25`;
    if (wrong !== null) {
      terminal.complain(`voussoir: ${wrong}\n`);
      return exitCodes.refused;
    }
    const steps = crewPageSteps(asked, plan, evaluation, all);
    let step = steps.next();
    while (!step.done) step = steps.next();
    const { name, bytes } = await crewPdf(step.value, terminal.fonts(), asked, plan);
    if (!writeFile(out, { name: name.replaceAll(' ', '-'), bytes }, terminal)) return exitCodes.refused;
    complainOfStops(evaluation.checks, terminal);
    return exitCodes.ok;
  },
};

/** Whether a text is a day of the calendar, such as 2026-11-25. */
function isDay(text: string): boolean {
  const day = new Date(`${text}T00:00:00Z`);
  return /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
}
