import type { DarkCount } from './count-dark';
import type { CulpritKind } from './culprit';

/** One single failure and what it costs. */
export interface WorstFailure extends DarkCount {
  readonly kind: CulpritKind;
  readonly name: string;
  /** Where the part is, in words. */
  readonly where: string;
  /** Panels that it would darken if no run had a return. */
  readonly panelsWithoutReturns: number;
}

/** The worst that one failure of equipment does to a surface; failures of the supply before the distros stand apart. */
export interface SurfaceWorst {
  readonly surfaceId: string;
  readonly letter: string;
  readonly name: string;
  readonly kind: CulpritKind;
  readonly panels: number;
  readonly panelsOfSurface: number;
}

/** The worst cut of one run: its home run. */
export interface WorstCut {
  readonly port: string;
  readonly panels: number;
  readonly panelsOfRun: number;
}

export interface FaultsResults {
  /** By panel, 1 where it passes data on without power: with it a model can be made of the plan's results. */
  readonly passes: Uint8Array;
  /** At most ten, worst first. */
  readonly worst: readonly WorstFailure[];
  /** Surfaces that a failure can darken, in the order of the stage. */
  readonly surfaces: readonly SurfaceWorst[];
  readonly runs: number;
  readonly runsWithReturn: number;
  /** Null without runs. */
  readonly worstCut: WorstCut | null;
}
