import { expect, test } from 'vitest';
import { pitchWords } from '../../../../src/ui/chapters/panels/pitch-words';

test('pitchWords gives one pitch, or across and up where they differ', () => {
  // 500 mm over 192 pixels are 2.604 mm; 337.5 mm over 130 pixels are 2.596 mm.
  expect(pitchWords({ pitchAcrossMm: 500 / 192, pitchUpMm: 500 / 192 })).toBe('2.60');
  expect(pitchWords({ pitchAcrossMm: 500 / 192, pitchUpMm: 337.5 / 130 })).toBe('2.60');
  expect(pitchWords({ pitchAcrossMm: 2.5, pitchUpMm: 2.6 })).toBe('2.50 × 2.60');
});
