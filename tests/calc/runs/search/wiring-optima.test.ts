import { writeFileSync } from 'node:fs';
import loadHighs from 'highs';
import { expect, test } from 'vitest';
import { caseGroups, casesOfGroup, optimaPath, readOptima, solveCase, writeOptima } from './wiring-optima';

const renew = process.env.VOUSSOIR_RENEW_OPTIMA !== undefined;

test.runIf(renew)('the optima are computed anew', { timeout: 3_600_000 }, async () => {
  writeFileSync(optimaPath, writeOptima(await loadHighs()));
});

const optima = readOptima();

test('the optima are of more than 300 zones with everything that makes wiring hard', () => {
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

test('the optima are of the zones that their seeds draw', () => {
  for (const [at, many] of [
    [0, 40],
    [4, 3],
  ] as const) {
    const drawn = casesOfGroup({ ...caseGroups[at]!, many });
    expect(optima.groups[at]!.zones.slice(0, many)).toMatchObject(drawn);
  }
  expect(optima.groups.map(({ zones, ...group }) => [group, zones.length])).toEqual(
    caseGroups.map((group) => [group, group.many]),
  );
});

test('the optima are what the program gives today, by a sample', async () => {
  const highs = await loadHighs();
  for (const zone of optima.groups[0]!.zones.slice(0, 12)) {
    const { best: _best, entriesAlone: _entriesAlone, ...asked } = zone;
    expect(solveCase(highs, asked)).toEqual(zone);
  }
});
