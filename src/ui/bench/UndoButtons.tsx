import { selectRedoLabel, selectUndoLabel } from '../state/selectors';
import { useActions, useBench } from '../state/use-bench';
import { Button } from '../widgets/Button';

/** Undo and redo, each with what it would take back or bring back. */
export function UndoButtons() {
  const undoLabel = useBench(selectUndoLabel);
  const redoLabel = useBench(selectRedoLabel);
  const { undo, redo } = useActions();
  return (
    <>
      <Button
        disabled={undoLabel === null}
        title={undoLabel === null ? 'Nothing to undo' : `Undo ${undoLabel}`}
        onClick={undo}
      >
        Undo
      </Button>
      <Button
        disabled={redoLabel === null}
        title={redoLabel === null ? 'Nothing to redo' : `Redo ${redoLabel}`}
        onClick={redo}
      >
        Redo
      </Button>
    </>
  );
}
