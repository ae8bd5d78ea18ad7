import fc from 'fast-check';
import { expect, it } from 'vitest';
import { scaleBarMm } from '../../src/sheets/scale-bar';

it.each([
  // 150 px at 0.06 px a mm are 2500 mm.
  [0.06, 'metric', 2000],
  [0.03, 'metric', 5000],
  [0.3, 'metric', 500],
  // 2500 mm are 8.2 ft, so 5 ft = 1524 mm; 250 mm are 0.82 ft, so half a foot.
  [0.06, 'feet', 1524],
  [0.6, 'feet', 152.4],
] as const)('scaleBarMm at %f px a mm in %s lengths is %f mm', (scale, lengths, mm) => {
  expect(scaleBarMm(scale, 150, lengths)).toBeCloseTo(mm, 9);
});

it('scaleBarMm fits its room and takes at least 2 fifths of it', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.0005, max: 1, noNaN: true }), (scale) => {
      const px = scaleBarMm(scale, 150, 'metric') * scale;
      expect(px).toBeLessThanOrEqual(150 + 1e-9);
      expect(px).toBeGreaterThanOrEqual(60 - 1e-9);
    }),
  );
});
