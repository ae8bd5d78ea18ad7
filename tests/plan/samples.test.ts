import { expect, test } from 'vitest';
import { samplePlan } from './sample-plan';

const names = ['horseshoe', 'ring-feet', 'flat'] as const;

test.each(names)('%s says that it is invented, in its note and in every name of equipment', (name) => {
  const { name: title, note, catalogue } = samplePlan(name);
  expect(title).toContain('invented');
  expect(note).toMatch(/invented/);
  for (const items of Object.values(catalogue)) for (const item of items) expect(item.name).toContain('invented');
});

// Facts of the trade that tests check elsewhere, common practice, no source: no sample may repeat their figures.
test.each(names)('%s repeats no figure that the tests check', (name) => {
  const { walls, catalogue } = samplePlan(name);
  for (const { path, bands } of walls) {
    const columns = path.reduce((sum, segment) => sum + segment.columns, 0);
    const rows = bands.reduce((sum, band) => sum + band.rows, 0);
    expect([136, 144]).not.toContain(columns);
    expect(rows).not.toBe(13);
    expect(path.map(({ jointDeg }) => jointDeg)).not.toContain(2.5);
  }
  expect(catalogue.panels.map(({ pixels }) => pixels.wide)).not.toContain(216);
  for (const { outlets } of catalogue.processors) {
    const ports = catalogue.breakouts.find(
      ({ id }) => outlets.kind === 'breakouts' && id === outlets.breakoutId,
    )?.ports;
    expect(ports).not.toBe(10);
  }
});

test('the horseshoe is metric, on 230/400 V, under a ceiling that moves, of some 1,800 panels', () => {
  const { lengths, power, walls, ceilings } = samplePlan('horseshoe');
  expect(lengths).toBe('metric');
  expect(power.supply).toMatchObject({ kind: 'wye', legToNeutralV: 230 });
  // 9 + 57 + 9 columns of 14 rows; the ceiling's lattice is counted where ceilings are computed.
  expect(walls[0]!.path.reduce((sum, { columns }) => sum + columns, 0) * 14).toBe(1050);
  const [{ height }] = ceilings as [(typeof ceilings)[number]];
  expect(height.lowestMm).toBeLessThan(height.trimMm);
  expect(height.trimMm).toBeLessThan(height.highestMm);
});

test('the ring is in feet and inches, on 120/208 V, nearly closed, with a ceiling', () => {
  const { lengths, currency, power, walls, ceilings, catalogue } = samplePlan('ring-feet');
  expect([lengths, currency]).toEqual(['feet', 'USD']);
  expect(power).toMatchObject({ supply: { kind: 'wye', legToNeutralV: 120 }, connection: 'leg-to-leg' });
  expect(walls[0]!.path).toMatchObject([{ columns: 83, jointDeg: 4 }]);
  expect(ceilings).toHaveLength(1);
  expect(catalogue.panels.find(({ id }) => id === 'alder-25')!.size.widthMm).toBe(2 * 304.8);
});

test('the flat wall is small and stands by itself', () => {
  const { walls, ceilings } = samplePlan('flat');
  expect(ceilings).toEqual([]);
  expect(walls).toMatchObject([{ path: [{ columns: 8, jointDeg: 0 }], bands: [{ rows: 8 }] }]);
});
