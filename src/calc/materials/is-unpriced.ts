import type { MaterialLine } from './material-result';

/** Whether a line lacks a price that somebody could state: the catalogue has no list of what is on the sync and the network. */
export function isUnpriced({ priceEach, group }: MaterialLine): boolean {
  return priceEach === null && group !== 'network';
}
