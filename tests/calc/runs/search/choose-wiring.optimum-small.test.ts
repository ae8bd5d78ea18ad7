import { expect, test } from 'vitest';
import { readOptima } from './wiring-optima';
import { worseThanProgram } from './worse-than-program';

// Source of every optimum: fixtures/reference/wiring-optima.json, computed by HiGHS from an integer program.

test('chooseWiring with fewest ports first is never worse than the integer program on 300 zones of up to 7 x 7', {
  timeout: 60_000,
}, () => {
  const { zones } = readOptima().groups[0]!;
  expect(zones.length).toBe(300);
  const { worse, proved } = worseThanProgram(zones);
  expect(worse).toEqual([]);
  expect(proved).toBe(300);
});
