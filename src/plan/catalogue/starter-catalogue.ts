import type { Catalogue } from '../catalogue';
import { starterPanels } from './starter-panels';
import { starterBreakouts, starterNodes, starterProcessors } from './starter-signal';
import { starterCables, starterDistros } from './starter-supply';

/** The equipment that a new plan begins with: all of it invented, to be changed for what a company owns. */
export const starterCatalogue: Catalogue = {
  panels: [...starterPanels],
  processors: [...starterProcessors],
  breakouts: [...starterBreakouts],
  distros: [...starterDistros],
  nodes: [...starterNodes],
  cables: [...starterCables],
};
