import type { Mode } from '../../plan/picture';
import type { Canvas } from './canvas';
import type { NoTiming } from './time-canvas';
import type { VideoTiming } from './video-timing';

/**
 * Why a link does not carry a canvas. timing: there is none of the kind chosen; depth: the link does not send it; clock: the pixel
 * clock is too high; payload: more bits than it carries; unproven: at most that many, so it may; raster: none of its fixed
 * ones holds the canvas; rate: those that do not run at it; packets: more on the wire than the line rate.
 */
export type WhyNot = 'timing' | 'depth' | 'clock' | 'payload' | 'unproven' | 'raster' | 'rate' | 'packets';

/** One link of the table against the canvases of one surface. */
export interface LinkFit {
  readonly linkId: string;
  readonly fits: boolean;
  /** Null where it fits. */
  readonly whyNot: WhyNot | null;
  /** The canvas and mode that ask most of it. */
  readonly canvas: Canvas;
  readonly mode: Mode;
  /** What is sent over it; null where that cannot be said. */
  readonly raster: Canvas | null;
  readonly needBps: number | null;
  /** True where the link needs no more than `needBps` and perhaps less: FRL compresses blanking. */
  readonly isAtMost: boolean;
  readonly carriesBps: number;
  /** 1 - need / carries: below zero where it does not fit. */
  readonly marginShare: number | null;
}

/** What links must carry for one surface: every canvas that its nodes send, at every mode that is served. */
export interface SurfaceLinks {
  readonly surfaceId: string;
  readonly letter: string;
  /** The canvas and mode that ask most; null where the surface sends nothing. */
  readonly canvas: Canvas | null;
  readonly mode: Mode;
  readonly timing: VideoTiming | null;
  /** Why the mode, or another that is served, has no timing of the kind chosen. */
  readonly noTiming: NoTiming | null;
  /** Pixel clock x 3 x depth; null without a timing. */
  readonly payloadBps: number | null;
  /** Pixels x rate x 3 x depth, without blanking. */
  readonly activeBps: number;
  /** In the order of the table. */
  readonly fits: readonly LinkFit[];
  /** The least that carries everything; null where none does. */
  readonly leastId: string | null;
  /** As stated for the surface or the stage, else the least; null where none carries it or the one stated is not there. */
  readonly chosen: LinkFit | null;
  /** Outputs that send to the surface: one a processor. */
  readonly outputs: number;
  /** Cables of the chosen link through all outputs. */
  readonly cables: number;
}

export interface LinksResults {
  readonly surfaces: readonly SurfaceLinks[];
}
