import type { Mode } from '../../plan/picture';

/** What a surface is fed with. */
export interface SurfacePicture {
  readonly surfaceId: string;
  readonly letter: string;
  readonly pixels: number;
  /** What runs on it. */
  readonly mode: Mode;
  /** What runs and what else it must serve, without repeats; the first is `mode`. */
  readonly served: readonly Mode[];
  /** Uncompressed rate of `mode`: pixels x frames x pictures x 3 x depth. */
  readonly rateBps: number;
}

export interface PictureResults {
  readonly surfaces: readonly SurfacePicture[];
  readonly pixels: number;
  readonly rateBps: number;
}
