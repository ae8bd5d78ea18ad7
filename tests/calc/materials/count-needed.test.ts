import { describe, expect, it } from 'vitest';
import { countNeeded } from '../../../src/calc/materials/count-needed';
import { materialsInputs, noNetwork, purchasePanel } from '../../arbitraries/materials-inputs';
import { surfaceOf, surfaceSet } from '../../arbitraries/power-surfaces';

const counted = (changes: Parameters<typeof materialsInputs>[0] = {}) =>
  countNeeded(materialsInputs(changes)).map(({ itemId, needed }) => [itemId, needed]);

describe('countNeeded', () => {
  it('counts everything once, panels first', () => {
    expect(counted()).toEqual([
      ['p', 100],
      ['a', 1],
      ['box', 2],
      ['node', 1],
      ['distro', 1],
      ['c-home-run', 12],
      ['c-data-jumper', 88],
      ['c-trunk', 2],
      ['c-video', 1],
      ['c-circuit', 10],
      ['c-power-jumper', 90],
    ]);
  });

  it('counts a panel type over all surfaces, holes left out', () => {
    const surfaces = surfaceSet(
      surfaceOf({ columns: 4, rows: 3, rowPanel: (r) => (r === 3 ? 'q' : 'p'), holds: (c, r) => c > 1 || r > 1 }),
      surfaceOf({ columns: 2, rows: 2, surfaceId: 'ceiling', rowPanel: () => 'q' }),
    );
    expect(counted({ surfaces, panels: [purchasePanel('p'), purchasePanel('q')] }).slice(0, 2)).toEqual([
      ['p', 7],
      ['q', 8],
    ]);
  });

  it('keeps what is not in the catalogue on the bill, and nodes that nobody has chosen', () => {
    const gear = { processors: [{ itemId: 'gone', count: 2 }], breakouts: [], nodes: [{ itemId: null, count: 2 }] };
    const items = countNeeded(materialsInputs({ gear, panels: [] }));
    expect(items.slice(0, 3).map(({ name, needed, priceEach }) => [name, needed, priceEach])).toEqual([
      ['p', 100, null],
      ['gone', 2, null],
      ['Render node, none chosen', 2, null],
    ]);
  });

  it('has no entry for what is not needed', () => {
    const nothing = {
      runs: 0,
      returns: 0,
      panelsOnRuns: 0,
      circuits: 0,
      panelsOnCircuits: 0,
      breakouts: 0,
      video: 0,
      network: noNetwork,
    };
    const gear = { processors: [], breakouts: [], nodes: [] };
    const distroCounts = [
      { itemId: 'distro', count: 0 },
      { itemId: null, count: 0 },
    ];
    expect(counted({ surfaces: surfaceSet(), wiring: nothing, gear, distroCounts })).toEqual([]);
  });
});
