import type { LegendEntry } from './drawing';
import type { StageParts } from './stage-parts';
import { legTints, type Tint, tintCount } from './tint-panels';

/** More entries than this tell nobody anything. */
const mostEntries = 24;

/** What each tint stands for, where there are few enough of them; ports and circuits are too many. */
export function tintLegend({ zones, power }: Pick<StageParts, 'zones' | 'power'>, tint: Tint): readonly LegendEntry[] {
  if (tint === 'leg') {
    const legs = [...new Set(power.circuits.map((circuit) => circuit.leg))].sort();
    return legs.map((leg) => ({ tint: legTints[leg], text: leg }));
  }
  if (tint !== 'processor' || zones.length > mostEntries) return [];
  return zones.map(({ processor }) => ({ tint: (processor - 1) % tintCount, text: `P${processor}` }));
}
