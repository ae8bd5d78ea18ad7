import type { Cable } from '../../plan/cable';
import type { PanelPurchase } from '../panels/panel-views';
import type { ItemCount, SignalItems } from '../signal-items';
import { countByPanel } from '../surfaces/count-by-type';
import type { SurfaceSet } from '../surfaces/surface-table';
import { countCables } from './count-cables';
import { type GearPurchase, type NeededItem, neededItem } from './needed-item';
import { networkItems } from './network-items';
import type { WiringCounts } from './wiring-counts';

export interface NeededInputs {
  readonly surfaces: SurfaceSet;
  readonly gear: SignalItems;
  readonly wiring: WiringCounts;
  /** Distros that feed a circuit. */
  readonly distroCounts: readonly ItemCount[];
  readonly panels: readonly PanelPurchase[];
  readonly processors: readonly GearPurchase[];
  readonly breakouts: readonly GearPurchase[];
  readonly nodes: readonly GearPurchase[];
  readonly distros: readonly GearPurchase[];
  readonly cables: readonly Cable[];
}

const nodesCountedAs = 'each that feeds a zone, and the spare ones';

/** Entries of which an item is chosen. */
function chosen(counts: readonly ItemCount[]): { itemId: string; count: number }[] {
  return counts.flatMap(({ itemId, count }) => (itemId === null ? [] : [{ itemId, count }]));
}

/** Render nodes that feed zones although nobody has chosen one. */
function unchosenNodes(counts: readonly ItemCount[]): NeededItem[] {
  return counts
    .filter(({ itemId }) => itemId === null)
    .map(({ count }) => ({
      itemId: 'node',
      group: 'signal',
      name: 'Render node, none chosen',
      needed: count,
      massKgEach: 0,
      priceEach: null,
      leadDays: null,
      countedAs: nodesCountedAs,
    }));
}

/** Everything countable but cases, from the surfaces, the zones, their wiring and the circuits. What is not needed has no entry. */
export function countNeeded(inputs: NeededInputs): readonly NeededItem[] {
  const { gear, panels, processors, breakouts, nodes, distros } = inputs;
  const items: NeededItem[] = [
    ...[...countByPanel(inputs.surfaces)].map(([itemId, count]) =>
      neededItem(panels, { itemId, count }, 'panels', 'panels of all surfaces'),
    ),
    ...chosen(gear.processors).map((c) => neededItem(processors, c, 'signal', 'one a zone')),
    ...chosen(gear.breakouts).map((c) => neededItem(breakouts, c, 'signal', 'each that has a run')),
    ...chosen(gear.nodes).map((c) => neededItem(nodes, c, 'signal', nodesCountedAs)),
    ...unchosenNodes(gear.nodes),
    ...chosen(inputs.distroCounts).map((c) => neededItem(distros, c, 'power', 'each that has a circuit')),
    ...countCables(inputs.cables, inputs.wiring),
    ...networkItems(inputs.wiring.network),
  ];
  return items.filter(({ needed }) => needed > 0);
}
