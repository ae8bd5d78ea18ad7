import type { LegacyHighs as Highs } from 'highs';
import type { RunLimits, WiringGrid } from '../../../../src/calc/runs/wiring-grid';

/** A set of panels that one run can hold, and the fewest ends above reach that a run over it can have. */
interface Holding {
  readonly places: readonly number[];
  high: number;
}

/**
 * Every set of panels that some chain of neighbours covers within the limits, found by walking all chains; a panel too large
 * for a port is a set by itself.
 */
export function holdings(grid: WiringGrid, limits: RunLimits): Holding[] {
  const { columns, rows, present } = grid;
  const found = new Map<string, Holding>();
  const taken = new Uint8Array(present.length);
  const isHigh = (place: number) => grid.entryHeightMm[place]! > limits.reachMm;
  const highOf = (first: number, last: number) => {
    if (limits.lastObeysReach !== true) return isHigh(first) ? 1 : 0;
    return (isHigh(first) ? 1 : 0) + (last !== first && isHigh(last) ? 1 : 0);
  };
  const walk = (chain: readonly number[]) => {
    if (chain.length > 1 && !fits(grid, limits, chain)) return;
    const last = chain.at(-1)!;
    const high = highOf(chain[0]!, last);
    const key = chain.toSorted((a, b) => a - b).join();
    const known = found.get(key);
    if (known) known.high = Math.min(known.high, high);
    else found.set(key, { places: chain, high });
    if (chain.length === 1 && !fits(grid, limits, chain)) return;
    const column = Math.floor(last / rows);
    const row = last % rows;
    for (const [c, r] of [
      [column - 1, row],
      [column + 1, row],
      [column, row - 1],
      [column, row + 1],
    ] as const) {
      const next = c * rows + r;
      const isThere = c >= 0 && c < columns && r >= 0 && r < rows && present[next] === 1;
      if (!isThere || taken[next] === 1) continue;
      taken[next] = 1;
      walk([...chain, next]);
      taken[next] = 0;
    }
  };
  for (let place = 0; place < present.length; place++) {
    if (present[place] === 0) continue;
    taken[place] = 1;
    walk([place]);
    taken[place] = 0;
  }
  return [...found.values()];
}

/** Whether a port takes these panels. */
function fits(grid: WiringGrid, limits: RunLimits, places: readonly number[]): boolean {
  if (places.length > limits.panelsMost) return false;
  if (limits.counting === 'panels') {
    return places.reduce((sum, p) => sum + grid.pixelWidth[p]! * grid.pixelHeight[p]!, 0) <= limits.usablePixels;
  }
  const left = Math.min(...places.map((p) => grid.pixelLeft[p]!));
  const right = Math.max(...places.map((p) => grid.pixelLeft[p]! + grid.pixelWidth[p]!));
  const top = Math.min(...places.map((p) => grid.pixelTop[p]!));
  const bottom = Math.max(...places.map((p) => grid.pixelTop[p]! + grid.pixelHeight[p]!));
  return (right - left) * (bottom - top) <= limits.usablePixels;
}

const highCost = 1000;

/**
 * The optimum by set partitioning: fewest ends above reach first, then fewest runs. Ends are the entries, with
 * `lastObeysReach` the last panels too.
 */
export function leastByProgram(highs: Highs, grid: WiringGrid, limits: RunLimits): { high: number; ports: number } {
  const sets = holdings(grid, limits);
  const cost = sets.map(({ high }, i) => `${high * highCost + 1} x${i}`);
  const holding = new Map<number, string[]>();
  sets.forEach(({ places }, i) => {
    for (const place of places) {
      const own = holding.get(place);
      if (own === undefined) holding.set(place, [`x${i}`]);
      else own.push(`x${i}`);
    }
  });
  const rows = Array.from(holding, ([place, own]) => ` c${place}: ${own.join(' + ')} = 1`);
  const program = `Minimize\n obj: ${cost.join(' + ')}\nSubject To\n${rows.join('\n')}\nBinary\n ${sets.map((_, i) => `x${i}`).join(' ')}\nEnd`;
  const { Status, ObjectiveValue } = highs.solve(program, { time_limit: 200, mip_rel_gap: 0, mip_abs_gap: 0.5 });
  if (Status !== 'Optimal') throw new Error(`the program ended ${Status}`);
  const objective = Math.round(ObjectiveValue);
  const high = Math.floor(objective / highCost);
  return { high, ports: objective - high * highCost };
}
