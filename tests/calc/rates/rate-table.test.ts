import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { rateTable, rowsOfRates } from '../../../src/calc/rates/rate-table';
import { samplePlan } from '../../arbitraries/sample-plans';

const plan = samplePlan('flat');

test('rowsOfRates has the usual eight and the own rate once, slowest first', () => {
  const own = {
    ...plan,
    picture: { ...plan.picture, base: { ...plan.picture.base, rate: { frames: 24_000, seconds: 1001 } } },
  };
  const hertz = rowsOfRates(own).map(({ frames, seconds }) => frames / seconds);
  expect(hertz).toEqual([...hertz].sort((a, b) => a - b));
  expect(hertz.filter((rate) => Math.abs(rate - 23.976) < 0.001)).toHaveLength(1);
  expect(hertz).toEqual(expect.arrayContaining([24, 25, 30, 48, 50, 60, 100, 120]));
});

test('rateTable never carries more panels on a port at a faster rate or a greater depth', () => {
  const cells = [...rateTable(plan, null, createEvaluator().evaluate)];
  expect(cells).toHaveLength(rowsOfRates(plan).length * 3);
  for (const a of cells) {
    for (const b of cells) {
      const faster = a.mode.rate.frames / a.mode.rate.seconds >= b.mode.rate.frames / b.mode.rate.seconds;
      if (faster && a.mode.depthBits >= b.mode.depthBits) expect(a.panelsAPort!).toBeLessThanOrEqual(b.panelsAPort!);
    }
  }
  expect(cells.filter(({ current }) => current)).toHaveLength(1);
});
