import type { SurfaceSet } from '../surfaces/surface-table';
import type { BranchCurrent } from './branch-current';
import type { LegScheme } from './leg-scheme';
import type { PanelCurrent } from './panel-current';
import type { Circuit } from './power-result';

/** Panels and load of one branch of the stage. */
export interface BranchLoad extends BranchCurrent {
  /** Panels on it by panel id. */
  readonly panels: ReadonlyMap<string, number>;
}

/** What each branch of the scheme carries over the whole stage, without signal equipment: whole panels times their current. */
export function branchLoads(
  surfaces: SurfaceSet,
  currents: readonly (readonly PanelCurrent[])[],
  scheme: LegScheme,
  circuits: readonly Circuit[],
  circuitOf: Int32Array,
): readonly BranchLoad[] {
  const branchOf = Uint8Array.from(circuits, (circuit) => scheme.branches.indexOf(circuit.leg));
  const totals = scheme.branches.map(() => ({ panels: new Map<string, number>(), activeA: 0, reactiveA: 0 }));
  surfaces.surfaces.forEach((surface, s) => {
    const counts = surface.types.map(() => scheme.branches.map(() => 0));
    for (let i = 0; i < surface.count; i++) {
      counts[surface.type[i]!]![branchOf[circuitOf[surfaces.offsets[s]! + i]!]!]! += 1;
    }
    surface.types.forEach(({ panelId }, t) => {
      totals.forEach((total, b) => {
        const panels = counts[t]![b]!;
        const { branch } = currents[s]![t]!;
        total.panels.set(panelId, (total.panels.get(panelId) ?? 0) + panels);
        total.activeA += panels * branch.activeA;
        total.reactiveA += panels * branch.reactiveA;
      });
    });
  });
  return totals;
}
