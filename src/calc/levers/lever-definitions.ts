import type { LeverDefinition } from './lever';
import { depthSteps } from './steps/depth-steps';
import {
  breakoutGearSteps,
  nodeGearSteps,
  otherProcessorSteps,
  panelGearSteps,
  processorGearSteps,
  signalGearSteps,
} from './steps/gear-steps';
import { picturesSteps } from './steps/pictures-steps';
import { rateSteps } from './steps/rate-steps';
import { columnsSteps, rowsSteps } from './steps/shape-steps';
import { freeShareSteps, panelsMostSteps, reachSteps, wiringSteps, zoneWidthSteps } from './steps/signal-steps';

/** Every lever, in the order in which a builder would try them: what costs nothing first. */
export const leverDefinitions: readonly LeverDefinition[] = [
  { id: 'wiring', name: 'Way of wiring', topics: ['signal'], steps: wiringSteps },
  { id: 'free-share', name: 'Share kept free on each port', topics: ['signal'], steps: freeShareSteps },
  { id: 'panels-most', name: 'Panels a port', topics: ['signal'], steps: panelsMostSteps },
  { id: 'zone-width', name: 'Width of the zones', topics: ['signal'], steps: zoneWidthSteps },
  { id: 'rate', name: 'Frame rate', topics: ['signal'], steps: rateSteps },
  { id: 'depth', name: 'Bit depth', topics: ['signal'], steps: depthSteps },
  { id: 'pictures', name: 'Pictures a camera frame', topics: ['signal'], steps: picturesSteps },
  { id: 'reach', name: 'Highest entry in reach', topics: ['signal'], steps: reachSteps },
  { id: 'breakouts', name: 'More breakouts', topics: ['signal'], steps: breakoutGearSteps },
  { id: 'processors', name: 'More processors', topics: ['signal'], steps: processorGearSteps },
  { id: 'nodes', name: 'More render nodes', topics: ['signal'], steps: nodeGearSteps },
  { id: 'signal-gear', name: 'More of each that is short', topics: ['signal'], steps: signalGearSteps },
  { id: 'other-processor', name: 'Another processor', topics: ['signal'], steps: otherProcessorSteps },
  { id: 'panels', name: 'More panels', topics: ['panels'], steps: panelGearSteps },
  { id: 'columns', name: 'Fewer columns', topics: ['signal', 'panels'], steps: columnsSteps },
  { id: 'rows', name: 'Fewer rows', topics: ['signal', 'panels'], steps: rowsSteps },
];
