import type { StoreApi } from 'zustand/vanilla';
import type { BenchActions, BenchState } from './bench-state';
import { pickSought } from './pick-sought';
import { isSameSelection } from './selection';
import { selectRecomputing, selectShownEvaluation } from './selectors';

/** How the plan is looked at: nothing here changes the plan or can be undone. */
export function createViewActions({
  getState,
  setState,
}: StoreApi<BenchState>): Pick<
  BenchActions,
  'select' | 'seek' | 'goTo' | 'setDrawing' | 'setFollows' | 'setFaults' | 'setCompared' | 'setLog' | 'toggleDark'
> {
  return {
    select(selection) {
      if (!isSameSelection(selection, getState().selection)) setState({ selection });
    },
    seek(name) {
      const evaluation = selectShownEvaluation(getState());
      if (!evaluation || selectRecomputing(getState())) setState({ sought: name });
      else setState(pickSought(getState(), name, evaluation));
    },
    setLog: (log) => setState({ log }),
    setCompared: (change) => setState(({ compared }) => ({ compared: { ...compared, ...change } })),
    setFaults: (change) => setState(({ faults }) => ({ faults: { ...faults, ...change } })),
    toggleDark(panels) {
      setState(({ faults }) => {
        const dark = new Set(faults.dark);
        const areDark = panels.every((panel) => dark.has(panel));
        for (const panel of panels) {
          if (areDark) dark.delete(panel);
          else dark.add(panel);
        }
        return { faults: { ...faults, dark: [...dark].sort((one, other) => one - other) } };
      });
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
