import type { FaultsState } from '../../state/bench-state';
import { panelsNamed } from '../../state/panels-named';
import { useActions, useBench } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { Button } from '../../widgets/Button';
import { SegmentChoice } from '../../widgets/SegmentChoice';
import { SwitchField } from '../../widgets/SwitchField';
import { TextField } from '../../widgets/TextField';

const marks: readonly { readonly value: FaultsState['marks']; readonly label: string }[] = [
  { value: 'panel', label: 'a panel' },
  { value: 'run', label: 'its run' },
  { value: 'column', label: 'its column' },
];

/** How dark panels are marked: by presses on the drawing or by their names; a second press makes them light again. */
export function DarkMarking() {
  const evaluation = useEvaluation((all) => all);
  const faults = useBench((state) => state.faults);
  const { setFaults, toggleDark } = useActions();
  const count = faults.dark.length;
  return (
    <>
      <div className="marking">
        <span>A press on the drawing marks</span>
        <SegmentChoice
          label="What a press marks"
          value={faults.marks}
          choices={marks}
          onChoose={(value) => setFaults({ marks: value })}
        />
      </div>
      <div className="fields">
        <SwitchField
          label="A drag on Unrolled marks a rectangle"
          value={faults.bands}
          onCommit={(bands) => {
            setFaults({ bands });
            return null;
          }}
        />
        <TextField
          label="Mark by name"
          value=""
          most={80}
          placeholder="A C38 R9"
          hint="A panel, a column, a port, a circuit or a box; the same name once more takes the marks away."
          onCommit={(text) => {
            const panels = panelsNamed(evaluation, text);
            if (panels.length === 0) return `Nothing is called ${text}.`;
            toggleDark(panels);
            return null;
          }}
        />
      </div>
      <div className="marking">
        <span role="status">
          {count === 0
            ? 'No panel is marked as dark.'
            : `${count} ${count === 1 ? 'panel is' : 'panels are'} marked as dark.`}
        </span>
        {count > 0 && (
          <Button small onClick={() => setFaults({ dark: [] })}>
            All are lit
          </Button>
        )}
      </div>
      <p className="quiet">
        By keyboard: in the drawing, Shift with an arrow goes from panel to panel and space marks it.{' '}
        {faults.bands && 'Enter holds a corner, Shift with an arrow extends the rectangle, and Enter marks it.'}
      </p>
    </>
  );
}
