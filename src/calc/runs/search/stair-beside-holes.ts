import { listRuns, type Runs } from './chains-to-runs';
import { measureWiring } from './measure-wiring';
import { wireRegularly } from './regular-wirings';
import { runPixels } from './run-pixels';
import { makeReady, type ZoneToWire } from './zone-to-wire';
import type { ZoneWiring } from './zone-wiring';

/** What stands above reach in each column, upwards without a gap from the lowest row that is above it. */
interface Above {
  readonly row: number;
  readonly counts: Int32Array;
}

/**
 * Wires what stands above a hole as high as reach by stairs of runs beside it: the run next to the hole comes up, goes over after
 * one panel and takes the column above the hole; the next one goes over after two and takes what the first has left of its
 * column; and so on, a step higher each, until a run has its own column whole. All else goes up by columns, or regularly where
 * it is in reach. `highMost` columns above holes that find no room for a stair may be runs of their own, from above reach. Null
 * where more would be above reach, or it is too much for a port.
 */
export function stairBesideHoles(zone: ZoneToWire, highMost = 0): ZoneWiring | null {
  const { grid, limits, tooLarge } = zone;
  const above = limits.lastObeysReach === true || tooLarge.length > 0 ? null : aboveReach(zone);
  if (above === null) return null;
  const climbs = climbsOf(zone, above, highMost);
  if (climbs === null) return null;
  const present = grid.present.slice();
  for (const place of climbs.flat()) present[place] = 0;
  const rest = makeReady({ ...grid, present }, limits);
  const [first, ...others] = wireRegularly(rest);
  const low = others.reduce((best, next) => (next.ports < best.ports ? next : best), first!);
  const runs: Runs = [...climbs];
  for (let run = 0; run < low.ports; run++) runs.push([...low.order.subarray(low.start[run]!, low.start[run + 1]!)]);
  return measureWiring(grid, limits, { kind: 'free' }, listRuns(runs), tooLarge);
}

function aboveReach({ grid, region, cellAt }: ZoneToWire): Above | null {
  const { columns, rows } = grid;
  let row = rows;
  for (let cell = 0; cell < region.size; cell++)
    if (region.outOfReach[cell] === 1) row = Math.min(row, region.row[cell]!);
  const counts = new Int32Array(columns);
  for (let cell = 0; cell < region.size; cell++) {
    if (region.row[cell]! < row) continue;
    if (region.outOfReach[cell] === 0) return null;
    counts[region.column[cell]!]!++;
  }
  if (row === 0) return null;
  for (let column = 0; column < columns; column++) {
    for (let up = 0; up < counts[column]!; up++) if (cellAt[column * rows + row + up]! < 0) return null;
  }
  return { row, counts };
}

/** The runs that lead above reach: stairs beside columns that nothing leads up in, and single columns. */
function climbsOf(zone: ZoneToWire, above: Above, highMost: number): Runs | null {
  const { columns } = zone.grid;
  const taken = new Uint8Array(columns);
  const climbs: Runs = [];
  let high = 0;
  for (let column = 0; column < columns; column++) {
    if (above.counts[column] === 0 || leadsUp(zone, above, column)) continue;
    const stair = stairFrom(zone, above, column, 1, taken) ?? stairFrom(zone, above, column, -1, taken);
    taken[column] = 1;
    if (stair === null) {
      const left = columnOf(zone, above, column, 0, above.counts[column]!);
      if (++high > highMost || !fits(zone, left)) return null;
      climbs.push(left);
      continue;
    }
    for (const run of stair) taken[Math.floor(run[0]! / zone.grid.rows)] = 1;
    climbs.push(...stair);
  }
  for (let column = 0; column < columns; column++) {
    if (taken[column] === 1 || above.counts[column] === 0) continue;
    const run = columnOf(zone, above, column, -1, above.counts[column]!);
    if (!fits(zone, run)) return null;
    climbs.push(run);
  }
  return climbs;
}

/** The stair that begins beside a column and goes away from it to one side; null where it finds no room or no end. */
function stairFrom(zone: ZoneToWire, above: Above, hole: number, side: 1 | -1, taken: Uint8Array): Runs | null {
  const { counts } = above;
  const stair: Runs = [];
  let kept = 0;
  for (let column = hole + side; column >= 0 && column < zone.grid.columns; column += side) {
    if (taken[column] === 1 || !leadsUp(zone, above, column) || counts[column]! <= kept) return null;
    const left = columnOf(zone, above, column - side, kept, counts[column - side]!);
    const whole = columnOf(zone, above, column, -1, counts[column]!);
    // Up the whole column, over at the top and down what is left beside it, where a port takes that.
    const over = counts[column] === counts[column - side] ? [...whole, ...[...left].reverse()] : [];
    if (over.length > 0 && fits(zone, over)) return [...stair, over];
    kept++;
    const step = [...columnOf(zone, above, column, -1, kept), ...left];
    if (!fits(zone, step)) return null;
    stair.push(step);
    if (kept === counts[column]) return stair;
  }
  return null;
}

function leadsUp({ grid, cellAt }: ZoneToWire, { row }: Above, column: number): boolean {
  return cellAt[column * grid.rows + row - 1]! >= 0;
}

/** Places of a column from so many rows above the last one in reach on: `from` -1 is that last one, up to `end` - 1. */
function columnOf({ grid }: ZoneToWire, { row }: Above, column: number, from: number, end: number): number[] {
  return Array.from({ length: end - from }, (_, i) => column * grid.rows + row + from + i);
}

function fits({ grid, limits }: ZoneToWire, run: readonly number[]): boolean {
  const order = Int32Array.from(run);
  return run.length <= limits.panelsMost && runPixels(grid, limits, order, 0, run.length) <= limits.usablePixels;
}
