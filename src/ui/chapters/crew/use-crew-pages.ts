import { useEffect, useMemo, useState } from 'react';
import type { CrewSetAsked, PagePicture } from '../../../files/make-crew-set';
import { useBench } from '../../state/use-bench';
import { type Sweep, useSweep } from '../../state/use-sweep';
import { useCrewAsked } from './use-crew-asked';

/** A part of the set, and how many pages it takes; null while it is left out or not laid out yet. */
export interface PartChoice {
  readonly id: string;
  readonly title: string;
  readonly pages: number | null;
}

export interface CrewPages {
  readonly asked: CrewSetAsked;
  readonly parts: readonly PartChoice[];
  readonly pages: readonly PagePicture[];
  readonly search: Sweep<'crew'>;
  readonly share: number;
  /** All pages of what is chosen now are there. */
  readonly isReady: boolean;
}

const none: readonly { readonly id: string; readonly title: string }[] = [];

/** The pages that are chosen, laid out in the worker anew after each change; the last ones stay until then. */
export function useCrewPages(): CrewPages {
  const plan = useBench((state) => state.plan);
  const [known, setKnown] = useState(none);
  const asked = useCrewAsked(known);
  const search = useSweep(plan, 'crew', asked);
  const { items, isCurrent } = search;
  const pages = useMemo(() => items.flatMap((item) => item.pages ?? []), [items]);
  const found = items[0]?.parts;
  useEffect(() => {
    if (found !== undefined) setKnown((before) => (sameIds(before, found) ? before : found));
  }, [found]);
  const share = isCurrent ? (items.at(-1)?.done ?? 0) : 0;
  const isReady = isCurrent && !search.isRunning && !search.wasStopped && search.failure === null;
  const counted = usePageCounts(pages, isReady);
  return {
    asked,
    parts: known.map((part) => ({ ...part, pages: counted.get(part.id) ?? null })),
    pages,
    search,
    share,
    isReady,
  };
}

/** Pages of each part when it was last laid out: one that is left out keeps the number that it had. */
function usePageCounts(pages: readonly PagePicture[], isReady: boolean): ReadonlyMap<string, number> {
  const [counts, setCounts] = useState<ReadonlyMap<string, number>>(new Map());
  useEffect(() => {
    if (!isReady) return;
    setCounts((before) => {
      const here = new Map<string, number>();
      for (const { partId } of pages) here.set(partId, (here.get(partId) ?? 0) + 1);
      return new Map([...before, ...here]);
    });
  }, [pages, isReady]);
  return counts;
}

function sameIds(a: readonly { readonly id: string }[], b: readonly { readonly id: string }[]): boolean {
  return a.length === b.length && a.every(({ id }, i) => id === b[i]!.id);
}
