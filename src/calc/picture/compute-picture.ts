import type { Mode, Picture } from '../../plan/picture';
import { sameMode } from '../../plan/same-mode';
import type { SurfaceSet, SurfaceTable } from '../surfaces/surface-table';
import type { PictureResults, SurfacePicture } from './picture-result';
import { surfacePixels } from './surface-pixels';

export interface PictureInputs {
  readonly picture: Picture;
  readonly surfaces: SurfaceSet;
}

/** What every surface is fed with and must also serve, its pixels and its uncompressed rate. */
export function computePicture({ picture, surfaces }: PictureInputs): PictureResults {
  const fed = surfaces.surfaces.map((surface) => feedSurface(picture, surface));
  return {
    surfaces: fed,
    pixels: fed.reduce((sum, { pixels }) => sum + pixels, 0),
    rateBps: fed.reduce((sum, { rateBps }) => sum + rateBps, 0),
  };
}

function feedSurface(picture: Picture, surface: SurfaceTable): SurfacePicture {
  const { surfaceId, letter } = surface;
  const mode = picture.bySurface.find((own) => own.surfaceId === surfaceId)?.mode ?? picture.base;
  const served: Mode[] = [mode];
  for (const also of picture.alsoServe) {
    const concerned = also.surfaceIds === null || also.surfaceIds.includes(surfaceId);
    if (concerned && !served.some((known) => sameMode(known, also.mode))) served.push(also.mode);
  }
  const pixels = surfacePixels(surface);
  const { rate, pictures, depthBits } = mode;
  return {
    surfaceId,
    letter,
    pixels,
    mode,
    served,
    rateBps: (pixels * rate.frames * pictures * 3 * depthBits) / rate.seconds,
  };
}
