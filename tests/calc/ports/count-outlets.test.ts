import { expect, test } from 'vitest';
import { countOutlets } from '../../../src/calc/ports/count-outlets';
import { plainBreakout, plainProcessor } from './plain-items';

// Common practice, no source: two breakouts of ten gigabit ports hang on one processor, each by one 10G fibre.
test('countOutlets gives two breakouts of ten ports their twenty ports', () => {
  expect(countOutlets(plainProcessor(), [plainBreakout()])).toEqual({
    portsAProcessor: 20,
    portsABreakout: 10,
    breakoutsAProcessor: 2,
  });
});

test('countOutlets lets a trunk carry no more lines than its rate holds', () => {
  const outlets = countOutlets(plainProcessor({ lineMbps: 2500 }), [plainBreakout()]);
  expect(outlets).toEqual({ portsAProcessor: 8, portsABreakout: 4, breakoutsAProcessor: 2 });
  // 0.3 / 0.1 is 2.999... in floating point and 3 in truth.
  expect(countOutlets(plainProcessor({ lineMbps: 1.1 }), [plainBreakout({ trunkMbps: 3.3 })]).portsABreakout).toBe(3);
});

test('countOutlets counts direct ports as they are and finds none without the breakout', () => {
  const direct = plainProcessor({}, { outlets: { kind: 'direct', ports: 16 } });
  expect(countOutlets(direct, [])).toEqual({ portsAProcessor: 16, portsABreakout: 16, breakoutsAProcessor: 0 });
  expect(countOutlets(plainProcessor(), []).portsAProcessor).toBe(0);
});
