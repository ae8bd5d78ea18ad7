import { useEffect, useRef, useState } from 'react';
import { selectionTitle } from '../../bench/selection-title';
import { useActions, useBench } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { findInHand } from './find-in-hand';
import { InHand } from './InHand';
import { ProgressByArea } from './ProgressByArea';
import { ScanCode } from './ScanCode';
import { SendTicks } from './SendTicks';
import './log.css';

/** Names that a search lists at most: a thumb scrolls no further. */
const listMost = 12;

export interface BehindWallProps {
  readonly onDrawing: () => void;
}

/** The plan on a phone behind the wall: what is looked for first, then what is in hand, and until then how far the stage is. */
export function BehindWall({ onDrawing }: BehindWallProps) {
  const evaluation = useEvaluation((all) => all);
  const selection = useBench((state) => state.selection);
  const { seek } = useActions();
  const [query, setQuery] = useState('');
  const box = useRef<HTMLElement>(null);
  const found = findInHand(evaluation, query).slice(0, listMost);

  // biome-ignore lint/correctness/useExhaustiveDependencies: another thing in hand begins at its top.
  useEffect(() => {
    box.current?.querySelector('.hand-scroll')?.scrollTo({ top: 0 });
  }, [selection?.kind, selection?.name]);

  function pick(name: string): void {
    setQuery('');
    seek(name);
  }

  return (
    <main ref={box} className="hand" id="book" tabIndex={-1}>
      <h1 className="unseen">Behind the wall</h1>
      <form
        className="hand-find"
        onSubmit={(event) => {
          event.preventDefault();
          const [first] = found;
          if (first) pick(first.name);
        }}
      >
        <input
          id="hand-find"
          className="find-box"
          type="search"
          aria-label="Panel, port or circuit"
          placeholder="A C38 R9, 3B-04, D4-11"
          autoComplete="off"
          autoCapitalize="characters"
          enterKeyHint="search"
          value={query}
          onChange={(event) => setQuery(event.target.value)}
        />
        <ScanCode />
      </form>
      {query.trim() === '' ? (
        selection ? (
          <InHand selection={selection} onDrawing={onDrawing} />
        ) : (
          // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard.
          <section className="hand-scroll" aria-label="How far the stage is" tabIndex={0}>
            <p className="quiet">Type a name, or scan the code on a sheet or a label.</p>
            <ProgressByArea />
            <SendTicks />
          </section>
        )
      ) : (
        <ul className="hand-scroll hand-found" aria-label="Found">
          {found.length === 0 && <li className="quiet">Nothing has that name.</li>}
          {found.map((one) => (
            <li key={`${one.kind} ${one.name}`}>
              <button type="button" className="button" onClick={() => pick(one.name)}>
                {selectionTitle(one)}
              </button>
            </li>
          ))}
        </ul>
      )}
    </main>
  );
}
