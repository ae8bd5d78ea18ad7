import { expect, test } from 'vitest';
import { coordinatedTiming } from '../../../src/calc/tables/coordinated-timing';
import { fixedModes, fixedModesSource } from '../../../src/calc/tables/fixed-modes';

test('fixedModes run at the rate that they are called by, to four parts in a thousand', () => {
  for (const { frames, seconds, totalWidth, totalHeight, pixelClockHz, standard } of fixedModes) {
    const asked = frames / seconds;
    const found = pixelClockHz / totalWidth / totalHeight;
    expect(Math.abs(found / asked - 1)).toBeLessThan(standard === 'cta' ? 1e-12 : 4e-3);
  }
  expect(fixedModes.filter(({ standard }) => standard === 'cta')).toHaveLength(72);
});

test('fixedModes and the figures of CVT name their sources', () => {
  expect(fixedModesSource).toContain('CTA-861');
  expect(coordinatedTiming.source).toContain('VESA CVT 1.2');
});
