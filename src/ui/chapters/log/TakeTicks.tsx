import { useId } from 'react';
import { useBenchCommands } from '../../bench/use-bench-commands';
import { readAddress } from '../../storage/address';
import { useDesk, useDeskActions } from '../../storage/use-desk';
import { TextField } from '../../widgets/TextField';

/** What comes in: ticks by a file or a link, and the name under which this device ticks. */
export function TakeTicks() {
  const { openDropped } = useBenchCommands();
  const { visit, remember } = useDeskActions();
  const who = useDesk((state) => state.memory.who);
  const id = useId();
  return (
    <div className="take-ticks">
      <label className="button scan" htmlFor={id}>
        Take in a file of ticks …
        <input
          id={id}
          className="unseen"
          type="file"
          accept="application/json,.json"
          onChange={(event) => {
            const [file] = event.target.files ?? [];
            event.target.value = '';
            if (file) void openDropped(file);
          }}
        />
      </label>
      <div className="fields">
        <TextField
          label="Take in a link with ticks"
          value=""
          most={40_000}
          placeholder="https:// … #ticks= …"
          onCommit={(text) => {
            const hash = text.slice(text.indexOf('#'));
            if (readAddress(hash).ticks === null) return 'A link with ticks has #ticks= in it.';
            void visit(hash);
            return null;
          }}
        />
        <TextField
          label="Ticked here as"
          value={who}
          most={60}
          hint="Kept in this browser; stands beside every tick."
          onCommit={(name) => {
            remember({ who: name.trim() });
            return null;
          }}
        />
      </div>
    </div>
  );
}
