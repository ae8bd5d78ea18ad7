import { type ComponentType, type LazyExoticComponent, lazy } from 'react';
import type { PageId } from '../state/pages';

/** Every page's component, loaded when first opened. A page that is not named here shows what its chapters computed. */
export const chapterRegistry: Readonly<Partial<Record<PageId, LazyExoticComponent<ComponentType>>>> = {
  wish: lazy(async () => ({ default: (await import('../chapters/wish/WishPage')).WishPage })),
  summary: lazy(async () => ({ default: (await import('../chapters/summary/SummaryPage')).SummaryPage })),
  panels: lazy(async () => ({ default: (await import('../chapters/panels/PanelsPage')).PanelsPage })),
  walls: lazy(async () => ({ default: (await import('../chapters/walls/WallsPage')).WallsPage })),
  ceilings: lazy(async () => ({ default: (await import('../chapters/ceilings/CeilingsPage')).CeilingsPage })),
  picture: lazy(async () => ({ default: (await import('../chapters/picture/PicturePage')).PicturePage })),
  zones: lazy(async () => ({ default: (await import('../chapters/zones/ZonesPage')).ZonesPage })),
  runs: lazy(async () => ({ default: (await import('../chapters/runs/RunsPage')).RunsPage })),
  nodes: lazy(async () => ({ default: (await import('../chapters/nodes/NodesPage')).NodesPage })),
  links: lazy(async () => ({ default: (await import('../chapters/links/LinksPage')).LinksPage })),
  faults: lazy(async () => ({ default: (await import('../chapters/faults/FaultsPage')).FaultsPage })),
  outputs: lazy(async () => ({ default: (await import('../chapters/outputs/OutputsPage')).OutputsPage })),
  power: lazy(async () => ({ default: (await import('../chapters/power/PowerPage')).PowerPage })),
  heat: lazy(async () => ({ default: (await import('../chapters/heat/HeatPage')).HeatPage })),
  masses: lazy(async () => ({ default: (await import('../chapters/masses/MassesPage')).MassesPage })),
  revisions: lazy(async () => ({ default: (await import('../chapters/revisions/RevisionsPage')).RevisionsPage })),
  labels: lazy(async () => ({ default: (await import('../chapters/labels/LabelsPage')).LabelsPage })),
  materials: lazy(async () => ({ default: (await import('../chapters/materials/MaterialsPage')).MaterialsPage })),
  log: lazy(async () => ({ default: (await import('../chapters/log/LogPage')).LogPage })),
  crew: lazy(async () => ({ default: (await import('../chapters/crew/CrewPage')).CrewPage })),
};
