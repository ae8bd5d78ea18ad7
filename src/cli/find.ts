import { createEvaluator } from '../calc/evaluate';
import type { Build, PanelBuilds } from '../calc/finder/build';
import { exactFigures } from '../calc/finder/exact-figures';
import { findBuilds } from '../calc/finder/find-builds';
import type { DisplayOptions } from '../units/display-options';
import { formatQuantity } from '../units/format-quantity';
import { alignColumns } from './align-columns';
import { type Command, exitCodes } from './command';
import { displayOptionsOf } from './display-options-of';
import { readWish } from './read-wish';

export const find: Command = {
  name: 'find',
  usage: 'find WISH.json',
  files: 1,
  options: {},
  summary:
    'The builds that come nearest a wish, one best for each panel, with what signal and power need. WISH.json is a plan, of which the wish and the catalogue count, or a wish alone, for which the starter catalogue serves.',
  run({ file }, terminal) {
    const plan = readWish(file, terminal);
    if (plan === null) return exitCodes.refused;
    const { evaluate } = createEvaluator();
    const options = displayOptionsOf(plan);
    for (const panel of findBuilds(plan)) {
      const [best] = panel.builds;
      const exact = best === undefined ? null : exactFigures(plan, best, evaluate);
      terminal.print(`${panelReport(panel, best, exact, options).join('\n')}\n\n`);
    }
    return exitCodes.ok;
  },
};

function panelReport(
  { panelName, refused, builds }: PanelBuilds,
  best: Build | undefined,
  exact: ReturnType<typeof exactFigures>,
  options: DisplayOptions,
): readonly string[] {
  if (best === undefined) return [panelName, `  ${refused ?? 'No build was found.'}`];
  const say = (value: number | null, unit: Parameters<typeof formatQuantity>[1], absent = 'not stated') =>
    value === null ? absent : formatQuantity(value, unit, options);
  const rows = [
    ['  across', say(best.acrossMm, 'mm'), 'opening', say(best.openingMm, 'mm', 'none')],
    ['  height', say(best.heightMm, 'mm'), 'columns x rows', `${best.columns} x ${best.rows}`],
    ['  off the circle', say(best.worstMm, 'mm', 'flat'), 'room in the hall', say(best.roomMm, 'mm')],
    ['  area', say(best.areaM2, 'm2'), 'pixels', say(best.pixels, 'px')],
    ['  mass', say(best.massKg, 'kg'), 'panels cost', say(best.price, 'money')],
    [
      '  processors',
      say(exact?.processors ?? null, 'count', 'none'),
      'ports',
      say(exact?.ports ?? null, 'count', 'none'),
    ],
    [
      '  worst leg',
      say(exact?.worstLegA ?? null, 'A', 'none'),
      'stops',
      say(exact?.stops.length ?? null, 'count', 'none'),
    ],
  ];
  return [
    `${panelName}${best.mixed ? ', mixed joints' : ''}${best.withinStack ? '' : ', above its highest stack'}`,
    ...alignColumns(rows, ['l', 'r', 'l', 'r']),
    ...(builds.length > 1 ? [`  and ${builds.length - 1} more builds near it`] : []),
  ];
}
