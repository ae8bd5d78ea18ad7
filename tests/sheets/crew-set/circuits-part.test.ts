import { expect, test } from 'vitest';
import { cautions } from '../../../src/calc/cautions';
import { circuitsPart } from '../../../src/sheets/crew-set/circuits-part';
import { stageFixture } from '../../arbitraries/evaluation-fixture';
import { cells } from '../cells';
import { tablesOf, textsOf } from './sample-set';

/** Nine columns of four panels, each on a circuit; the last three moved to a second distro. */
const stage = stageFixture({ columns: 9, rows: 4, jointDeg: 0 });
const circuits = stage.power.circuits.map((circuit, i) => (i < 6 ? circuit : { ...circuit, distro: 2 }));
const parts = { ...stage, power: { ...stage.power, circuits } };

test('circuitsPart has the legs, then a table of circuits for each distro with its own sums', () => {
  const tables = tablesOf(circuitsPart(parts)!);
  expect(tables.map(({ title }) => title)).toEqual(['Legs and bonding', 'Distro 1', 'Distro 2']);
  expect(cells(tables[1]!.schedule, 'totals').panels).toBe(24);
  expect(cells(tables[2]!.schedule, 'totals').panels).toBe(12);
  expect(cells(tables[2]!.schedule, 0).circuit).toBe(circuits[6]!.name);
  expect(Object.keys(cells(tables[1]!.schedule, 0))).not.toContain('distro');
});

test('circuitsPart carries the caution of electricity on every page', () => {
  const part = circuitsPart(parts)!;
  expect(part.sheets.map(({ caution }) => caution)).toEqual([cautions.electricity]);
  expect(textsOf(part)).toEqual([cautions.electricity]);
});

test('circuitsPart without circuits is none', () => {
  expect(circuitsPart({ ...parts, power: { ...parts.power, circuits: [] } })).toBeNull();
});
