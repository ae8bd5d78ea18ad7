import { type VideoLink, videoLinks } from '../tables/video-links';

/** A link of the published table; undefined where there is none of that id. */
export function linkById(id: string): VideoLink | undefined {
  return videoLinks.find((link) => link.id === id);
}
