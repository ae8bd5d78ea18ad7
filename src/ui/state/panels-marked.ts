import type { Evaluation } from '../../calc/evaluation';
import { panelAt } from '../../calc/surfaces/panel-at';
import { pickedPanels } from '../../sheets/picked-panels';
import type { FaultsState } from './bench-state';

/** Numbers of the panels that one press marks: the panel, all of its run, or all of its column. A panel on no run stands for itself. */
export function panelsMarked(
  { surfaces, zones, runs, power }: Pick<Evaluation, 'surfaces' | 'zones' | 'runs' | 'power'>,
  marks: FaultsState['marks'],
  panel: number,
): readonly number[] {
  const record = panelAt(surfaces, panel);
  if (!record) return [];
  const parts = { surfaces, zones: zones.results.zones, runs: runs.results, power: power.results };
  if (marks === 'column') {
    return pickedPanels(parts, { kind: 'column', surfaceId: record.surface.surfaceId, column: record.column });
  }
  const run = marks === 'run' ? runs.results.runOf[panel]! : -1;
  return run < 0 ? [panel] : pickedPanels(parts, { kind: 'run', index: run });
}
