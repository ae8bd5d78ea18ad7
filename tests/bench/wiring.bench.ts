import { bench, describe } from 'vitest';
import { chooseWiring } from '../../src/calc/runs/search/choose-wiring';
import { createRandomBits } from '../../src/calc/runs/search/random-bits';
import { solveZones } from '../../src/calc/runs/solve-zones';
import type { WiringGrid } from '../../src/calc/runs/wiring-grid';
import { aPort, block } from '../calc/runs/search/block-of-panels';
import { boundShare } from '../calc/runs/search/bound-share';
import { readOptima } from '../calc/runs/search/wiring-optima';
import { gridOfCase, limitsOfCase } from '../calc/runs/search/zone-case';

const there = { portsThere: 20, portsABreakout: 10 };
const once = { iterations: 1, warmupIterations: 0, time: 0, warmupTime: 0 };
const some = { iterations: 3, warmupIterations: 1, time: 0, warmupTime: 0 };

/** Ten panels a port or as many pixels of rectangle; reach is up to row 5 (common practice, no source). */
const ports = { panels: aPort(10), rectangle: aPort(10, 'rectangle') };

const holed = (seed: number, columns: number, rows: number) => {
  const randomBits = createRandomBits(seed);
  return block(columns, rows, () => (randomBits() >>> 8) % 12 > 0);
};

for (const [counting, limits] of Object.entries(ports)) {
  describe(`one zone of 20 x 20, ten panels a port, ${counting} counted`, () => {
    for (const priority of ['repeats', 'fewest-ports', 'most-free', 'shortest-cable'] as const) {
      bench(`${priority} first`, () => void chooseWiring(block(20, 20), limits, { priority, ...there }), some);
      bench(
        `${priority} first, a panel in twelve missing`,
        () => void chooseWiring(holed(1, 20, 20), limits, { priority, ...there }),
        some,
      );
    }
  });
}

// Two hundred zones each unlike the others take one to three minutes: a search runs for each, and where runs of ten leave ends
// above reach that no bound proves needed it uses all its steps. A wall alike takes one search.
describe('a wall of 200 zones of 13 x 13', () => {
  const wire = (zones: readonly WiringGrid[], priority: 'repeats' | 'fewest-ports') => () => {
    const solve = solveZones();
    for (const zone of zones) solve(zone, ports.panels, { priority, ...there });
  };
  const alike = Array.from({ length: 200 }, () => block(13, 13));
  const unlike = Array.from({ length: 200 }, (_, i) => holed(i + 1, 13, 13));
  for (const priority of ['repeats', 'fewest-ports'] as const) {
    bench(`all alike, ${priority} first`, wire(alike, priority), some);
    bench(`each with other panels missing, ${priority} first`, wire(unlike, priority), once);
  }
});

describe('against the integer program and the bound: see the figures printed', () => {
  bench(
    'ports of the search over those of the integer program',
    () => {
      for (const { zones, columns, rows } of readOptima().groups) {
        const found = zones.map((zone) => {
          const terms = { priority: 'fewest-ports', portsThere: 1000 } as const;
          return chooseWiring(gridOfCase(zone), limitsOfCase(zone), terms).chosen;
        });
        const sum = (figures: readonly number[]) => figures.reduce((all, each) => all + each, 0);
        const best = sum(zones.map((zone) => zone.best.ports));
        const high = sum(found.map((wiring) => wiring.entriesOutOfReach)) - sum(zones.map((zone) => zone.best.high));
        const ratio = sum(found.map((wiring) => wiring.ports)) / best;
        console.log(`${zones.length} zones of ${columns} x ${rows}: ratio ${ratio}, ends above reach ${high} more`);
      }
    },
    once,
  );
  bench(
    'share of 200 rectangles up to 40 x 20 on which the bound is reached',
    () => {
      for (const counting of ['panels', 'rectangle'] as const) {
        for (const reachMm of [Number.POSITIVE_INFINITY, 2100]) {
          console.log(counting, reachMm, boundShare({ seed: 1, many: 200, counting, reachMm }));
        }
      }
    },
    once,
  );
});
