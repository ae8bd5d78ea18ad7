import { describe, expect, it } from 'vitest';
import { countSignalItems } from '../../src/calc/signal-items';
import { processorOf, wiredZones } from '../arbitraries/signal-items';

const processors = [processorOf('a'), processorOf('b', null), processorOf('c', 'other')];

describe('countSignalItems', () => {
  it('counts a processor and a node a zone, and the breakouts that carry a run', () => {
    const wired = wiredZones([
      { breakouts: 2 },
      { breakouts: 1 },
      { processorId: 'b' },
      { processorId: 'c', breakouts: 4 },
    ]);
    expect(countSignalItems({ processors, ...wired })).toEqual({
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

  it('counts nodes by what feeds the zones, and nodes that nobody has chosen too', () => {
    const renderNodes = [{ itemId: 'node' }, { itemId: 'large' }, { itemId: null }, { itemId: 'node' }];
    expect(countSignalItems({ processors, ...wiredZones([{}]), renderNodes }).nodes).toEqual([
      { itemId: 'node', count: 2 },
      { itemId: 'large', count: 1 },
      { itemId: null, count: 1 },
    ]);
  });

  it('counts spare nodes with those of which there are most', () => {
    const renderNodes = [{ itemId: 'large' }, { itemId: 'node' }, { itemId: 'node' }];
    const wired = { processors, ...wiredZones([{}]), spareNodes: 2 };
    expect(countSignalItems({ ...wired, renderNodes }).nodes).toEqual([
      { itemId: 'large', count: 1 },
      { itemId: 'node', count: 4 },
    ]);
    expect(countSignalItems({ ...wired, renderNodes: [] }).nodes).toEqual([]);
  });

  it('believes the wiring before the zones, since hand changes take ports', () => {
    const wired = wiredZones([{ breakouts: 2 }]);
    const runs = { ...wired.runs, zones: wired.runs.zones.map((zone) => ({ ...zone, breakouts: 3 })) };
    expect(countSignalItems({ processors, ...wired, runs }).breakouts).toEqual([{ itemId: 'box', count: 3 }]);
  });
});
