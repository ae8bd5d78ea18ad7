import { expect, test } from 'vitest';
import { readOptima } from './wiring-optima';
import { worseThanProgram } from './worse-than-program';

// Source of every optimum: fixtures/reference/wiring-optima.json, computed by HiGHS from an integer program.

test('chooseWiring with fewest ports first is never worse than the integer program on the third ten of 40 zones of 13 to 15 columns with short runs', {
  timeout: 120_000,
}, () => {
  const zones = readOptima().groups.at(-1)!.zones.slice(20, 30);
  const { worse, proved } = worseThanProgram(zones);
  expect(worse).toEqual([]);
  expect(proved).toBeGreaterThanOrEqual(7);
});
