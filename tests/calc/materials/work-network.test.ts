import { evaluate } from 'mathjs';
import { expect, test } from 'vitest';
import { workNetwork } from '../../../src/calc/materials/work-network';
import { noNetwork } from '../../arbitraries/materials-inputs';

test('workNetwork prints lines that a maths library evaluates to the counts', () => {
  // 9 devices and 2 splitters; 2 switches, joined by one cable.
  const plain = { devices: 9, references: 1, splitters: 2, syncCables: 11, switches: 2, networkCables: 10 };
  // Over the network: one cable more, from the reference.
  const timed = { ...plain, splitters: 0, syncCables: 0, networkCables: 11 };
  for (const [counts, values] of [
    [plain, [11, 10]],
    [timed, [11]],
  ] as const) {
    const steps = workNetwork(counts);
    expect(steps.map(({ value }) => value)).toEqual(values);
    for (const { expression, numbers, value } of steps) expect(evaluate(expression, { ...numbers })).toBe(value);
  }
});

test('workNetwork of a stage without devices has no step', () => {
  expect(workNetwork(noNetwork)).toEqual([]);
});
