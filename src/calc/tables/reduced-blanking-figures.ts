import table from '../../../shared/reduced-blanking.json';

/** Figures of CVT reduced blanking version 2, with their source. */
export const reducedBlankingFigures = {
  blankPixels: table.blankPixels,
  leastBlankMicroseconds: table.leastBlankMicroseconds,
  leastBlankLines: table.frontPorchLines + table.syncLines + table.leastBackPorchLines,
  clockStepsAMHz: Math.round(1 / table.clockStepMHz),
  source: `${table.edition}, ${table.clause}`,
} as const;
