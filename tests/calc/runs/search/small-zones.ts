import fc from 'fast-check';
import { makeReady, type ZoneToWire } from '../../../../src/calc/runs/search/zone-to-wire';
import type { RunLimits } from '../../../../src/calc/runs/wiring-grid';
import { aPort, block } from './block-of-panels';

/** A zone of a dozen panels at most, with holes, any reach and any port that takes at least one panel. */
export const smallZone: fc.Arbitrary<ZoneToWire> = fc
  .record({
    shape: fc.constantFrom([2, 5], [3, 3], [3, 4], [4, 3], [2, 6], [5, 2], [1, 7], [6, 2]),
    holes: fc.uniqueArray(fc.nat(11), { maxLength: 3 }),
    panels: fc.integer({ min: 1, max: 7 }),
    counting: fc.constantFrom<RunLimits['counting'][]>('panels', 'rectangle'),
    reachRows: fc.integer({ min: 0, max: 6 }),
  })
  .map(({ shape: [columns = 1, rows = 1], holes, panels, counting, reachRows }) => {
    const grid = block(columns, rows, (place) => !holes.includes(place));
    return makeReady(grid, aPort(panels, counting, reachRows * 500 - 100));
  });

/** The same without holes, as regions of one part. */
export const wholeZone: fc.Arbitrary<ZoneToWire> = smallZone.filter(({ grid }) => !grid.present.includes(0));
