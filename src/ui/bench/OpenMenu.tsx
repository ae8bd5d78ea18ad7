import { useState } from 'react';
import { isCopyKey } from '../state/copy-key';
import { useBench } from '../state/use-bench';
import type { KeptEntry } from '../storage/plan-shelf';
import { useDeskActions } from '../storage/use-desk';
import { MenuButton, type MenuEntry } from '../widgets/MenuButton';
import { useBenchCommands } from './use-bench-commands';

/** Plans listed in the menu; the rest stand in the dialog of kept plans. */
const listed = 6;

export interface OpenMenuProps {
  readonly label: string;
  /** Entries before those that open a plan. */
  readonly before?: readonly MenuEntry[];
  readonly onKeptPlans: () => void;
}

/** Opens a file, the sample, or a plan that this browser keeps. */
export function OpenMenu({ label, before = [], onKeptPlans }: OpenMenuProps) {
  const desk = useDeskActions();
  const commands = useBenchCommands();
  const here = useBench((state) => state.documentKey);
  const locale = useBench((state) => state.locale);
  const [kept, setKept] = useState<readonly KeptEntry[]>([]);
  const date = new Intl.DateTimeFormat(locale, { dateStyle: 'short', timeStyle: 'short' });

  const plans = kept
    .filter((entry) => entry.key !== here)
    .slice(0, listed)
    .map(
      (entry): MenuEntry => ({
        id: `kept ${entry.key}`,
        label: entry.name || 'Plan without a name',
        note: `${isCopyKey(entry.key) ? 'shared copy, ' : ''}${date.format(entry.keptAtMs)}`,
        onChoose: () => void desk.openKept(entry.key),
      }),
    );
  const entries: readonly MenuEntry[] = [
    ...before,
    { id: 'file', label: 'Open a file …', onChoose: () => void commands.openFile() },
    { id: 'sample', label: 'Open the sample', onChoose: () => void desk.openSample() },
    ...plans,
    { id: 'kept', label: 'All plans kept here …', onChoose: onKeptPlans },
  ];
  const onOpen = () => {
    desk.list().then(setKept, () => setKept([]));
  };
  return <MenuButton label={label} entries={entries} onOpen={onOpen} />;
}
