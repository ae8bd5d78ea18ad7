import type { ExactFigures, PanelBuilds } from '../calc/finder/build';
import type { DisplayOptions } from '../units/display-options';
import { formatQuantity } from '../units/format-quantity';
import type { Unit } from '../units/unit';
import { alignColumns } from './align-columns';
import { wrapText } from './wrap-text';

/** The best build of one panel with its figures, two a line; or why the panel has none. */
export function findReport(
  { panelName, builds, refused }: PanelBuilds,
  exact: ExactFigures | null,
  options: DisplayOptions,
  width: number,
): string {
  const [best, ...others] = builds;
  if (best === undefined) return `${wrapText(`${panelName}: ${refused ?? 'no build was found.'}`, width).join('\n')}\n`;
  const of = (value: number | null | undefined, unit: Unit, absent: string) =>
    value === null || value === undefined ? absent : formatQuantity(value, unit, options);
  const notes = [
    best.mixed ? 'mixed joints' : '',
    best.roomMm !== null && best.roomMm < 0 ? 'does not fit the hall' : '',
    best.withinStack ? '' : 'higher than its lock may stack',
    best.underHall ? '' : 'above the clear height of the hall',
    best.letsIn ? '' : 'no way in for what must drive in',
  ].filter((note) => note !== '');
  const rows = [
    ['  Across', of(best.acrossMm, 'mm', '-'), 'Opening', of(best.openingMm, 'mm', '-')],
    ['  Height', of(best.heightMm, 'mm', '-'), 'Columns and rows', `${best.columns} x ${best.rows}`],
    ['  Off the circle', of(best.worstMm, 'mm', '-'), 'Room in the hall', of(best.roomMm, 'mm', 'not stated')],
    ['  Area', of(best.areaM2, 'm2', '-'), 'Pixels', of(best.pixels, 'px', '-')],
    ['  Mass', of(best.massKg, 'kg', '-'), 'Price of panels', of(best.price, 'money', 'not stated')],
    ['  Processors', of(exact?.processors, 'count', '-'), 'Ports', of(exact?.ports, 'count', '-')],
    ['  Worst leg', of(exact?.worstLegA, 'A', '-'), 'Price of the stage', of(exact?.priceTotal, 'money', '-')],
  ];
  return [
    ...wrapText([panelName, ...notes].join(', '), width),
    ...alignColumns(rows, ['l', 'r', 'l', 'r']),
    ...stopLines(exact, width),
    ...(others.length === 0 ? [] : [`  Other builds near the wish: ${others.length}`]),
    '',
  ].join('\n');
}

/** What would stop the plan with this build, by the ids of its checks. */
function stopLines(exact: ExactFigures | null, width: number): string[] {
  if (exact === null) return ['  The plan cannot take it: signal and power are not known.'];
  if (exact.stops.length === 0) return ['  No check stops it.'];
  const ids = exact.stops.map((stop) => stop.id).join(', ');
  return wrapText(`Stopped by: ${ids}`, width - 2).map((line) => `  ${line}`);
}
