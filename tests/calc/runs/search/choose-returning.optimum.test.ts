import { expect, test } from 'vitest';
import { chooseReturning } from '../../../../src/calc/runs/search/choose-returning';
import { makeReady } from '../../../../src/calc/runs/search/zone-to-wire';
import { readOptima } from './wiring-optima';
import { gridOfCase, limitsOfCase } from './zone-case';

// Source of every optimum: fixtures/reference/wiring-optima.json, computed by HiGHS from an integer program.

test('chooseReturning brings every end within reach where the program can, on as few ports; else the entries', {
  timeout: 60_000,
}, () => {
  const worse: string[] = [];
  let both = 0;
  readOptima().groups[0]!.zones.forEach((zone, at) => {
    if (zone.entriesAlone === undefined) return;
    const grid = gridOfCase(zone);
    const limits = { ...limitsOfCase(zone), lastObeysReach: false };
    const isAllWithin = zone.best.high === 0 && makeReady(grid, limits).tooLarge.length === 0;
    if (isAllWithin) both++;
    const best = isAllWithin ? zone.best : zone.entriesAlone;
    const { chosen } = chooseReturning(grid, limits, { priority: 'fewest-ports', portsThere: 1000 });
    if (chosen.entriesOutOfReach !== best.high || chosen.ports !== best.ports) {
      const found = { high: chosen.entriesOutOfReach, ports: chosen.ports };
      worse.push(`zone ${at}, ${zone.columns} columns wide: ${JSON.stringify({ found, best })}`);
    }
  });
  expect(worse).toEqual([]);
  expect(both).toBeGreaterThan(20);
});
