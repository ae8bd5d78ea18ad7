import type { LocatedChain } from './locate-names';

/** Where panels are on the chains of now. */
export interface ChainPlaces {
  /** By panel, the chain that it is on; -1: none. */
  readonly chainOf: Int32Array;
  /** By panel, its place on that chain, from 0. */
  readonly placeOf: Uint32Array;
  readonly chains: number;
}

interface Claim {
  readonly held: number;
  readonly chain: number;
  readonly rank: 1 | 2 | 3;
  readonly place: number;
}

/**
 * Which chain of now has which held name: by chain the index of the name, -1 where it has none. A chain that still begins
 * where a held one began comes first, then one that holds that panel, then one that holds the panel where it ended; of several
 * the nearest to the entry. `mayTake` says whether the chain can have the name at all.
 */
export function grantChains(
  { chainOf, placeOf, chains }: ChainPlaces,
  held: readonly LocatedChain[],
  mayTake: (chain: number, held: number) => boolean,
): Int32Array {
  const claims: Claim[] = [];
  held.forEach(({ first, last }, index) => {
    const begins = first < 0 ? -1 : chainOf[first]!;
    const ends = last < 0 ? -1 : chainOf[last]!;
    if (begins >= 0) {
      const place = placeOf[first]!;
      claims.push({ held: index, chain: begins, rank: place === 0 ? 1 : 2, place });
    }
    if (ends >= 0 && ends !== begins) claims.push({ held: index, chain: ends, rank: 3, place: placeOf[last]! });
  });
  claims.sort((a, b) => a.rank - b.rank || a.place - b.place || a.held - b.held);
  const heldOf = new Int32Array(chains).fill(-1);
  const isGiven = new Uint8Array(held.length);
  for (const claim of claims) {
    if (heldOf[claim.chain]! >= 0 || isGiven[claim.held] === 1 || !mayTake(claim.chain, claim.held)) continue;
    heldOf[claim.chain] = claim.held;
    isGiven[claim.held] = 1;
  }
  return heldOf;
}
