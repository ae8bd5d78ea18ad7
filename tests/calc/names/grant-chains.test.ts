import { expect, test } from 'vitest';
import { grantChains } from '../../../src/calc/names/grant-chains';
import type { LocatedChain } from '../../../src/calc/names/locate-names';

const chain = (first: number, last: number): LocatedChain => ({ name: `${first}`, first, last, returnName: null });
/** Chains of panels, each from its entry on, of panels 0 to 11. */
function grant(chains: readonly (readonly number[])[], held: readonly LocatedChain[], mayTake = () => true) {
  const chainOf = new Int32Array(12).fill(-1);
  const placeOf = new Uint32Array(12);
  chains.forEach((panels, index) => {
    panels.forEach((panel, place) => {
      chainOf[panel] = index;
      placeOf[panel] = place;
    });
  });
  return [...grantChains({ chainOf, placeOf, chains: chains.length }, held, mayTake)];
}

test('grantChains gives a chain the name of the one that began where it begins', () => {
  expect(
    grant(
      [
        [3, 4, 5],
        [0, 1, 2],
      ],
      [chain(0, 2), chain(3, 5)],
    ),
  ).toEqual([1, 0]);
});

test('grantChains prefers a chain that still begins there to one that only holds the panel', () => {
  // The held chain 0-2 was put behind 6; the other still begins at 3, which is in the same chain now.
  expect(grant([[3, 2, 1, 0]], [chain(0, 2), chain(3, 5)])).toEqual([1]);
});

test('grantChains goes by the first panel before it goes by the last', () => {
  // Cut in two: the half with the beginning keeps the name though it begins elsewhere now, the half with the end has none.
  expect(
    grant(
      [
        [1, 0],
        [2, 3],
      ],
      [chain(0, 3)],
    ),
  ).toEqual([0, -1]);
});

test('grantChains goes by the last panel where the first is gone', () => {
  expect(grant([[1, 2, 3]], [chain(-1, 3)])).toEqual([0]);
  expect(grant([[1, 2, 3]], [chain(-1, -1)])).toEqual([-1]);
});

test('grantChains of two names in one chain gives it that nearer to the entry', () => {
  expect(grant([[9, 6, 7, 0, 1]], [chain(0, 1), chain(6, 7)])).toEqual([1]);
});

test('grantChains gives no name twice', () => {
  // One held chain, and its two ends on two chains.
  expect(grant([[0], [3]], [chain(0, 3)])).toEqual([0, -1]);
});

test('grantChains passes over a chain that cannot have the name', () => {
  expect(grant([[0, 1, 2]], [chain(0, 2)], () => false)).toEqual([-1]);
});
