import type { Distro } from '../../plan/distro';
import type { SurfaceSet, SurfaceTable } from '../surfaces/surface-table';
import { addBranches, type BranchCurrent, noBranch } from './branch-current';
import type { Chain } from './join-chains';
import { layCircuits, type SurfaceWays } from './lay-circuits';
import { legCurrents } from './leg-currents';
import type { LegScheme } from './leg-scheme';
import type { PanelCurrent } from './panel-current';
import { ampsTolerance, fitsWithin } from './panels-within';
import { type DistroLimits, distroLimits, shareDistros } from './share-distros';

/** A circuit before it has a name and a leg. */
export interface LaidCircuit {
  readonly surface: SurfaceTable;
  /** Number of the surface's first panel through the stage. */
  readonly offset: number;
  /** Panels by their number on the surface, entry first. */
  readonly panels: readonly number[];
  readonly currentA: number;
  readonly limitA: number;
  readonly branch: BranchCurrent;
  readonly watts: number;
}

export interface LaidCircuits {
  readonly circuits: readonly LaidCircuit[];
  /** First circuit of each distro; one that takes all where no distro is chosen, none without circuits. */
  readonly distroStarts: readonly number[];
}

interface Stage {
  readonly surfaces: SurfaceSet;
  /** What each panel type of each surface draws. */
  readonly currents: readonly (readonly PanelCurrent[])[];
  readonly scheme: LegScheme;
  readonly limits: DistroLimits | null;
}

function laidCircuit(
  surface: SurfaceTable,
  offset: number,
  chain: Chain,
  currents: readonly PanelCurrent[],
): LaidCircuit {
  let activeA = 0;
  let reactiveA = 0;
  let watts = 0;
  for (const panel of chain.panels) {
    const drawn = currents[surface.type[panel]!]!;
    activeA += drawn.branch.activeA;
    reactiveA += drawn.branch.reactiveA;
    watts += drawn.watts;
  }
  const branch = { activeA, reactiveA };
  return { surface, offset, panels: chain.panels, currentA: chain.currentA, limitA: chain.limitA, branch, watts };
}

/** A ceiling's circuits all arrive from above by one loom: the fewer the better. A wall's are those that a crew wires from memory. */
function simpleWay(surface: SurfaceTable, { simple, dense }: SurfaceWays): readonly Chain[] {
  return surface.kind === 'ceiling' && dense().length < simple.length ? dense() : simple;
}

function layStage({ surfaces, currents, scheme, limits }: Stage, chains: readonly (readonly Chain[])[]): LaidCircuits {
  const bySurface = surfaces.surfaces.map((surface, s) =>
    chains[s]!.map((chain) => laidCircuit(surface, surfaces.offsets[s]!, chain, currents[s]!)),
  );
  const circuits = bySurface.flat();
  if (limits === null) return { circuits, distroStarts: circuits.length > 0 ? [0] : [] };
  let next = 0;
  const surfaceStarts = bySurface.map((list) => {
    next += list.length;
    return next - list.length;
  });
  const loads = circuits.map((circuit) => circuit.branch);
  return { circuits, distroStarts: shareDistros(loads, surfaceStarts, scheme, limits) };
}

/** Distros that the amperes alone ask for, with perfectly even legs. */
function distrosByAmps(circuits: readonly LaidCircuit[], scheme: LegScheme, limits: DistroLimits): number {
  const total = circuits.reduce((sum, circuit) => addBranches(sum, circuit.branch), noBranch);
  const share = 1 / scheme.branches.length;
  const even = { activeA: total.activeA * share, reactiveA: total.reactiveA * share };
  const { legA } = legCurrents(
    scheme,
    scheme.branches.map(() => even),
  );
  return Math.ceil(Math.max(...legA) / limits.legA - ampsTolerance);
}

/**
 * Circuits of the whole stage and which distro each hangs on. Whole columns come first, being the figure that a crew wires from
 * memory; where fewer circuits would save a distro, and on ceilings, rows are cut into more levels instead.
 */
export function planCircuits(
  surfaces: SurfaceSet,
  currents: readonly (readonly PanelCurrent[])[],
  scheme: LegScheme,
  distro: Distro | null,
  usableShare: number,
): LaidCircuits {
  const limits = distro === null ? null : distroLimits(distro, usableShare);
  const stage = { surfaces, currents, scheme, limits };
  const ways = surfaces.surfaces.map((surface, s) => layCircuits(surface, currents[s]!));
  const simpleChains = surfaces.surfaces.map((surface, s) => simpleWay(surface, ways[s]!));
  const simple = layStage(stage, simpleChains);
  if (limits === null || simple.distroStarts.length <= distrosByAmps(simple.circuits, scheme, limits)) return simple;
  const denseChains = ways.map(({ dense }) => dense());
  if (denseChains.every((chains, s) => chains === simpleChains[s])) return simple;
  const dense = layStage(stage, denseChains);
  const isCarried = dense.circuits.every((circuit) => fitsWithin(circuit.currentA, limits.legA));
  return isCarried && dense.distroStarts.length < simple.distroStarts.length ? dense : simple;
}
