import { expect, test } from 'vitest';
import { releaseNames } from '../../../src/plan/commands/release-names';
import type { HeldNames } from '../../../src/plan/held-names';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const at = { surfaceId: 'wall', segmentId: 'straight', column: 1, row: 1 };
const chain = (name: string) => ({ name, first: at, last: at });
const names: HeldNames = {
  processors: [
    { number: 1, at },
    { number: 2, at },
    { number: 3, at },
  ],
  ports: [chain('1A-01'), chain('1A-02'), chain('2A-01')],
  circuits: [chain('D1-1'), chain('D1-2')],
};
const plan = { ...samplePlan('flat'), names };

test('release-names lets names go, and a processor with its last port', () => {
  const after = taken(releaseNames.apply(plan, { ports: ['1A-02', '2A-01'], circuits: ['D1-1'] }));
  expect(after.names!.ports.map(({ name }) => name)).toEqual(['1A-01']);
  expect(after.names!.circuits.map(({ name }) => name)).toEqual(['D1-2']);
  // Processor 3 had no port to let go of.
  expect(after.names!.processors.map(({ number }) => number)).toEqual([1, 3]);
  expect(changedGroups(plan, after)).toEqual(['names']);
});

test('release-names of what is not held changes nothing', () => {
  expect(changedGroups(plan, taken(releaseNames.apply(plan, { ports: ['9A-01'] })))).toEqual([]);
  const free = samplePlan('flat');
  expect(taken(releaseNames.apply(free, { ports: ['1A-01'] }))).toBe(free);
});

test('release-names says one name, or how many', () => {
  expect(releaseNames.label(plan, { ports: ['1A-01'] })).toBe('let go of the name 1A-01');
  expect(releaseNames.label(plan, { ports: ['1A-01'], circuits: ['D1-1'] })).toBe('let go of 2 names');
});
