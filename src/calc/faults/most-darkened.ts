import type { Culprit } from './culprit';
import type { FaultModel } from './fault-model';

/**
 * No fewer panels than this part darkens, without following a run: a part of a chain darkens no more than the whole chain.
 * `byCircuit` has what whole circuits darken, as far as it is known.
 */
export function mostDarkened(
  { data, power, surfaces }: FaultModel,
  { kind, index }: Culprit,
  byCircuit: ReadonlyMap<number, number>,
): number {
  if (kind === 'jumper') return data.count[data.chainOf[data.order[index]!]!]!;
  if (kind === 'panel') return data.count[data.chainOf[index]!] ?? 1;
  if (kind === 'power-jumper') return byCircuit.get(power.chainOf[power.order[index]!]!) ?? surfaces.total;
  return surfaces.total;
}
