import type { Mode } from '../../plan/picture';
import type { Processor } from '../../plan/processor';
import type { Returns } from '../../plan/signal';

/** Capacity of one port for one panel type on one surface, at the mode that leaves least. */
export interface PortCapacity {
  readonly panelId: string;
  /** Null where the sheet has no figure for the pair. */
  readonly sheetPixels: number | null;
  readonly linePixels: number;
  /** min of the two. */
  readonly capacityPixels: number;
  /** capacity x (1 - free share). */
  readonly usablePixels: number;
  readonly mode: Mode;
  readonly panelPixels: number;
  /** Panels of this type alone that one port takes, after the chain limit and the user's own limit. 0: not one. */
  readonly panelsAPort: number;
  readonly limitedBy: 'pixels' | 'chain' | 'user';
}

/** Ports of the processor chosen for one surface; null results where none can be found. */
export interface SurfacePorts {
  readonly surfaceId: string;
  readonly processor: Processor | null;
  readonly counting: 'panels' | 'rectangle';
  /** Pixels usable on a port that holds mixed panels: the least over its types. */
  readonly usablePixels: number;
  readonly capacityPixels: number;
  /** Most panels on one run whatever their pixels; `panelsUnlimited` where nobody limits them. */
  readonly panelsMost: number;
  readonly byType: readonly PortCapacity[];
  /** Ports of one processor with all its breakouts, and of one breakout after its trunk limit (direct: same as the processor's). */
  readonly portsAProcessor: number;
  readonly portsABreakout: number;
  readonly breakoutsAProcessor: number;
  /** Where runs return to, as it is asked for. */
  readonly returns: Returns;
  /** Most runs that one processor takes, the ports that they return to counted in. */
  readonly runsAProcessor: number;
  /** Pixels one processor drives at the served mode that leaves least. */
  readonly processorPixels: number;
}

export interface PortsResults {
  readonly surfaces: readonly SurfacePorts[];
}
