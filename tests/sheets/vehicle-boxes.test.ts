import { expect, test } from 'vitest';
import { vehicleBoxes } from '../../src/sheets/vehicle-boxes';

test('vehicleBoxes: the body is as wide and reaches as high as stated', () => {
  const [cab, body] = vehicleBoxes({ widthMm: 2400, heightMm: 3800 });
  expect(body.wideMm).toBe(2400);
  expect(body.clearMm + body.highMm).toBe(3800);
  expect(cab.clearMm + cab.highMm).toBeLessThan(3800);
  expect(body.fromMm).toBeGreaterThan(cab.fromMm + cab.longMm);
});

test('vehicleBoxes: a usual lorry where nothing is stated, and never a box of no height', () => {
  expect(vehicleBoxes({ widthMm: null, heightMm: null })[1]).toMatchObject({ wideMm: 2550, highMm: 3550 });
  for (const box of vehicleBoxes({ widthMm: 100, heightMm: 100 })) expect(box.highMm).toBeGreaterThan(0);
});
