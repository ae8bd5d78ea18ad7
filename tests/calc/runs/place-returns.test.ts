import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type PortOutlets, runsAProcessor } from '../../../src/calc/ports/outlets';
import { placeReturns } from '../../../src/calc/runs/place-returns';

const boxes = (returns: PortOutlets['returns'], breakouts = 2, portsABreakout = 10): PortOutlets => ({
  portsAProcessor: breakouts * portsABreakout,
  portsABreakout,
  breakoutsAProcessor: breakouts,
  returns,
});
const backs = (runs: readonly number[], outlets: PortOutlets) =>
  placeReturns(runs, outlets).map((zone) => zone.map(({ out, back }) => [out, back?.zone ?? -1, back?.slot ?? -1]));

test('placeReturns without returns gives every run the next port', () => {
  expect(backs([2, 1], boxes('none'))).toEqual([
    [
      [0, -1, -1],
      [1, -1, -1],
    ],
    [[0, -1, -1]],
  ]);
});

test('placeReturns to a second port takes ports two by two', () => {
  expect(backs([3], boxes('port'))).toEqual([
    [
      [0, 0, 1],
      [2, 0, 3],
      [4, 0, 5],
    ],
  ]);
});

test('placeReturns to another breakout takes the same number of the breakout paired with it', () => {
  // Ports A-01 and B-01 are slots 0 and 10, C-02 and D-02 slots 21 and 31.
  const [slots] = backs([12], boxes('breakout', 4)) as [number[][]];
  expect(slots).toHaveLength(12);
  // Twelve runs fit on three breakouts, which share: five out of A back to the upper half of B, five out of B back to C, two of C to A.
  expect([slots[0], slots[5], slots[10]]).toEqual([
    [0, 0, 15],
    [10, 0, 25],
    [20, 0, 5],
  ]);
  const [sixteen] = backs([16], boxes('breakout', 4)) as [number[][]];
  expect([sixteen[0], sixteen[9], sixteen[10], sixteen[15]]).toEqual([
    [0, 0, 10],
    [9, 0, 19],
    [20, 0, 30],
    [25, 0, 35],
  ]);
});

test('placeReturns to another processor pairs the zones, the last three in a round, guests on a breakout of their own', () => {
  const placed = backs([10, 10, 10, 10, 10], boxes('processor'));
  expect(placed.map(([first]) => first)).toEqual([
    [0, 1, 10],
    [0, 0, 10],
    [0, 3, 10],
    [0, 4, 10],
    [0, 2, 10],
  ]);
  // Three and two runs: one breakout each holds both, so the guests follow right behind.
  expect(backs([3, 2], boxes('processor'))).toEqual([
    [
      [0, 1, 2],
      [1, 1, 3],
      [2, 1, 4],
    ],
    [
      [0, 0, 3],
      [1, 0, 4],
    ],
  ]);
});

test('placeReturns falls back where there is no second processor, and no second breakout', () => {
  expect(backs([1], boxes('processor'))).toEqual([[[0, 0, 10]]]);
  expect(backs([1], boxes('processor', 1))).toEqual([[[0, 0, 1]]]);
  expect(backs([1], boxes('breakout', 1))).toEqual([[[0, 0, 1]]]);
});

test('placeReturns gives every run ports of its own within what there is, and another breakout where there is one', () => {
  const returns = fc.constantFrom<PortOutlets['returns']>('none', 'port', 'breakout', 'processor');
  const shape = fc.tuple(returns, fc.integer({ min: 1, max: 7 }), fc.integer({ min: 1, max: 16 }));
  fc.assert(
    fc.property(
      shape,
      fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 6 }),
      ([kind, n, ports], shares) => {
        const outlets = boxes(kind, n, ports);
        const runs = shares.map((share) => Math.floor(share * runsAProcessor(outlets)));
        const used = new Set<string>();
        const box = (slot: number) => Math.floor(slot / ports);
        placeReturns(runs, outlets).forEach((zone, z) => {
          expect(zone).toHaveLength(runs[z]!);
          for (const { out, back } of zone) {
            const taken = [`${z}/${out}`, ...(back === null ? [] : [`${back.zone}/${back.slot}`])];
            for (const name of taken) {
              expect(used.has(name)).toBe(false);
              used.add(name);
            }
            expect(Math.max(out, back?.slot ?? 0)).toBeLessThan(outlets.portsAProcessor);
            if (kind === 'none') expect(back).toBeNull();
            if (kind === 'breakout' && n >= 2) expect(box(out)).not.toBe(box(back!.slot));
            if (kind === 'processor' && runs.length > 1) expect(back!.zone).not.toBe(z);
          }
        });
      },
    ),
  );
});
