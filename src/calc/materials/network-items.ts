import type { NetworkCounts } from './count-network';
import type { NeededItem } from './needed-item';

/** Parts of the sync and the network. The catalogue has no list for them, so they stand on the bill without mass and price. */
export function networkItems(counts: NetworkCounts): readonly NeededItem[] {
  const part = (itemId: string, name: string, needed: number, countedAs: string): NeededItem => ({
    itemId,
    group: 'network',
    name,
    needed,
    massKgEach: 0,
    priceEach: null,
    leadDays: null,
    countedAs,
  });
  return [
    part('sync-reference', 'Reference of the sync', counts.references, 'one a stage'),
    part('sync-splitter', 'Splitter of the sync', counts.splitters, 'each of the sync by cable'),
    part('sync-cable', 'Sync cable, coaxial', counts.syncCables, 'one a device and one a splitter'),
    part('network-switch', 'Network switch', counts.switches, 'each of the addresses by device'),
    part('network-cable', 'Network cable', counts.networkCables, 'one a device, and those that join switches'),
  ];
}
