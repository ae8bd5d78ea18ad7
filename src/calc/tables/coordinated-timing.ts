import table from '../../../shared/coordinated-timing.json';

const { full, reduced1, reduced2 } = table;

/** Clock steps in one MHz. */
const stepsAMHz = (clockStepMHz: number) => Math.round(1 / clockStepMHz);

/** Figures of VESA CVT, with their source. Widths of full blanking and reduced blanking 1 are whole cells. */
export const coordinatedTiming = {
  cellPixels: table.cellPixels,
  syncLines: table.syncLines,
  full: {
    leastSyncAndBackMicroseconds: full.leastSyncAndBackMicroseconds,
    frontPorchLines: full.frontPorchLines,
    leastBackPorchLines: full.leastBackPorchLines,
    blankOffsetPercent: full.blankOffsetPercent,
    blankSlopePercentAMillisecond: full.blankSlopePercentAMillisecond,
    leastBlankPercent: full.leastBlankPercent,
    clockStepsAMHz: stepsAMHz(full.clockStepMHz),
  },
  reduced1: {
    blankPixels: reduced1.blankPixels,
    leastBlankMicroseconds: reduced1.leastBlankMicroseconds,
    /** Front and back porch; the lines of sync hang on the picture's aspect. */
    leastPorchLines: reduced1.frontPorchLines + reduced1.leastBackPorchLines,
    clockStepsAMHz: stepsAMHz(reduced1.clockStepMHz),
  },
  reduced2: {
    blankPixels: reduced2.blankPixels,
    leastBlankMicroseconds: reduced2.leastBlankMicroseconds,
    leastBlankLines: reduced2.frontPorchLines + reduced2.syncLines + reduced2.leastBackPorchLines,
    clockStepsAMHz: stepsAMHz(reduced2.clockStepMHz),
  },
  source: `${table.edition}, ${table.clause}`,
} as const;
