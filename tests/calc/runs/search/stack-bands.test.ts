import { expect, test } from 'vitest';
import { wireRegularly } from '../../../../src/calc/runs/search/regular-wirings';
import { stackBands } from '../../../../src/calc/runs/search/stack-bands';
import { makeReady } from '../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from './block-of-panels';

test('stackBands is as good as every regular way: fewest entries above reach, then fewest ports', () => {
  for (const [columns, rows, panels] of [
    [13, 13, 10],
    [13, 13, 11],
    [10, 14, 12],
    [7, 9, 5],
    [4, 3, 12],
  ] as const) {
    const zone = makeReady(block(columns, rows), aPort(panels));
    const bands = stackBands(zone)!;
    for (const { entriesOutOfReach, ports } of wireRegularly(zone)) {
      expect(bands.entriesOutOfReach - entriesOutOfReach || bands.ports - ports).toBeLessThanOrEqual(0);
    }
    expect([...bands.order].sort((a, b) => a - b)).toEqual(Array.from(Array(columns * rows).keys()));
  }
});

test('stackBands of 13 x 13 panels with entries no higher than row 5, ten a port, takes 17, the least possible: 169 / 10', () => {
  expect(stackBands(makeReady(block(13, 13), aPort(10)))).toMatchObject({ ports: 17, entriesOutOfReach: 0 });
});

test('stackBands is null without a panel', () => {
  expect(
    stackBands(
      makeReady(
        block(2, 2, () => false),
        aPort(10),
      ),
    ),
  ).toBeNull();
});
