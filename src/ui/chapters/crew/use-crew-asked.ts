import { useMemo, useState } from 'react';
import type { CrewSetAsked } from '../../../files/make-crew-set';
import { usePlan } from '../../state/use-plan';
import { usePageAddress } from '../../storage/use-page-address';
import { useDisplayOptions } from '../../widgets/display-context';
import { useCrewChoice } from './crew-choice';

/** What the page asks of the worker, by the choices and the clock; the same object until one of them changes. */
export function useCrewAsked(known: readonly { readonly id: string }[]): CrewSetAsked {
  const { paper, inks, leftOut } = useCrewChoice();
  const lengths = usePlan((plan) => plan.lengths);
  const display = useDisplayOptions();
  const { address } = usePageAddress();
  const [date] = useState(today);
  const parts = useMemo(
    () => (leftOut.size === 0 ? null : known.map(({ id }) => id).filter((id) => !leftOut.has(id))),
    [known, leftOut],
  );
  return useMemo(
    () => ({
      paper: paper ?? (lengths === 'feet' ? 'letter' : 'a4'),
      inks,
      display,
      date,
      address,
      parts,
      fonts: null,
    }),
    [paper, lengths, inks, display, date, address, parts],
  );
}

/** Day by the user's clock, '2026-11-25'. */
function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
}
