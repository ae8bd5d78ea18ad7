import type { MaterialsInputs } from '../../src/calc/materials/compute-materials';
import type { NetworkCounts } from '../../src/calc/materials/count-network';
import type { GearPurchase } from '../../src/calc/materials/needed-item';
import type { PanelPurchase } from '../../src/calc/panels/panel-views';
import type { Cable, CableKind } from '../../src/plan/cable';
import { surfaceOf, surfaceSet } from './power-surfaces';

export const purchasePanel = (id: string, purchase: Partial<PanelPurchase['purchase']> = {}): PanelPurchase => ({
  id,
  name: `Panel ${id}`,
  massKg: 8,
  purchase: { price: 1000, perCase: 6, caseMassKg: 20, leadDays: 45, ...purchase },
});

export const gearItem = (id: string, price: number | null = 500, leadDays: number | null = 10): GearPurchase => ({
  id,
  name: `Item ${id}`,
  massKg: 5,
  purchase: { price, leadDays },
});

export const cableItem = (id: string, kind: CableKind, price: number | null = 20): Cable => ({
  id,
  name: `Cable ${id}`,
  kind,
  massKg: 0.5,
  price,
});

const kinds: readonly CableKind[] = ['home-run', 'data-jumper', 'power-jumper', 'circuit', 'trunk', 'video'];

/** Neither sync nor network. */
export const noNetwork: NetworkCounts = {
  devices: 0,
  references: 0,
  splitters: 0,
  syncCables: 0,
  switches: 0,
  networkCables: 0,
};

/** A wall of 10 x 10 panels on 12 runs, 10 circuits, one zone with two breakouts, one node and one distro. Spares 3 %, at least 1. */
export function materialsInputs(changes: Partial<MaterialsInputs> = {}): MaterialsInputs {
  return {
    materials: { spareShare: 0.03, spareLeast: 1, byItem: [] },
    stock: [],
    surfaces: surfaceSet(surfaceOf({ columns: 10, rows: 10 })),
    panels: [purchasePanel('p')],
    gear: {
      processors: [{ itemId: 'a', count: 1 }],
      breakouts: [{ itemId: 'box', count: 2 }],
      nodes: [{ itemId: 'node', count: 1 }],
    },
    processors: [gearItem('a', 20_000)],
    breakouts: [gearItem('box', 3000)],
    nodes: [gearItem('node', 15_000)],
    distros: [gearItem('distro', 4000)],
    distroCounts: [{ itemId: 'distro', count: 1 }],
    cables: kinds.map((kind) => cableItem(`c-${kind}`, kind)),
    wiring: {
      runs: 12,
      returns: 0,
      panelsOnRuns: 100,
      circuits: 10,
      panelsOnCircuits: 100,
      breakouts: 2,
      video: 1,
      network: noNetwork,
    },
    ...changes,
  };
}
