import { useState } from 'react';
import { parsePlan } from '../../../plan/parse-plan';
import { useActions } from '../../state/use-bench';

/** Takes every catalogue item of another plan's file into this one. */
export function TakeAlong() {
  const { dispatch } = useActions();
  const [refused, setRefused] = useState<string | null>(null);

  async function take(file: File | undefined): Promise<void> {
    if (!file) return;
    const parsed = parsePlan(await file.text());
    if (!('plan' in parsed)) {
      setRefused(parsed.sentence);
      return;
    }
    const { catalogue } = parsed.plan;
    const itemIds = Object.values(catalogue).flatMap((items) => items.map(({ id }) => id));
    const outcome = dispatch({ name: 'take-items', args: { catalogue, itemIds } });
    setRefused('refused' in outcome ? outcome.refused : null);
  }

  return (
    <>
      <label className="file-choice">
        Take along the catalogue of another plan{' '}
        <input type="file" accept=".json,application/json" onChange={(event) => take(event.target.files?.[0])} />
      </label>
      {refused !== null && <p role="alert">{refused}</p>}
    </>
  );
}
