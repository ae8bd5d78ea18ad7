import type { Lines } from '../../src/sheets/drawing';
import { type From, layOutUnrolled, type UnrolledGrid } from '../../src/sheets/unrolled-grid';
import { type FixtureOptions, stageFixture } from '../arbitraries/evaluation-fixture';

/** The polylines of a set, each as its points. */
export function polylines({ xyMm, ends }: Lines): number[][][] {
  const found: number[][][] = [];
  let point = 0;
  for (const end of ends) {
    const line: number[][] = [];
    for (; point < end; point++) line.push([xyMm[point * 2]!, xyMm[point * 2 + 1]!]);
    found.push(line);
  }
  return found;
}

/** Sum of the lengths of all polylines, without the closing sides. */
export function lengthOf(lines: Lines): number {
  let length = 0;
  for (const line of polylines(lines)) {
    line.forEach(([x, y], i) => {
      const before = line[i - 1];
      if (before !== undefined) length += Math.hypot(x! - before[0]!, y! - before[1]!);
    });
  }
  return length;
}

/** The fixture's wall laid flat in one strip: its top at y 1000, columns from x 0. */
export function flatGrid(options: Partial<FixtureOptions>, from: From = 'inside'): UnrolledGrid {
  const parts = stageFixture({ columns: 3, rows: 2, jointDeg: 0, ...options });
  const table = parts.surfaces.surfaces[0]!;
  return layOutUnrolled(table, from, [{ firstColumn: 1, columns: table.columns }], { aboveMm: 1000, belowMm: 1500 });
}
