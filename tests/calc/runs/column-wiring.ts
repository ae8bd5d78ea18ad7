import type { ZoneWiring } from '../../../src/calc/runs/search/zone-wiring';
import type { RunLimits, WiringGrid } from '../../../src/calc/runs/wiring-grid';
import type { SolveZone } from '../../../src/calc/runs/zone-solver';
import type { WayOfWiring } from '../../../src/plan/hand-change';

/** Runs given as lists of places, measured the plain way. */
export function plainWiring(
  grid: WiringGrid,
  limits: RunLimits,
  way: WayOfWiring,
  runs: readonly (readonly number[])[],
): ZoneWiring {
  const pixelsOf = (place: number) => grid.pixelWidth[place]! * grid.pixelHeight[place]!;
  const pixels = runs.map((run) => run.reduce((sum, place) => sum + pixelsOf(place), 0));
  const heights = runs.map((run) => grid.entryHeightMm[run[0]!]!);
  const lengths = runs.map((run) => run.length);
  const start = [0];
  for (const run of runs) start.push(start.at(-1)! + run.length);
  return {
    way,
    order: Int32Array.from(runs.flat()),
    start: Int32Array.from(start),
    ports: runs.length,
    pixels: Float64Array.from(pixels),
    tooLarge: new Int32Array(0),
    fewestPanels: Math.min(...lengths),
    mostPanels: Math.max(...lengths),
    fullestPixels: Math.max(...pixels),
    fullestShare: Math.max(...pixels) / limits.usablePixels,
    entriesOutOfReach: heights.filter((height) => height > limits.reachMm).length,
    highestEntryMm: Math.max(...heights),
    figures: new Set(lengths).size,
    figureCodes: [...new Set(lengths)].sort((a, b) => a - b),
    cableMm: lengths.reduce((sum, length) => sum + (length - 1) * grid.rowPitchMm, 0),
  };
}

/** Every column upwards, cut where a port is full or a hole comes: a wiring for tests of what is built upon wirings. */
export function columnRuns(grid: WiringGrid, limits: RunLimits): number[][] {
  const runs: number[][] = [];
  for (let column = 0; column < grid.columns; column++) {
    let run: number[] = [];
    let pixels = 0;
    for (let row = 0; row < grid.rows; row++) {
      const place = column * grid.rows + row;
      const more = grid.pixelWidth[place]! * grid.pixelHeight[place]!;
      const isFull = pixels + more > limits.usablePixels || run.length === limits.panelsMost;
      if (run.length > 0 && (grid.present[place] === 0 || isFull)) {
        runs.push(run);
        run = [];
        pixels = 0;
      }
      if (grid.present[place] === 0) continue;
      run.push(place);
      pixels += more;
    }
    if (run.length > 0) runs.push(run);
  }
  return runs;
}

/** Wires every zone column by column; `calls` counts what was solved. */
export function columnSolver(): { readonly solve: SolveZone; readonly calls: () => number } {
  let calls = 0;
  return {
    calls: () => calls,
    solve: (grid, limits) => {
      calls++;
      const chosen = plainWiring(grid, limits, { kind: 'columns' }, columnRuns(grid, limits));
      return { chosen, ways: [chosen], peers: [chosen], least: chosen.ports };
    },
  };
}
