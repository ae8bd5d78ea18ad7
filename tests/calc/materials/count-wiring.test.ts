import { expect, test } from 'vitest';
import type { LinksResults } from '../../../src/calc/links/link-result';
import { countWiring } from '../../../src/calc/materials/count-wiring';
import { stageFixture } from '../../arbitraries/evaluation-fixture';
import { noNetwork } from '../../arbitraries/materials-inputs';

const links = (...each: readonly { readonly outputs: number; readonly cables: number }[]) =>
  ({ surfaces: each }) as unknown as LinksResults;

// One wall of 5 columns and 3 rows, zones of 3 columns: 2 zones, 15 panels, a circuit a column.
const { runs, power } = stageFixture({ columns: 5, rows: 3, jointDeg: 0, zoneColumns: 3 });
const count = (given: LinksResults) => countWiring(runs, power, given, noNetwork, 15);

test('countWiring counts runs, circuits and the panels on them', () => {
  const counts = count(links({ outputs: 2, cables: 2 }));
  expect(counts).toMatchObject({
    panels: 15,
    panelsOnRuns: 15,
    panelsOnCircuits: 15,
    circuits: 5,
    video: 2,
    returns: 0,
  });
  expect(counts.runs).toBe(runs.runs.length);
  expect(counts.network).toBe(noNetwork);
});

test('countWiring counts all cables of a link of several, and one an output where no link carries the canvas', () => {
  // 2 outputs of four cables each, and 3 outputs without a link.
  expect(count(links({ outputs: 2, cables: 8 }, { outputs: 3, cables: 0 })).video).toBe(11);
});
