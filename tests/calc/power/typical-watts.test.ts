import { expect, test } from 'vitest';
import { typicalWatts } from '../../../src/calc/power/typical-watts';
import { powerPanel } from '../../arbitraries/power-surfaces';

test('typicalWatts: 30 W at black and 150 W at full white come to 30 + 0.3 x 0.5 x 120 = 48 W', () => {
  expect(typicalWatts({ typicalLevel: 0.3, brightnessShare: 0.5 })(powerPanel('p'))).toBeCloseTo(48, 9);
  expect(typicalWatts({ typicalLevel: 0, brightnessShare: 1 })(powerPanel('p'))).toBe(30);
});
