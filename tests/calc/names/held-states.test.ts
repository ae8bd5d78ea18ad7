import { expect, test } from 'vitest';
import { heldStates } from '../../../src/calc/names/held-states';
import type { LocatedChain } from '../../../src/calc/names/locate-names';

const chain = (name: string, first: number, last = first): LocatedChain => ({ name, first, last, returnName: null });
/** Names of now by panel. */
const states = (held: readonly LocatedChain[], now: readonly (string | null)[], others: readonly string[] = []) =>
  heldStates(held, (panel) => now[panel]!, new Set([...now.filter((name) => name !== null), ...others]));
const nothing = { kept: [], renamed: [], reused: [], joined: [], resting: [] };

test('heldStates finds a name in force at either end of what had it', () => {
  expect(states([chain('1A-01', 0, 1)], ['1A-01', '1A-02'])).toEqual({ ...nothing, kept: ['1A-01'] });
  expect(states([chain('1A-01', 0, 1)], ['1A-02', '1A-01'])).toEqual({ ...nothing, kept: ['1A-01'] });
});

test('heldStates says what a name is now that could not stay, and whether another has it', () => {
  const renamed = [{ name: '1A-01', now: '2A-04' }];
  expect(states([chain('1A-01', 0)], ['2A-04'])).toEqual({ ...nothing, renamed });
  expect(states([chain('1A-01', 0)], ['2A-04'], ['1A-01'])).toEqual({ ...nothing, renamed, reused: ['1A-01'] });
});

test('heldStates lets a name rest whose panels are gone', () => {
  expect(states([chain('1A-01', -1)], [])).toEqual({ ...nothing, resting: ['1A-01'] });
  expect(states([chain('1A-01', 0)], [null])).toEqual({ ...nothing, resting: ['1A-01'] });
});

test('heldStates knows what goes on under the held name of a neighbour', () => {
  const both = [chain('1A-01', 0), chain('1A-02', 1)];
  expect(states(both, ['1A-01', '1A-01'])).toEqual({ ...nothing, kept: ['1A-01'], joined: ['1A-02'] });
});

test('heldStates sees that a name whose panels are gone is in use elsewhere', () => {
  expect(states([chain('1A-01', -1)], [], ['1A-01'])).toEqual({ ...nothing, reused: ['1A-01'] });
});
