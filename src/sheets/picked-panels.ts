import { zonePanels } from '../calc/zones/zone-of-panels';
import type { StageParts } from './stage-parts';

/** What can be picked on a stage; indices are those of the evaluation's lists, a panel's number runs through all surfaces. */
export type Picked =
  | { readonly kind: 'panel' | 'zone' | 'run' | 'circuit'; readonly index: number }
  | { readonly kind: 'column'; readonly surfaceId: string; readonly column: number }
  /** A part of the wiring, by the panels on it. */
  | { readonly kind: 'panels'; readonly panels: readonly number[] };

/** Numbers of the panels that are picked, in the order of their chain where there is one; none where it is there no more. */
export function pickedPanels(
  parts: Pick<StageParts, 'surfaces' | 'zones' | 'runs' | 'power'>,
  picked: Picked | null,
): readonly number[] {
  if (picked === null) return [];
  const { surfaces, runs, power } = parts;
  switch (picked.kind) {
    case 'panel':
      return picked.index >= 0 && picked.index < surfaces.total ? [picked.index] : [];
    case 'panels':
      return picked.panels.filter((panel) => panel < surfaces.total);
    case 'run':
      return inOrder(runs.order, runs.runs[picked.index]);
    case 'circuit':
      return inOrder(power.order, power.circuits[picked.index]);
    case 'zone': {
      const zone = parts.zones[picked.index];
      const s = surfaces.surfaces.findIndex((table) => table.surfaceId === zone?.surfaceId);
      return zone === undefined || s < 0
        ? []
        : zonePanels(surfaces.surfaces[s]!, zone).map((local) => surfaces.offsets[s]! + local);
    }
    case 'column': {
      const s = surfaces.surfaces.findIndex((table) => table.surfaceId === picked.surfaceId);
      const table = surfaces.surfaces[s];
      if (table === undefined) return [];
      const column = table.at.subarray((picked.column - 1) * table.rows, picked.column * table.rows);
      return Array.from(column)
        .filter((local) => local >= 0)
        .map((local) => surfaces.offsets[s]! + local);
    }
  }
}

function inOrder(order: Uint32Array, chain: { readonly start: number; readonly count: number } | undefined): number[] {
  return chain === undefined ? [] : Array.from(order.subarray(chain.start, chain.start + chain.count));
}
