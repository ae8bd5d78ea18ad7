import type { Mode } from '../../plan/picture';

/** What one processor takes of its node's canvas: a rectangle of pixels, from the canvas's top left. */
export interface Crop {
  /** Index into the zones' list. */
  readonly zone: number;
  readonly processor: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** One render node and the canvas that it sends. */
export interface RenderNode {
  /** 'N3': its number through the stage, from 1, in the order of the processors that it feeds. */
  readonly name: string;
  /** Item of the catalogue; null where none is chosen or it is not there. */
  readonly itemId: string | null;
  readonly surfaceId: string;
  readonly letter: string;
  /** What is sent, sized for the served mode that asks most of a link. */
  readonly mode: Mode;
  readonly canvasWidth: number;
  readonly canvasHeight: number;
  /** Top left of its canvas on the surface's own canvas. */
  readonly offsetX: number;
  readonly offsetY: number;
  readonly crops: readonly Crop[];
  /** Video outputs in use: one a processor that it feeds. */
  readonly outputs: number;
  /** Pixels of its canvas that light a panel. */
  readonly litPixels: number;
  /** The others: blank columns, holes, what pads the canvas to the size of its neighbours'. */
  readonly blankPixels: number;
}

/** Canvases of one surface. */
export interface SurfaceNodes {
  readonly surfaceId: string;
  readonly nodes: number;
  /** The largest of them. */
  readonly canvasWidth: number;
  readonly canvasHeight: number;
  readonly isEqual: boolean;
}

/** One step of the delay of one surface. */
export interface DelayFigure {
  readonly stepId: string;
  readonly name: string;
  readonly frames: number;
  readonly ms: number;
  /** Both together at the surface's rate. */
  readonly totalMs: number;
}

/** From tracked camera to lit panel. */
export interface SurfaceDelay {
  readonly surfaceId: string;
  readonly steps: readonly DelayFigure[];
  /** Null where no step is stated. */
  readonly ms: number | null;
  /** At the frame rate of the camera. */
  readonly frames: number | null;
}

/** What is on the sync and on the network, in the order in which both number it. */
export type DeviceKind = 'node' | 'processor' | 'camera' | 'tracker';

/** One cable of the sync tree. */
export interface SyncLine {
  readonly from: string;
  /** Outlet of `from`, from 1. */
  readonly outlet: number;
  readonly to: string;
  readonly kind: 'splitter' | 'switch' | DeviceKind;
  readonly phaseMs: number;
  readonly phaseDegrees: number;
}

/** Where a device stands on the network. */
export interface DeviceAddress {
  readonly device: string;
  readonly kind: DeviceKind;
  /** Null where the network has no address left. */
  readonly address: string | null;
  readonly switch: number;
  readonly switchPort: number;
}

export interface NodesResults {
  readonly nodes: readonly RenderNode[];
  /** By zone, the index of its node. */
  readonly nodeOfZone: readonly number[];
  readonly spareNodes: number;
  readonly surfaces: readonly SurfaceNodes[];
  readonly delays: readonly SurfaceDelay[];
  readonly sync: readonly SyncLine[];
  readonly addresses: readonly DeviceAddress[];
}
