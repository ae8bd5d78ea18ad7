import { useMemo } from 'react';
import { darkBy } from '../../calc/faults/dark-by';
import { culpritOfSelection } from '../state/culprit-of-selection';
import { faultModelOf } from '../state/fault-model-of';
import { panelsMarked } from '../state/panels-marked';
import { useActions, useBench } from '../state/use-bench';
import { useEvaluation } from '../state/use-evaluation';

export interface DarkPanels {
  /** Numbers of the panels that the drawing shows as dark; null where the page in view asks for none. */
  readonly dark: ArrayLike<number> | null;
  /** Marks what hangs together with a panel; null while a press only picks. */
  readonly onMark: ((panel: number) => void) | null;
  /** Marks all panels of a rectangle; null while a drag moves the drawing. */
  readonly onBand: ((panels: readonly number[]) => void) | null;
}

/** What is dark in the drawing: on the page of faults what the picked part takes along, or what was marked by hand. */
export function useDarkPanels(): DarkPanels {
  const evaluation = useEvaluation((all) => all);
  const isShown = useBench((state) => state.page === 'faults');
  const selection = useBench((state) => state.selection);
  const faults = useBench((state) => state.faults);
  const { toggleDark } = useActions();
  return useMemo(() => {
    if (!isShown) return { dark: null, onMark: null, onBand: null };
    if (faults.asks === 'cause') {
      return {
        dark: faults.dark,
        onMark: (panel) => toggleDark(panelsMarked(evaluation, faults.marks, panel)),
        onBand: faults.bands ? toggleDark : null,
      };
    }
    const culprit = selection && culpritOfSelection(evaluation, selection);
    return { dark: culprit && darkBy(faultModelOf(evaluation), culprit), onMark: null, onBand: null };
  }, [isShown, faults, selection, evaluation, toggleDark]);
}
