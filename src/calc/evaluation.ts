import type { CeilingsResults } from './ceilings/ceiling-result';
import type { Chapter, Check } from './chapter';
import type { FaultsResults } from './faults/fault-result';
import type { HeatResults } from './heat/heat-result';
import type { LinksResults } from './links/link-result';
import type { MassesResults } from './masses/mass-result';
import type { MaterialsResults } from './materials/material-result';
import type { NodesResults } from './nodes/node-result';
import type { PanelsResults } from './panels/panel-result';
import type { PictureResults } from './picture/picture-result';
import type { PortsResults } from './ports/port-result';
import type { PowerResults } from './power/power-result';
import type { RunsResults } from './runs/run-result';
import type { SurfaceSet } from './surfaces/surface-table';
import type { WallsResults } from './walls/wall-result';
import type { WishResults } from './wish/wish-result';
import type { ZonesResults } from './zones/zone-result';

/** The figures that the terminal and the strip lead with; null where one cannot be computed. */
export interface Headline {
  readonly panels: number;
  readonly columns: number;
  readonly rows: number;
  readonly insideDiameterMm: number | null;
  readonly openingMm: number | null;
  readonly wallHeightMm: number | null;
  readonly pixels: number;
  readonly processors: number;
  readonly breakouts: number;
  readonly portsUsed: number;
  readonly portsLeast: number;
  readonly panelsPerPortMin: number | null;
  readonly panelsPerPortMax: number | null;
  readonly fullestPortShare: number | null;
  readonly circuits: number;
  readonly worstLegA: number | null;
  readonly neutralA: number | null;
  readonly powerMaxW: number;
  readonly heatTons: number;
  readonly massKg: number;
  readonly priceTotal: number;
}

/** Everything that follows from one plan: one property a chapter, and what several of them share. */
export interface Evaluation {
  readonly surfaces: SurfaceSet;
  readonly wish: Chapter<WishResults>;
  readonly panels: Chapter<PanelsResults>;
  readonly walls: Chapter<WallsResults>;
  readonly ceilings: Chapter<CeilingsResults>;
  readonly picture: Chapter<PictureResults>;
  readonly ports: Chapter<PortsResults>;
  readonly zones: Chapter<ZonesResults>;
  readonly runs: Chapter<RunsResults>;
  readonly nodes: Chapter<NodesResults>;
  readonly links: Chapter<LinksResults>;
  readonly power: Chapter<PowerResults>;
  readonly faults: Chapter<FaultsResults>;
  readonly heat: Chapter<HeatResults>;
  readonly masses: Chapter<MassesResults>;
  readonly materials: Chapter<MaterialsResults>;
  readonly headline: Headline;
  /** All chapters' checks, worst first within the order of chapters. */
  readonly checks: readonly Check[];
}
