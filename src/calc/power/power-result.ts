/** One circuit: an ordered chain of panels, entry first. */
export interface Circuit {
  /** 'D4-11': distro number and circuit number. */
  readonly name: string;
  readonly distro: number;
  readonly surfaceId: string;
  /** Leg, or pair of legs, that it sits on. */
  readonly leg: 'L1' | 'L2' | 'L3' | 'L1-L2' | 'L2-L3' | 'L3-L1';
  readonly start: number;
  readonly count: number;
  /** Full white, full brightness, lowest voltage. */
  readonly watts: number;
  readonly currentA: number;
  /** Usable share of the rating, or the power chain of its panels if that carries less. */
  readonly limitA: number;
  readonly entryHeightMm: number;
}

export interface LegLoad {
  readonly leg: 'L1' | 'L2' | 'L3' | 'N';
  /** Panels, and processors, breakouts and nodes where they are on the same service. */
  readonly currentA: number;
  readonly limitA: number | null;
}

export interface DistroLoad {
  readonly number: number;
  readonly distroId: string;
  readonly circuits: number;
  readonly legs: readonly LegLoad[];
}

/** What one service point carries where every distro hangs on one. */
export interface PointLoad {
  readonly pointId: string;
  readonly name: string;
  /** Numbers of the distros on it. */
  readonly distros: readonly number[];
  readonly legs: readonly LegLoad[];
}

export interface PowerLoad {
  readonly surfaceId: string;
  readonly blackW: number;
  readonly typicalW: number;
  readonly fullWhiteW: number;
}

export interface PowerResults {
  readonly circuits: readonly Circuit[];
  readonly order: Uint32Array;
  /** Index of the circuit each panel is on; -1 where none. */
  readonly circuitOf: Int32Array;
  readonly distros: readonly DistroLoad[];
  /** Service points with the distros on them; none where no way was found, without a point and without a distro. */
  readonly points: readonly PointLoad[];
  readonly legs: readonly LegLoad[];
  /** The legs of `legs` at the typical picture level and brightness, at the same voltage. */
  readonly typicalLegs: readonly LegLoad[];
  readonly worstLegA: number | null;
  readonly neutralA: number | null;
  readonly loads: readonly PowerLoad[];
  readonly signalW: number;
  /** Full white with signal equipment. */
  readonly maxW: number;
  readonly typicalW: number;
  readonly blackW: number;
  readonly panelsACircuit: readonly { readonly panelId: string; readonly panels: number; readonly currentA: number }[];
}
