import fc from 'fast-check';
import { expect, test } from 'vitest';
import { panelLayout } from '../../../../src/calc/outputs/picture/panel-layout';

test('panelLayout keeps words, line and ramps apart and inside the border, of any panel from 32 to 512 px', () => {
  const side = fc.integer({ min: 32, max: 512 });
  fc.assert(
    fc.property(side, side, (width, height) => {
      const { knot, pen, words, rampY, rampStripe } = panelLayout(width, height);
      expect(words.x).toBeGreaterThan(knot.x + pen / 2);
      expect(words.y + words.height).toBeLessThanOrEqual(knot.y);
      expect(knot.y + pen / 2).toBeLessThan(rampY);
      expect(rampY + 5 * rampStripe).toBe(height - 1);
      expect(words.x + words.width).toBeLessThan(width);
      expect(knot.x).toBeGreaterThanOrEqual(1);
    }),
  );
});
