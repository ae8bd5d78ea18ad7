import type { LegacyHighs as Highs } from 'highs';
import type { RunLimits, WiringGrid } from '../../../../src/calc/runs/wiring-grid';

/** A set of panels that one run can hold, and whether a run over it can begin in reach. */
interface Holding {
  readonly places: readonly number[];
  high: boolean;
}

/** Every set of panels that some chain of neighbours covers within the limits, found by walking all chains. */
export function holdings(grid: WiringGrid, limits: RunLimits): Holding[] {
  const { columns, rows, present } = grid;
  const found = new Map<number, Holding>();
  const fits = (places: readonly number[]) => {
    if (places.length > limits.panelsMost) return false;
    if (limits.counting === 'panels') {
      return places.reduce((sum, p) => sum + grid.pixelWidth[p]! * grid.pixelHeight[p]!, 0) <= limits.usablePixels;
    }
    const left = Math.min(...places.map((p) => grid.pixelLeft[p]!));
    const right = Math.max(...places.map((p) => grid.pixelLeft[p]! + grid.pixelWidth[p]!));
    const top = Math.min(...places.map((p) => grid.pixelTop[p]!));
    const bottom = Math.max(...places.map((p) => grid.pixelTop[p]! + grid.pixelHeight[p]!));
    return (right - left) * (bottom - top) <= limits.usablePixels;
  };
  const walk = (chain: number[], mask: number, high: boolean) => {
    if (!fits(chain)) return;
    const known = found.get(mask);
    if (known) known.high &&= high;
    else found.set(mask, { places: [...chain], high });
    const last = chain.at(-1)!;
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
      if (!isThere || (mask & (1 << next)) !== 0) continue;
      walk([...chain, next], mask | (1 << next), high);
    }
  };
  for (let place = 0; place < present.length; place++) {
    if (present[place] === 1) walk([place], 1 << place, grid.entryHeightMm[place]! > limits.reachMm);
  }
  return [...found.values()];
}

const highCost = 1000;

/** The optimum by set partitioning: fewest entries above reach first, then fewest runs. At most 30 places. */
export function leastByProgram(highs: Highs, grid: WiringGrid, limits: RunLimits): { high: number; ports: number } {
  const sets = holdings(grid, limits);
  const cost = sets.map(({ high }, i) => `${high ? highCost + 1 : 1} x${i}`);
  const cells = Array.from(grid.present.keys()).filter((place) => grid.present[place] === 1);
  const rows = cells.map((place) => {
    const holding = sets.flatMap(({ places }, i) => (places.includes(place) ? [`x${i}`] : []));
    return ` c${place}: ${holding.join(' + ')} = 1`;
  });
  const program = `Minimize\n obj: ${cost.join(' + ')}\nSubject To\n${rows.join('\n')}\nBinary\n ${sets.map((_, i) => `x${i}`).join(' ')}\nEnd`;
  const { Status, ObjectiveValue } = highs.solve(program, { time_limit: 200 });
  if (Status !== 'Optimal') throw new Error(`the program ended ${Status}`);
  const objective = Math.round(ObjectiveValue);
  const high = Math.floor(objective / highCost);
  return { high, ports: objective - high * highCost };
}
