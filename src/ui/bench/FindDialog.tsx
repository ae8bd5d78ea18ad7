import { type KeyboardEvent, useId, useState } from 'react';
import { useActions } from '../state/use-bench';
import { useEvaluation } from '../state/use-evaluation';
import { Dialog } from '../widgets/Dialog';
import { rowMove } from '../widgets/row-move';
import { type FoundEntry, findEntries } from './find-entries';
import { useBenchCommands } from './use-bench-commands';

const kindWords = { page: 'page', pick: 'pick', command: 'do' } as const;

export interface FindDialogProps {
  readonly onClose: () => void;
  readonly onShare: () => void;
  /** A name in the stage was picked: shows the drawing where only one leaf has room. */
  readonly onPicked: () => void;
}

/** Finds a panel, any part of the wiring or a page by what one types, and runs what can be done with the plan. */
export function FindDialog({ onClose, onShare, onPicked }: FindDialogProps) {
  const evaluation = useEvaluation((all) => all);
  const actions = useActions();
  const commands = useBenchCommands();
  const [query, setQuery] = useState('');
  const [active, setActive] = useState(0);
  const id = useId();
  const doing: Readonly<Record<string, () => void>> = {
    'New plan': () => void commands.startNew(),
    'Open a file': () => void commands.openFile(),
    'Save to a file': () => void commands.save(),
    Share: onShare,
    Undo: commands.undo,
    Redo: commands.redo,
    'Metres or feet': commands.toggleLengths,
    'Dark or light': commands.toggleTheme,
    Print: commands.print,
  };
  const found = findEntries(query, evaluation, Object.keys(doing));
  const here = Math.min(active, found.length - 1);

  function choose(entry: FoundEntry | undefined): void {
    if (!entry) return;
    onClose();
    if (entry.kind === 'page') actions.goTo(entry.page);
    if (entry.kind === 'command') doing[entry.label]?.();
    if (entry.kind === 'pick') {
      actions.seek(entry.selection.name);
      onPicked();
    }
  }

  function onKeyDown(event: KeyboardEvent): void {
    if (event.key === 'Enter') choose(found[here]);
    const place = event.key === 'Home' || event.key === 'End' ? null : rowMove(event.key, here, found.length, 8);
    if (place === null) return;
    event.preventDefault();
    setActive(place);
    document.getElementById(`${id}-${place}`)?.scrollIntoView({ block: 'nearest' });
  }

  return (
    <Dialog title="Find" isOpen onClose={onClose}>
      <input
        className="find-box"
        role="combobox"
        aria-label="Panel, port, circuit, box, page or command"
        aria-expanded={found.length > 0}
        aria-controls={`${id}-list`}
        aria-activedescendant={found.length > 0 ? `${id}-${here}` : undefined}
        aria-autocomplete="list"
        placeholder="A C38 R9, 3B-04, D4-11, N3, distro 4, Power …"
        autoComplete="off"
        autoFocus
        value={query}
        onChange={(event) => {
          setQuery(event.target.value);
          setActive(0);
        }}
        onKeyDown={onKeyDown}
      />
      {found.length === 0 && <p className="quiet">Nothing has that name.</p>}
      <div id={`${id}-list`} className="found" role="listbox" aria-label="Found">
        {found.map((entry, place) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the box above answers the keys of the list.
          <div
            key={entry.id}
            id={`${id}-${place}`}
            className="menu-item"
            role="option"
            tabIndex={-1}
            aria-selected={place === here}
            onClick={() => choose(entry)}
          >
            <span>{entry.label}</span>
            <small>{kindWords[entry.kind]}</small>
          </div>
        ))}
      </div>
    </Dialog>
  );
}
