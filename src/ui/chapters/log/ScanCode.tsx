import { useId, useState } from 'react';
import { useSay } from '../../bench/notice-context';
import { findSelection } from '../../state/find-selection';
import { selectShownEvaluation } from '../../state/selectors';
import { useBenchStore } from '../../state/use-bench';
import { readAddress } from '../../storage/address';
import { useDeskStore } from '../../storage/use-desk';
import { decodePicture } from './decode-picture';
import { readCode } from './read-code';

/** Takes a photo of a code, or a picture of one, and goes where it leads: a panel, a port, a circuit, a shared plan. */
export function ScanCode() {
  const [looks, setLooks] = useState(false);
  const id = useId();
  const say = useSay();
  const follow = useFollowCode();

  async function scan(file: File): Promise<void> {
    setLooks(true);
    try {
      const text = await decodePicture(file);
      if (text === null) say('No code was found in this picture. Hold the phone closer, still and straight.');
      else await follow(text);
    } catch {
      say('This file is no picture that the browser can read.');
    } finally {
      setLooks(false);
    }
  }

  return (
    <label className="button scan" htmlFor={id}>
      {looks ? 'Looking …' : 'Scan a code'}
      <input
        id={id}
        className="unseen"
        type="file"
        accept="image/*"
        capture="environment"
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          // The same picture may be taken again.
          event.target.value = '';
          if (file) void scan(file);
        }}
      />
    </label>
  );
}

function useFollowCode(): (text: string) => Promise<void> {
  const desk = useDeskStore();
  const { store, actions } = useBenchStore();
  const say = useSay();
  return async (text) => {
    const code = readCode(text);
    if (code.kind === 'link') {
      await desk.actions.visit(code.hash);
      // Where the plan is not here the page says so itself.
      if (!desk.store.getState().problem) sayIfUnknown(readAddress(code.hash).sought);
    } else if (code.kind === 'name') {
      actions.seek(code.name);
      sayIfUnknown(code.name);
    } else say(`This code says something else: ${code.text.slice(0, 120)}`);
  };

  function sayIfUnknown(name: string | null): void {
    const evaluation = selectShownEvaluation(store.getState());
    if (name !== null && evaluation && !findSelection(evaluation, name)) say(`This plan has nothing called ${name}.`);
  }
}
