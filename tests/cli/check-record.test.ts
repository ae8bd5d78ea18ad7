import { expect, test } from 'vitest';
import { checkRecord } from '../../src/cli/check-record';
import { checkOf, headline, smallStage } from './small-stage';

const options = { lengths: 'metric', locale: 'en-GB', currency: 'EUR' } as const;

test('checkRecord has the seven parts, and the headline as it was computed', () => {
  const record = checkRecord(smallStage, options);
  expect(Object.keys(record)).toEqual(['headline', 'checks', 'surfaces', 'zones', 'runs', 'circuits', 'legs']);
  expect(record.headline).toEqual(headline);
});

test('checkRecord names the panels of a run in their order, entry first, and its zone', () => {
  const [run] = checkRecord(smallStage, options).runs;
  expect(run).toEqual({
    surface: 'A',
    zone: 1,
    port: '1-01',
    returnPort: null,
    pixels: 20_000,
    share: 0.0308,
    panels: ['C2 R1', 'C1 R1'],
  });
});

test('checkRecord names the panels of a circuit in their order, entry first, and its leg', () => {
  const [circuit] = checkRecord(smallStage, options).circuits;
  expect(circuit).toMatchObject({ distro: 1, leg: 'L1', panels: ['C1 R1', 'C2 R1'], currentA: 1.37, limitA: 12.8 });
});

test('checkRecord gives a zone its surface, processor, canvas and number of panels', () => {
  const [zone] = checkRecord(smallStage, options).zones;
  expect(zone).toMatchObject({ surface: 'A', processor: 1, canvasWidth: 200, canvasHeight: 100, panels: 2 });
});

test('checkRecord gives the legs with the neutral, and a surface with what its form has no figure for as null', () => {
  const record = checkRecord(smallStage, options);
  expect(record.legs).toEqual([
    { leg: 'L1', currentA: 1.37, limitA: 63 },
    { leg: 'N', currentA: 1.37, limitA: null },
  ]);
  expect(record.surfaces).toEqual([
    expect.objectContaining({ surface: 'A', kind: 'wall', panels: 2, columns: 2, rows: 1, pixels: 20_000 }),
  ]);
  expect(record.surfaces[0]).toMatchObject({ insideDiameterMm: null, openingMm: null });
});

test('checkRecord writes the figures into a check’s sentence and keeps them as numbers beside it', () => {
  const [line] = checkRecord({ ...smallStage, checks: [checkOf({})] }, options).checks;
  expect(line).toEqual({
    id: 'runs.reach',
    chapter: 'runs',
    severity: 'stop',
    measured: 2500,
    limit: 2100,
    unit: 'mm',
    where: [{ kind: 'port', name: 'port 1-01' }],
    sentence: 'An entry stands at 2.50 m; a hand reaches 2.10 m.',
    fix: null,
  });
});

test('checkRecord says what a check’s repair would do', () => {
  const fix = {
    label: 'Free 5 % of each port',
    command: { name: 'set-fields', args: { fields: [{ path: ['signal', 'freeShare'], value: 0.05 }] } },
  } as const;
  const [line] = checkRecord({ ...smallStage, checks: [checkOf({ fix })] }, options).checks;
  expect(line?.fix).toBe('Free 5 % of each port');
});

test('checkRecord goes through JSON unchanged', () => {
  const record = checkRecord({ ...smallStage, checks: [checkOf({ measured: null })] }, options);
  expect(JSON.parse(JSON.stringify(record))).toEqual(record);
});
