import { expect, test } from 'vitest';
import { statesOfCircuits } from '../../../src/calc/names/states-of-circuits';
import { computePower } from '../../../src/calc/power/compute-power';
import { powerInputs } from '../../arbitraries/power-inputs';

test('statesOfCircuits judges circuits by the names that their panels have', () => {
  const results = computePower(powerInputs());
  const [first, second] = results.circuits;
  const chain = (name: string, panel: number) => ({ name, first: panel, last: panel, returnName: null });
  const held = [
    chain(first!.name, results.order[first!.start]!),
    chain('D7-1', results.order[second!.start]!),
    chain('D8-1', -1),
  ];
  expect(statesOfCircuits(held, results)).toEqual({
    kept: [first!.name],
    renamed: [{ name: 'D7-1', now: second!.name }],
    reused: [],
    joined: [],
    resting: ['D8-1'],
  });
});
