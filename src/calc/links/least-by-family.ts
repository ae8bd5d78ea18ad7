import type { VideoLink } from '../tables/video-links';
import { leastLink } from './least-link';
import { linkById } from './link-by-id';
import type { LinkFit, SurfaceLinks } from './link-result';

/** The least link of each family that carries a surface's canvases; a family of which none does is left out. */
export function leastByFamily({
  fits,
  timing,
  canvas,
}: Pick<SurfaceLinks, 'fits' | 'timing' | 'canvas'>): ReadonlyMap<VideoLink['kind'], LinkFit> {
  const timed = timing ?? canvas;
  const least = new Map<VideoLink['kind'], LinkFit>();
  if (timed === null) return least;
  const kindOf = ({ linkId }: LinkFit) => linkById(linkId)!.kind;
  for (const kind of new Set(fits.map(kindOf))) {
    const found = leastLink(
      fits.filter((fit) => kindOf(fit) === kind),
      timed,
    );
    if (found !== null) least.set(kind, found);
  }
  return least;
}
