import { expect, test } from 'vitest';
import { measureWiring } from '../../../../src/calc/runs/search/measure-wiring';
import { mirrorWiring } from '../../../../src/calc/runs/search/mirror-wiring';
import { regularWirings } from '../../../../src/calc/runs/search/regular-wirings';
import { aPort, block } from './block-of-panels';

test('mirrorWiring of any regular wiring measures as the mirrored runs do', () => {
  const limits = aPort(6, 'rectangle', 600);
  const grid = block(4, 5, (place) => place !== 3 && place !== 11);
  // Column 0 becomes column 3: the holes at rows 3 and 1 of columns 0 and 2 come to columns 3 and 1.
  const other = block(4, 5, (place) => place !== 18 && place !== 6);
  const wirings = regularWirings(grid, limits);
  expect(wirings.length).toBeGreaterThan(10);
  for (const wiring of wirings) {
    const mirrored = mirrorWiring(other, wiring);
    const { order, start, pixels, tooLarge, ...measures } = measureWiring(
      other,
      limits,
      wiring.way,
      mirrored,
      mirrored.tooLarge,
    );
    expect(mirrored).toMatchObject(measures);
    expect([order, start, pixels]).toEqual([mirrored.order, mirrored.start, mirrored.pixels]);
    expect(tooLarge).toHaveLength(0);
    const turned = Array.from(wiring.order, (place) => (3 - Math.floor(place / 5)) * 5 + (place % 5));
    expect([...mirrored.order].sort()).toEqual(turned.sort());
  }
});
