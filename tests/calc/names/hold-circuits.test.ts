import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type CircuitsToName, holdCircuits, numberCircuits } from '../../../src/calc/names/hold-circuits';
import type { LocatedChain } from '../../../src/calc/names/locate-names';

/** Circuits of two panels each, one after the other, on distros that begin at these circuits. */
const laid = (circuits: number, distroStarts: readonly number[] = [0]): CircuitsToName => ({
  circuits: Array.from({ length: circuits }, (_, i) => ({ panels: [2 * i, 2 * i + 1], offset: 0 })),
  distroStarts,
});
const held = (name: string, circuit: number): LocatedChain => {
  return { name, first: circuit < 0 ? -1 : 2 * circuit, last: circuit < 0 ? -1 : 2 * circuit + 1, returnName: null };
};
const names = (...[given, chains, most = 6]: [CircuitsToName, readonly LocatedChain[], (number | null)?]) => {
  const { distros, circuits } = holdCircuits(given, chains, 2 * given.circuits.length, most);
  return circuits.map((circuit, i) => {
    const distro = given.distroStarts.findLastIndex((from) => from <= i);
    return `D${distros[distro]}-${circuit}`;
  });
};

test('numberCircuits counts distros through the stage and circuits through each', () => {
  expect(numberCircuits(laid(5, [0, 3]))).toEqual({ distros: [1, 2], circuits: [1, 2, 3, 1, 2] });
  expect(numberCircuits(laid(0, []))).toEqual({ distros: [], circuits: [] });
});

test('holdCircuits without held names numbers as numberCircuits does', () => {
  expect(holdCircuits(laid(5, [0, 3]), [], 10, 6)).toEqual(numberCircuits(laid(5, [0, 3])));
});

test('holdCircuits keeps names with their panels, and numbers new circuits on', () => {
  expect(names(laid(3), [held('D1-1', 1), held('D1-2', 2)])).toEqual(['D1-3', 'D1-1', 'D1-2']);
});

test('holdCircuits keeps the number of a distro with most of its circuits', () => {
  // Distro 2 lost its first circuit to distro 1, where the name of it cannot stay.
  const chains = [held('D1-1', 0), held('D1-2', 1), held('D2-1', 2), held('D2-2', 3), held('D2-3', 4)];
  expect(names(laid(5, [0, 3]), chains)).toEqual(['D1-1', 'D1-2', 'D1-3', 'D2-2', 'D2-3']);
});

test('holdCircuits gives a new distro a number that was never held', () => {
  expect(names(laid(2, [0, 1]), [held('D1-1', 1), held('D4-1', -1)])).toEqual(['D5-1', 'D1-1']);
});

test('holdCircuits gives a held number again only where the distro has no other', () => {
  const chains = [held('D1-1', 1), held('D1-2', -1)];
  expect(names(laid(2), chains, 3)).toEqual(['D1-3', 'D1-1']);
  expect(names(laid(2), chains, 2)).toEqual(['D1-2', 'D1-1']);
});

test('holdCircuits lets go of a number that the distro does not have', () => {
  expect(names(laid(1), [held('D1-7', 0)], 6)).toEqual(['D1-1']);
  expect(names(laid(1), [held('D1-7', 0)], null)).toEqual(['D1-7']);
});

test('holdCircuits gives every circuit a name of its own within its distro, whatever is held', () => {
  const name = fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 8 })).map(([d, c]) => `D${d}-${c}`);
  const chain = fc.record({
    name: fc.oneof(name, fc.constant('1A-01')),
    first: fc.integer({ min: -1, max: 23 }),
    last: fc.integer({ min: -1, max: 23 }),
    returnName: fc.constant(null),
  });
  const chains = fc.uniqueArray(chain, { selector: (each) => each.name, maxLength: 20 });
  fc.assert(
    fc.property(chains, (list) => {
      const given = names(laid(12, [0, 5, 9]), list, 6);
      expect(new Set(given).size).toBe(12);
      for (const each of given) expect(Number(each.split('-')[1])).toBeLessThanOrEqual(6);
    }),
  );
});
