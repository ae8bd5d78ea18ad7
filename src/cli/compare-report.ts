import type { Change, Changed } from '../calc/compare/change';
import type { Plan } from '../plan/plan';
import type { Cell } from '../sheets/schedule';
import { scheduleChanges } from '../sheets/schedule-changes';
import { counted } from '../units/counted';
import { formatQuantity } from '../units/format-quantity';
import type { Unit } from '../units/unit';
import { displayOptionsOf } from './display-options-of';
import { wrapText } from './wrap-text';

type Titled = Pick<Plan, 'name' | 'revision' | 'lengths' | 'currency'>;

/** Changes of one kind that are written out before the rest are counted, of things of which there are many. */
const most = 12;
const alwaysAll: ReadonlySet<Changed> = new Set(['figure', 'check', 'item']);

/** What `compare` prints: each change in a line, with what it was and what it is. Lengths of both as the new plan has them. */
export function compareReport(
  { before, after }: { readonly before: Titled; readonly after: Titled },
  changes: readonly Change[],
  width: number,
): string {
  const formatOf = (currency: string) => {
    const options = displayOptionsOf({ lengths: after.lengths, currency });
    return (value: number, unit: Unit, extra: number) => formatQuantity(value, unit, options, extra);
  };
  const schedule = scheduleChanges(changes, { before: formatOf(before.currency), after: formatOf(after.currency) });
  const groups = new Map<string, number[]>();
  for (const [index, { what, kind }] of changes.entries()) {
    const group = groups.get(`${what} ${kind}`) ?? [];
    groups.set(`${what} ${kind}`, group);
    group.push(index);
  }
  const linesOf = (group: readonly number[]) => {
    const shown = alwaysAll.has(changes[group[0]!]!.what) ? group : group.slice(0, most);
    return groupLines(shown.map(schedule.row), group.length, width);
  };
  return [
    ...wrapText(`Old: ${titleOf(before)}`, width, '  '),
    ...wrapText(`New: ${titleOf(after)}`, width, '  '),
    '',
    changes.length === 0 ? 'Nothing changed.' : `${counted(changes.length, 'change')}.`,
    ...[...groups.values()].flatMap(linesOf),
    '',
  ].join('\n');
}

function titleOf({ name, revision }: Titled): string {
  return revision === '' ? name : `${name}, revision ${revision}`;
}

function groupLines(rows: readonly (readonly Cell[])[], count: number, width: number): string[] {
  const [kind, what] = rows[0]!;
  const lines = rows.flatMap(([, , name, before, after]) => {
    const change = [before, after].filter((side) => side !== null).join(' -> ');
    return wrapText(`${name}: ${change}`, width - 2, '  ').map((line) => `  ${line}`);
  });
  const rest = count > rows.length ? [`  and ${count - rows.length} more; --json names all`] : [];
  return ['', `${what}, ${kind}: ${count}`, ...lines, ...rest];
}
