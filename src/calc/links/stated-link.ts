import type { Feed } from '../../plan/feed';

/** The link that a plan states for a surface, its own before the stage's; null where the least is to be taken. */
export function statedLink(feed: Pick<Feed, 'linkId' | 'bySurface'>, surfaceId: string): string | null {
  return feed.bySurface.find((own) => own.surfaceId === surfaceId)?.linkId ?? feed.linkId;
}
