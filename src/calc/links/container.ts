import { fixedModes } from '../tables/fixed-modes';

/** A raster that fixed modes send: '3840x2160'. */
export interface Container {
  readonly id: string;
  readonly width: number;
  readonly height: number;
}

/** Rasters of the fixed modes, fewest pixels first. */
export const containers: readonly Container[] = [
  ...new Map(
    fixedModes.map(({ width, height }): [string, Container] => {
      const id = `${width}x${height}`;
      return [id, { id, width, height }];
    }),
  ).values(),
].sort((a, b) => a.width * a.height - b.width * b.height);
