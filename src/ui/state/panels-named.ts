import type { Evaluation } from '../../calc/evaluation';
import { panelsOn } from '../../calc/faults/panels-on';
import { pickedPanels } from '../../sheets/picked-panels';
import { faultModelOf } from './fault-model-of';
import { findSelection } from './find-selection';

/** Numbers of the panels that hang on what has this name: a panel, a column, a port, a circuit, a box; none where nothing has it. */
export function panelsNamed(evaluation: Evaluation, name: string): readonly number[] {
  const selection = findSelection(evaluation, name);
  if (!selection) return [];
  if (selection.kind === 'part') {
    return panelsOn(faultModelOf(evaluation), { kind: selection.part, index: selection.index });
  }
  const { surfaces, zones, runs, power } = evaluation;
  const parts = { surfaces, zones: zones.results.zones, runs: runs.results, power: power.results };
  return pickedPanels(parts, selection);
}
