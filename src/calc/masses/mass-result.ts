export interface SurfaceMass {
  readonly surfaceId: string;
  readonly letter: string;
  readonly panelsKg: number;
  readonly fittingsKg: number;
  readonly totalKg: number;
  /** Each column with its share of fittings. */
  readonly columnKg: Float64Array;
  readonly heaviestColumnKg: number;
  /** Load on the heaviest support frame of a standing wall, and the pressure under its plate; null for what hangs. */
  readonly frameKg: number | null;
  readonly floorKpa: number | null;
}

export interface MassesResults {
  readonly surfaces: readonly SurfaceMass[];
  readonly totalKg: number;
}
