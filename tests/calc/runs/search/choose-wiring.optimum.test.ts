import { writeFileSync } from 'node:fs';
import loadHighs from 'highs';
import { describe, expect, test } from 'vitest';
import { chooseReturning } from '../../../../src/calc/runs/search/choose-returning';
import { chooseWiring } from '../../../../src/calc/runs/search/choose-wiring';
import { makeReady } from '../../../../src/calc/runs/search/zone-to-wire';
import {
  type CaseGroup,
  caseGroups,
  casesOfGroup,
  type Optimum,
  optimaPath,
  readOptima,
  solveCase,
  writeOptima,
} from './wiring-optima';
import { gridOfCase, limitsOfCase } from './zone-case';

// Source of every optimum: fixtures/reference/wiring-optima.json, computed by HiGHS from an integer program.

const renew = process.env.VOUSSOIR_RENEW_OPTIMA !== undefined;
const terms = { priority: 'fewest-ports', portsThere: 1000 } as const;

test.runIf(renew)('the optima are computed anew', { timeout: 3_600_000 }, async () => {
  writeFileSync(optimaPath, writeOptima(await loadHighs()));
});

const optima = readOptima();
const groupOf = ({ columns, rows }: CaseGroup) => `${columns.join(' to ')} columns of ${rows.join(' to ')} rows`;
const sizeOf = (at: number, zone: { columns: number }) => `zone ${at}, ${zone.columns} columns wide`;

describe('chooseWiring with fewest ports first is never worse than the integer program', () => {
  test.each(optima.groups.map((group) => [group.many, groupOf(group), group] as const))(
    'on %i random zones of %s',
    { timeout: 300_000 },
    (_many, _size, { zones }) => {
      const worse: string[] = [];
      zones.forEach((zone, at) => {
        const { chosen, least } = chooseWiring(gridOfCase(zone), limitsOfCase(zone), terms);
        const found: Optimum = { high: chosen.entriesOutOfReach, ports: chosen.ports };
        const isAlike = found.high === zone.best.high && found.ports === zone.best.ports;
        if (!isAlike || least > zone.best.ports) {
          worse.push(`${sizeOf(at, zone)}: ${JSON.stringify({ found, best: zone.best, least })}`);
        }
      });
      expect(worse).toEqual([]);
    },
  );
});

test('chooseReturning brings every end within reach where the program can, on as few ports; else the entries', () => {
  const worse: string[] = [];
  let both = 0;
  const { zones } = optima.groups[0]!;
  zones.forEach((zone, at) => {
    if (zone.entriesAlone === undefined) return;
    const grid = gridOfCase(zone);
    const limits = { ...limitsOfCase(zone), lastObeysReach: false };
    const isAllWithin = zone.best.high === 0 && makeReady(grid, limits).tooLarge.length === 0;
    if (isAllWithin) both++;
    const best = isAllWithin ? zone.best : zone.entriesAlone;
    const { chosen } = chooseReturning(grid, limits, terms);
    if (chosen.entriesOutOfReach !== best.high || chosen.ports !== best.ports) {
      const found = { high: chosen.entriesOutOfReach, ports: chosen.ports };
      worse.push(`${sizeOf(at, zone)}: ${JSON.stringify({ found, best })}`);
    }
  });
  expect(worse).toEqual([]);
  expect(both).toBeGreaterThan(20);
});

describe('the optima', () => {
  test('are of more than 300 zones with everything that makes wiring hard', () => {
    const zones = optima.groups.flatMap((group) => group.zones);
    const share = (has: (zone: (typeof zones)[number]) => boolean) => zones.filter(has).length / zones.length;
    expect(zones.length).toBeGreaterThanOrEqual(300);
    expect(share(({ holes }) => holes.length > 0)).toBeGreaterThan(0.5);
    expect(
      share(({ bands }) => new Set(bands.map((band) => band.pixelsWide * band.pixelsHigh)).size > 1),
    ).toBeGreaterThan(0.25);
    expect(share(({ reachMm }) => reachMm !== null)).toBeGreaterThan(0.5);
    expect(share(({ returns }) => returns)).toBeGreaterThan(0.25);
    expect(share(({ counting }) => counting === 'rectangle')).toBeGreaterThan(0.4);
    expect(share(({ best }) => best.high === 0)).toBeGreaterThan(0.25);
  });

  test('are of the zones that their seeds draw', () => {
    const drawn = casesOfGroup({ ...caseGroups[0]!, many: 40 });
    expect(optima.groups[0]!.zones.slice(0, 40)).toMatchObject(drawn);
    expect(optima.groups.map(({ zones, ...group }) => [group, zones.length])).toEqual(
      caseGroups.map((group) => [group, group.many]),
    );
  });

  test('are what the program gives today, by a sample', async () => {
    const highs = await loadHighs();
    for (const zone of optima.groups[0]!.zones.slice(0, 12)) {
      const { best: _best, entriesAlone: _entriesAlone, ...asked } = zone;
      expect(solveCase(highs, asked)).toEqual(zone);
    }
  });
});
