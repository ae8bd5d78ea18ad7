import { describe, expect, it } from 'vitest';
import { countSignalItems } from '../../src/calc/signal-items';
import { processorOf, signalOf, wiredZones } from '../arbitraries/signal-items';

const processors = [processorOf('a'), processorOf('b', null), processorOf('c', 'other')];

describe('countSignalItems', () => {
  it('counts a processor and a node a zone, and the breakouts that carry a run', () => {
    const wired = wiredZones([
      { breakouts: 2 },
      { breakouts: 1 },
      { processorId: 'b' },
      { processorId: 'c', breakouts: 4 },
    ]);
    expect(countSignalItems({ signal: signalOf(), processors, ...wired })).toEqual({
      processors: [
        { itemId: 'a', count: 2 },
        { itemId: 'b', count: 1 },
        { itemId: 'c', count: 1 },
      ],
      breakouts: [
        { itemId: 'box', count: 3 },
        { itemId: 'other', count: 4 },
      ],
      nodes: [{ itemId: 'node', count: 4 }],
    });
  });

  it('takes a surface node where it names one, the common one where it names none', () => {
    const own = { processorId: 'a', zoneColumnsMost: null, returns: null, zonesUp: null };
    const signal = signalOf({
      bySurface: [
        { ...own, surfaceId: 'ceiling', nodeId: 'large' },
        { ...own, surfaceId: 'wall-2', nodeId: null },
      ],
    });
    const wired = wiredZones([{}, { surfaceId: 'ceiling' }, { surfaceId: 'wall-2' }]);
    expect(countSignalItems({ signal, processors, ...wired }).nodes).toEqual([
      { itemId: 'node', count: 2 },
      { itemId: 'large', count: 1 },
    ]);
  });

  it('counts nodes that nobody has chosen too', () => {
    const counted = countSignalItems({ signal: signalOf({ nodeId: null }), processors, ...wiredZones([{}, {}]) });
    expect(counted.nodes).toEqual([{ itemId: null, count: 2 }]);
  });

  it('believes the wiring before the zones, since hand changes take ports', () => {
    const wired = wiredZones([{ breakouts: 2 }]);
    const runs = { ...wired.runs, zones: wired.runs.zones.map((zone) => ({ ...zone, breakouts: 3 })) };
    expect(countSignalItems({ signal: signalOf(), processors, zones: wired.zones, runs }).breakouts).toEqual([
      { itemId: 'box', count: 3 },
    ]);
  });
});
