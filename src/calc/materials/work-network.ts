import type { Step } from '../chapter';
import type { NetworkCounts } from './count-network';

/** Cables of the sync and the network as they follow from what hangs on them; none where there are none. */
export function workNetwork(counts: NetworkCounts): Step[] {
  const { devices, splitters, syncCables, switches, networkCables } = counts;
  const overNetwork = syncCables === 0 ? counts.references : 0;
  const steps: readonly Pick<Step, 'figure' | 'expression' | 'numbers' | 'value' | 'source'>[] = [
    {
      figure: 'needed, sync cables',
      expression: 'devices + splitters',
      numbers: { devices, splitters },
      value: syncCables,
      source: { kind: 'practice', text: 'every device and every splitter hangs on one cable of its own' },
    },
    {
      figure: 'needed, network cables',
      expression: 'devices + max(0, switches - 1) + references',
      numbers: { devices, switches, references: overNetwork },
      value: networkCables,
      source: {
        kind: 'practice',
        text: 'one a device, one from each further switch to an earlier one, and one for a reference on the network',
      },
    },
  ];
  return steps.filter(({ value }) => value > 0).map((step) => ({ ...step, symbol: 'needed', unit: 'count' }));
}
