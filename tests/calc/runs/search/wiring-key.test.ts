import fc from 'fast-check';
import { expect, test } from 'vitest';
import { wiringKey } from '../../../../src/calc/runs/search/wiring-key';
import type { WiringGrid } from '../../../../src/calc/runs/wiring-grid';
import { aPort, block } from './block-of-panels';

const shifted = (grid: WiringGrid, right: number, down: number): WiringGrid => ({
  ...grid,
  pixelLeft: grid.pixelLeft.map((left) => left + right),
  pixelTop: grid.pixelTop.map((top) => top + down),
});

test('wiringKey is the same for a zone elsewhere on the canvas, and for what stands where no panel is', () => {
  const grid = block(5, 4, (place) => place !== 6 && place > 3);
  expect(wiringKey(shifted(grid, 3000, 700), aPort(9))).toBe(wiringKey(grid, aPort(9)));
  const other = block(5, 4, (place) => place !== 6 && place > 3);
  other.pixelWidth[6] = 17;
  expect(wiringKey(other, aPort(9))).toBe(wiringKey(grid, aPort(9)));
});

test('wiringKey differs wherever something that the search sees does', () => {
  const change = fc.constantFrom('present', 'pixelLeft', 'pixelTop', 'pixelWidth', 'pixelHeight', 'entryHeightMm');
  fc.assert(
    fc.property(change, fc.nat(19), fc.boolean(), (field, place, holes) => {
      const grid = block(5, 4, (at) => !holes || at % 7 !== 6 || at === place);
      const other = block(5, 4, (at) => !holes || at % 7 !== 6 || at === place);
      other[field][place] = field === 'present' ? 0 : other[field][place]! + 5;
      expect(wiringKey(other, aPort(9))).not.toBe(wiringKey(grid, aPort(9)));
    }),
  );
});

test('wiringKey differs with the limits, the pitch and the shape', () => {
  const grid = block(4, 3);
  const keys = [
    wiringKey(grid, aPort(9)),
    wiringKey(grid, aPort(8)),
    wiringKey(grid, aPort(9, 'rectangle')),
    wiringKey(grid, aPort(9, 'panels', 2200)),
    wiringKey(grid, { ...aPort(9), panelsMost: 5 }),
    wiringKey(grid, { ...aPort(9), lastObeysReach: true }),
    wiringKey({ ...grid, rowPitchMm: 501 }, aPort(9)),
    wiringKey(block(3, 4), aPort(9)),
    wiringKey(block(5, 3), aPort(9)),
  ];
  expect(new Set(keys).size).toBe(keys.length);
});

test('wiringKey of columns that are alike but for a gap on the canvas tells where the gap is', () => {
  const gapBefore = (column: number) => {
    const grid = block(4, 2);
    for (let place = column * 2; place < 8; place++) grid.pixelLeft[place]! += 10;
    return wiringKey(grid, aPort(9));
  };
  expect(new Set([0, 1, 2, 3].map(gapBefore)).size).toBe(4);
});
