import { describe, expect, test } from 'vitest';
import { chooseWiring } from '../../../../src/calc/runs/search/choose-wiring';
import { aPort, block } from './block-of-panels';

const twoBreakouts = { portsThere: 20, portsABreakout: 10 };

function panelsOfRuns({ start }: { start: Int32Array }): number[] {
  return Array.from(start.subarray(1), (end, run) => end - start[run]!).sort((a, b) => b - a);
}

describe('chooseWiring of 13 x 13 panels, entries no higher than row 5 (common practice, no source)', () => {
  test('takes 20 ports by single columns from row 5 up and columns folded two by two below: 13 of 9, 6 of 8, one of 4', () => {
    const { chosen } = chooseWiring(block(13, 13), aPort(10), { priority: 'repeats', ...twoBreakouts });
    expect(chosen.entriesOutOfReach).toBe(0);
    expect(panelsOfRuns(chosen)).toEqual([...Array(13).fill(9), ...Array(6).fill(8), 4]);
  });

  test('reaches 17 ports, the least possible, with fewest ports first; and 16 with 11 panels to a port', () => {
    // 169 / 10 is 16.9, 169 / 11 is 15.4.
    for (const [panels, least] of [
      [10, 17],
      [11, 16],
    ] as const) {
      const answer = chooseWiring(block(13, 13), aPort(panels), { priority: 'fewest-ports', ...twoBreakouts });
      expect(answer).toMatchObject({ least, chosen: { ports: least, entriesOutOfReach: 0 } });
    }
  });
});

test.each(['repeats', 'fewest-ports', 'most-free', 'shortest-cable'] as const)(
  'chooseWiring with %s first puts every panel on one run of neighbours within the port',
  (priority) => {
    const grid = block(6, 9, (place) => place !== 13 && place !== 14);
    const { chosen } = chooseWiring(grid, aPort(7), { priority, ...twoBreakouts });
    const there = Array.from(grid.present.keys()).filter((place) => grid.present[place] === 1);
    expect([...chosen.order].sort((a, b) => a - b)).toEqual(there);
    for (let run = 0; run < chosen.ports; run++) {
      const places = chosen.order.subarray(chosen.start[run]!, chosen.start[run + 1]!);
      expect(places.length).toBeLessThanOrEqual(7);
      for (let i = 1; i < places.length; i++) {
        const across = Math.abs(Math.floor(places[i]! / 9) - Math.floor(places[i - 1]! / 9));
        const up = Math.abs((places[i]! % 9) - (places[i - 1]! % 9));
        expect(across + up).toBe(1);
      }
    }
  },
);

test('chooseWiring of a mirrored zone has the mirrored figures: same ports, figures and fullest', () => {
  const holes = (place: number) => place !== 3 && place !== 20;
  const mirrored = (place: number) => holes((4 - Math.floor(place / 6)) * 6 + (place % 6));
  const of = (isThere: (place: number) => boolean) =>
    chooseWiring(block(5, 6, isThere), aPort(6), { priority: 'repeats', ...twoBreakouts }).chosen;
  const { ports, figures, fullestPixels } = of(holes);
  expect(of(mirrored)).toMatchObject({ ports, figures, fullestPixels });
});

// Common practice, no source: a quarter of a ceiling, wired from above, hangs on 13 or 14 ports with eight or nine panels each.
test.each([
  // 13 columns of nine are 117 panels, 14 columns of eight are 112.
  { columns: 13, rows: 9, panelsAPort: 9, ports: 13 },
  { columns: 14, rows: 8, panelsAPort: 8, ports: 14 },
])(
  'chooseWiring of a ceiling zone takes $ports ports of $panelsAPort panels',
  ({ columns, rows, panelsAPort, ports }) => {
    const limits = aPort(panelsAPort, 'panels', Number.POSITIVE_INFINITY);
    const { chosen } = chooseWiring(block(columns, rows), limits, { priority: 'repeats', portsThere: 14 });
    expect(chosen).toMatchObject({ ports, fewestPanels: panelsAPort, mostPanels: panelsAPort, figures: 1 });
  },
);
