import { cautions } from '../calc/cautions';
import type { MaterialLine, MaterialsResults } from '../calc/materials/material-result';
import type { Plan } from '../plan/plan';
import type { DisplayOptions } from '../units/display-options';
import { formatQuantity } from '../units/format-quantity';
import { alignColumns } from './align-columns';
import { wrapText } from './wrap-text';

/** Width of the columns beside the item's name. */
const figuresWidth = 54;

/** What `materials` prints: the bill in groups, with what it weighs and costs. */
export function materialsReport(
  plan: Pick<Plan, 'name' | 'revision'>,
  { lines, massKg, priceTotal, priceToGet, unpriced }: MaterialsResults,
  options: DisplayOptions,
  width: number,
): string {
  const title = `Bill of materials: ${plan.name}${plan.revision === '' ? '' : `, revision ${plan.revision}`}`;
  const rows = lines.map((line) => billRow(line, options, Math.max(width - figuresWidth, 16)));
  const head = ['Item', 'Needed', 'Spare', 'Owned', 'To get', 'Mass', 'Price'];
  const money = (amount: number) => formatQuantity(amount, 'money', options);
  return [
    ...wrapText(title, width),
    '',
    ...alignColumns([head, ...rows], ['l', 'r', 'r', 'r', 'r', 'r', 'r']),
    '',
    `Mass of all: ${formatQuantity(massKg, 'kg', options)}`,
    `Price of what is to be got: ${money(priceToGet)}; of everything bought new: ${money(priceTotal)}`,
    ...(unpriced === 0 ? [] : [`Lines without a price, which the sums leave out: ${unpriced}`]),
    '',
    ...wrapText(cautions.general, width),
    '',
  ].join('\n');
}

function billRow(line: MaterialLine, options: DisplayOptions, nameWidth: number): string[] {
  const name = line.name.length > nameWidth ? `${line.name.slice(0, nameWidth - 1)}…` : line.name;
  const count = (value: number | null) => (value === null ? '?' : formatQuantity(value, 'count', options));
  return [
    name,
    count(line.needed),
    count(line.spare),
    count(line.owned),
    count(line.toGet),
    formatQuantity(line.massKg, 'kg', { ...options, lengths: 'metric' }),
    line.price === null ? '?' : formatQuantity(line.price, 'money', options),
  ];
}
