/** A zone: the rectangle of one surface that one processor drives. Columns and rows from 1, as on the surface. */
export interface Zone {
  readonly surfaceId: string;
  readonly letter: string;
  /** Processor number through the stage, from 1. */
  readonly processor: number;
  readonly processorId: string;
  readonly firstColumn: number;
  readonly columns: number;
  readonly firstRow: number;
  readonly rows: number;
  readonly panels: number;
  readonly canvasWidth: number;
  readonly canvasHeight: number;
  readonly blankColumns: number;
  readonly breakouts: number;
  readonly ports: number;
}

/** One workable width of a surface's zones. */
export interface ZoneWidth {
  readonly surfaceId: string;
  readonly columns: number;
  readonly up: number;
  readonly processors: number;
  readonly canvasWidth: number;
  readonly canvasHeight: number;
  /** Pixels of the canvas / pixels the processor drives. */
  readonly usedShare: number;
  readonly blankColumns: number;
  /** Most ports that a zone of it needs; where `portsExact` is false the least that it can need, to be shown as 'at least'. */
  readonly portsAZone: number;
  readonly portsExact: boolean;
  readonly chosen: boolean;
}

/** Cutting of one surface. */
export interface SurfaceZones {
  readonly surfaceId: string;
  readonly zones: number;
  readonly canvasWidth: number;
  readonly canvasHeight: number;
  /** Payload that the canvas asks of a processor's input at the served mode that asks most; null without a canvas or where it
   *  has no timing of the kind chosen. */
  readonly inputBps: number | null;
  readonly widths: readonly ZoneWidth[];
  /** Why no zone fits, where none does, or that the zones given need more ports than there are: a sentence. */
  readonly stoppedBy: string | null;
}

export interface ZonesResults {
  readonly zones: readonly Zone[];
  readonly surfaces: readonly SurfaceZones[];
  readonly processors: number;
}
