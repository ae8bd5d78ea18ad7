import { useMemo } from 'react';
import type { MarkedPanels } from '../drawings/marked-panels';
import { useBench } from '../state/use-bench';
import { usePlan } from '../state/use-plan';
import { useSweep } from '../state/use-sweep';

/** Panels that the drawing outlines on the page of revisions, for having changed since one; null where nothing is marked or known yet. */
export function useChangedPanels(): MarkedPanels | null {
  const plan = usePlan((all) => all);
  const { from, to, marks } = useBench((state) => state.compared);
  const isPage = useBench((state) => state.page === 'revisions');
  const since = plan.revisions.find(({ id }) => id === from) ?? plan.revisions.at(-1);
  const search = useSweep(plan, 'marks', isPage && marks && to === null ? since?.id : undefined);
  const panels = search.isCurrent ? search.answer : null;
  const words = `dashed: changed since revision ${since?.name}`;
  return useMemo(() => (panels === null ? null : { panels, words }), [panels, words]);
}
