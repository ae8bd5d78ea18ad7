import type { StoreApi } from 'zustand/vanilla';
import type { BenchActions, BenchState } from './bench-state';
import { isSameSelection } from './selection';

/** How the plan is looked at: nothing here changes the plan or can be undone. */
export function createViewActions({
  getState,
  setState,
}: StoreApi<BenchState>): Pick<BenchActions, 'select' | 'goTo' | 'setDrawing' | 'setFollows'> {
  return {
    select(selection) {
      if (!isSameSelection(selection, getState().selection)) setState({ selection });
    },
    goTo(page, field) {
      const serial = (getState().asked?.serial ?? 0) + 1;
      setState(field === undefined ? { page } : { page, asked: { field, serial } });
    },
    setDrawing(change) {
      const byHand = change.view !== undefined || change.tint !== undefined ? { follows: false } : {};
      setState(({ drawing }) => ({ drawing: { ...drawing, ...byHand, ...change } }));
    },
    setFollows: (follows) => setState({ follows }),
  };
}
