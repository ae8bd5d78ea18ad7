import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { breakoutsForRuns, type PortOutlets, portsARun, runsAProcessor } from '../../../src/calc/ports/outlets';

const boxes = (returns: PortOutlets['returns'], breakouts: number, portsABreakout: number): PortOutlets => ({
  portsAProcessor: breakouts * portsABreakout,
  portsABreakout,
  breakoutsAProcessor: breakouts,
  returns,
});

test('portsARun is one, and two with a return', () => {
  expect(portsARun({ returns: 'none' })).toBe(1);
  expect((['port', 'breakout', 'processor'] as const).map((returns) => portsARun({ returns }))).toEqual([2, 2, 2]);
});

describe('runsAProcessor', () => {
  it('counts every port without returns and half of them with', () => {
    expect(runsAProcessor(boxes('none', 2, 10))).toBe(20);
    expect(runsAProcessor(boxes('port', 2, 10))).toBe(10);
    expect(runsAProcessor(boxes('breakout', 2, 10))).toBe(10);
    expect(runsAProcessor(boxes('processor', 2, 10))).toBe(10);
  });

  it('shares an odd breakout among three: 3 x 10 ports are 15 runs, each of the three with five out and five back', () => {
    expect(runsAProcessor(boxes('breakout', 3, 10))).toBe(15);
    expect(runsAProcessor(boxes('breakout', 5, 10))).toBe(25);
  });

  it('takes a second port where there is no other breakout', () => {
    expect(runsAProcessor(boxes('breakout', 1, 10))).toBe(5);
    expect(
      runsAProcessor({ portsAProcessor: 17, portsABreakout: 17, breakoutsAProcessor: 0, returns: 'processor' }),
    ).toBe(8);
  });
});

describe('breakoutsForRuns', () => {
  it('needs two breakouts for one run that returns to another', () => {
    expect(breakoutsForRuns(1, boxes('port', 2, 10))).toBe(1);
    expect(breakoutsForRuns(1, boxes('breakout', 2, 10))).toBe(2);
    expect(breakoutsForRuns(0, boxes('breakout', 2, 10))).toBe(0);
  });

  it('is none on direct ports', () => {
    expect(
      breakoutsForRuns(4, { portsAProcessor: 8, portsABreakout: 8, breakoutsAProcessor: 0, returns: 'port' }),
    ).toBe(0);
  });

  it('is enough for every number of runs that a processor takes, and never fewer than the ports ask', () => {
    const returns = fc.constantFrom<PortOutlets['returns']>('none', 'port', 'breakout', 'processor');
    fc.assert(
      fc.property(
        returns,
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: 1, max: 24 }),
        (kind, breakouts, ports) => {
          const outlets = boxes(kind, breakouts, ports);
          for (let runs = 1; runs <= runsAProcessor(outlets); runs++) {
            const needed = breakoutsForRuns(runs, outlets);
            expect(needed).toBeLessThanOrEqual(breakouts);
            expect(needed * ports).toBeGreaterThanOrEqual(runs * portsARun(outlets));
          }
        },
      ),
    );
  });
});
