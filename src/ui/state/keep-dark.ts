import { panelByName } from '../../calc/runs/existing/panel-by-name';
import { panelAt } from '../../calc/surfaces/panel-at';
import type { SurfaceSet } from '../../calc/surfaces/surface-table';

/** Numbers of the panels picked as dark after a change of the plan: found again by their names, in rising order; those that are gone are dropped. */
export function keepDark(
  dark: readonly number[],
  before: SurfaceSet | undefined,
  after: SurfaceSet,
): readonly number[] {
  if (dark.length === 0 || before === undefined || before === after) return dark;
  const again = dark
    .map((panel) => panelByName(after, panelAt(before, panel)?.name ?? ''))
    .filter((panel) => panel >= 0);
  return [...new Set(again)].sort((one, other) => one - other);
}
