import type { NodesResults } from '../nodes/node-result';

/** What the sync and the network of a stage take, as its schedules of cables and addresses have it. */
export interface NetworkCounts {
  /** What is on the sync and on the network. */
  readonly devices: number;
  /** Sources of the sync. */
  readonly references: number;
  readonly splitters: number;
  /** Cables that carry nothing but the sync: none where it runs over the network. */
  readonly syncCables: number;
  readonly switches: number;
  /** From device to switch, from switch to switch, and from the reference where the sync runs over the network. */
  readonly networkCables: number;
}

export function countNetwork({ sync, addresses }: Pick<NodesResults, 'sync' | 'addresses'>): NetworkCounts {
  const isOverNetwork = sync.some(({ kind }) => kind === 'switch');
  const switches = addresses.reduce((most, device) => Math.max(most, device.switch), 0);
  return {
    devices: addresses.length,
    references: sync.length > 0 ? 1 : 0,
    splitters: sync.filter(({ kind }) => kind === 'splitter').length,
    syncCables: isOverNetwork ? 0 : sync.length,
    switches,
    networkCables: addresses.length + Math.max(0, switches - 1) + (isOverNetwork ? 1 : 0),
  };
}
