import { cautions } from '../calc/cautions';
import { createEvaluator } from '../calc/evaluate';
import { askedOpening } from '../calc/finder/asked-opening';
import { exactFigures } from '../calc/finder/exact-figures';
import { findBuilds } from '../calc/finder/find-builds';
import { type Command, exitCodes } from './command';
import { displayOptionsOf } from './display-options-of';
import { findReport } from './find-report';
import { readWish } from './read-wish';
import { wrapText } from './wrap-text';

export const find: Command = {
  name: 'find',
  usage: 'find WISH.json [--feet]',
  files: 1,
  options: { '--feet': 'lengths in feet and inches, for a wish alone; a plan says so itself' },
  summary:
    'The builds that come nearest a wish, the best one of each panel, with what signal and power need. WISH.json is a plan, of which the wish and the catalogue count, or a wish alone, such as {"wall": {"form": "ring", "acrossMm": 20000, "heightMm": 6000, "openingMm": 4000}}, for which the starter catalogue serves.',
  run({ file, options }, terminal) {
    const plan = readWish(file, terminal);
    if (plan === null) return exitCodes.refused;
    const display = displayOptionsOf(options.has('--feet') ? { ...plan, lengths: 'feet' } : plan);
    const { form, acrossMm } = plan.wish.wall;
    const { from } = askedOpening(plan.wish);
    if (form === 'ring' && acrossMm !== null && from !== 'wish') {
      const taken = from === 'vehicle' ? 'open as wide as what must drive in' : 'closed';
      terminal.print(`The wish states no opening: the rings are taken as ${taken}.\n\n`);
    }
    const { evaluate } = createEvaluator();
    for (const panel of findBuilds(plan)) {
      const [best] = panel.builds;
      const exact = best === undefined ? null : exactFigures(plan, best, evaluate);
      terminal.print(`${findReport(panel, exact, display, terminal.columns)}\n`);
    }
    terminal.print(`${wrapText(cautions.general, terminal.columns).join('\n')}\n`);
    return exitCodes.ok;
  },
};
