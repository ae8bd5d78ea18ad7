import { useEffect, useRef, useState } from 'react';
import type { Check } from '../../calc/chapter';
import { formatSentence } from '../../units/format-sentence';
import { useBench } from '../state/use-bench';
import { useDisplayOptions } from '../widgets/display-context';
import { statusWords } from '../widgets/StatusGlyph';
import { findWorstChange } from './worst-change';

/** Says aloud what a change did to the checks, for whoever does not see them turn. */
export function Announcer() {
  const checks = useBench((state) => state.evaluation?.checks ?? null);
  const loads = useBench((state) => state.loads);
  const options = useDisplayOptions();
  const before = useRef<{ readonly checks: readonly Check[] | null; readonly loads: number }>({ checks, loads });
  const [said, setSaid] = useState('');

  useEffect(() => {
    const last = before.current;
    before.current = { checks, loads };
    if (!checks || !last.checks || last.loads !== loads) return;
    const change = findWorstChange(last.checks, checks);
    if (!change) return;
    const more = change.more > 0 ? ` And ${change.more} more.` : '';
    const kind = change.kind === 'worse' ? statusWords[change.check.severity] : 'cleared';
    setSaid(`${kind}: ${formatSentence(change.check, options)}${more}`);
  }, [checks, loads, options]);

  return (
    <div className="unseen" role="status">
      {said}
    </div>
  );
}
