import { expect, test } from 'vitest';
import { reducedBlanking2 } from '../../../src/calc/links/reduced-blanking-2';
import { publishedTimings } from './published-timings';

const published = publishedTimings('reduced-2');

// Source: fixtures/reference/cvt-timings.json, printed by an outside program, the command in every row.
test.each(published)('reducedBlanking2 prints what the program prints: $command', (row) => {
  const timing = reducedBlanking2(row.width, row.height, row.rate)!;
  expect([timing.totalWidth, timing.totalHeight]).toEqual([row.hTotal, row.vTotal]);
  expect(Math.round(timing.pixelClockHz / 1000)).toBe(row.clockKHz);
});

test('reducedBlanking2 is held against a hundred timings and more, odd sizes and x1000/1001 rates among them', () => {
  expect(published.length).toBeGreaterThan(100);
  expect(published.filter(({ width }) => width === 2808).length).toBeGreaterThan(10);
  expect(published.filter(({ width, height }) => width % 8 > 0 && height % 2 > 0).length).toBeGreaterThan(3);
  expect(published.filter(({ seconds }) => seconds === 1001).length).toBeGreaterThan(20);
});

// Handbook: 2808 x 2808 at 60 and 10 bit is some 500 MHz of pixel clock.
test('reducedBlanking2 of 2808 x 2808 at 60 asks 500.432 MHz', () => {
  expect(reducedBlanking2(2808, 2808, { frames: 60, seconds: 1 })?.pixelClockHz).toBe(500_432_000);
});
