import { fixedModes } from '../tables/fixed-modes';

/** A raster that fixed modes send, by the id of one of them: that of 60 frames a second where there is one. */
export interface Container {
  readonly id: string;
  readonly width: number;
  readonly height: number;
}

const at60First = [...fixedModes].sort((a, b) => Number(b.frames === 60) - Number(a.frames === 60));

/** Rasters of the fixed modes, fewest pixels first. */
export const containers: readonly Container[] = at60First
  .filter((mode, i) => at60First.findIndex(({ width, height }) => width === mode.width && height === mode.height) === i)
  .map(({ id, width, height }) => ({ id, width, height }))
  .sort((a, b) => a.width * a.height - b.width * b.height);
