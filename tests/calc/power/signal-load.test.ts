import { expect, test } from 'vitest';
import { signalLoad } from '../../../src/calc/power/signal-load';
import { breakoutOf, nodeOf, processorOf, wiredZones } from '../../arbitraries/signal-items';

test('signalLoad adds what every zone, breakout and node draws', () => {
  const inputs = {
    processors: [processorOf('a'), processorOf('b', null)],
    breakouts: [breakoutOf()],
    nodes: [nodeOf()],
    ...wiredZones([{ breakouts: 2 }, { breakouts: 1 }, { processorId: 'b' }]),
  };
  expect(signalLoad(inputs)).toBe(3 * 120 + 3 * 40 + 3 * 900);
  expect(signalLoad({ ...inputs, nodes: [] })).toBe(3 * 120 + 3 * 40);
  // A spare node runs along, ready to take over.
  expect(signalLoad({ ...inputs, spareNodes: 1 })).toBe(3 * 120 + 3 * 40 + 4 * 900);
  expect(signalLoad({ ...inputs, ...wiredZones([]) })).toBe(0);
});
