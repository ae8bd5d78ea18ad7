import { lazy, Suspense, useState } from 'react';
import { useBench } from '../state/use-bench';
import { useDesk, useDeskActions } from '../storage/use-desk';
import { Button } from '../widgets/Button';
import type { MenuEntry } from '../widgets/MenuButton';
import { KeptState } from './KeptState';
import { Mark } from './Mark';
import { NoticeLine } from './NoticeLine';
import { OpenMenu } from './OpenMenu';
import { PlanTitle } from './PlanTitle';
import { ThemeButton } from './ThemeButton';
import { UndoButtons } from './UndoButtons';
import { useBenchCommands } from './use-bench-commands';

const KeptPlans = lazy(async () => ({ default: (await import('./KeptPlans')).KeptPlans }));

export interface TopBarProps {
  /** True where only name, undo and one menu have room. */
  readonly narrow: boolean;
  readonly onFind: () => void;
  readonly onShare: () => void;
}

/** Name of the plan, how it is kept, and what can be done with it as a whole. */
export function TopBar({ narrow, onFind, onShare }: TopBarProps) {
  const commands = useBenchCommands();
  const lengths = useBench((state) => state.plan.lengths);
  const [keptOpen, setKeptOpen] = useState<boolean | null>(null);
  const menuEntries = useNarrowEntries(onFind, onShare);
  return (
    <header className="bar">
      <Mark />
      {!narrow && <span className="wordmark">Voussoir</span>}
      <PlanTitle />
      <KeptState />
      <NoticeLine />
      {narrow ? (
        <>
          <UndoButtons />
          <OpenMenu label="Plan" before={menuEntries} onKeptPlans={() => setKeptOpen(true)} />
        </>
      ) : (
        <>
          <Button onClick={() => void commands.startNew()}>New</Button>
          <OpenMenu label="Open" onKeptPlans={() => setKeptOpen(true)} />
          <UndoButtons />
          <Button onClick={onFind} title="Find a panel, port, circuit or page">
            Find <kbd>Ctrl K</kbd>
          </Button>
          <Button onClick={commands.toggleLengths} title="Show lengths in metres or in feet and inches">
            {lengths === 'feet' ? 'ft' : 'm'}
            <span className="quiet">/ {lengths === 'feet' ? 'm' : 'ft'}</span>
          </Button>
          <ThemeButton />
          <Button onClick={commands.print}>Print</Button>
          <Button onClick={onShare} title="A link and a code that carry the whole plan">
            Share
          </Button>
          <Button look="primary" onClick={() => void commands.save()}>
            Save file
          </Button>
        </>
      )}
      {keptOpen !== null && (
        <Suspense>
          <KeptPlans isOpen={keptOpen} onClose={() => setKeptOpen(false)} />
        </Suspense>
      )}
    </header>
  );
}

/** What the wide bar has as buttons, as entries of the narrow one's menu. */
function useNarrowEntries(onFind: () => void, onShare: () => void): readonly MenuEntry[] {
  const commands = useBenchCommands();
  const desk = useDeskActions();
  const dark = useDesk((state) => state.memory.theme === 'dark');
  return [
    { id: 'new', label: 'New', onChoose: () => void commands.startNew() },
    { id: 'save', label: 'Save file', onChoose: () => void commands.save() },
    { id: 'share', label: 'Share …', onChoose: onShare },
    { id: 'find', label: 'Find …', onChoose: onFind },
    { id: 'lengths', label: 'Metres or feet', onChoose: commands.toggleLengths },
    { id: 'theme', label: dark ? 'Light' : 'Dark', onChoose: () => desk.remember({ theme: dark ? 'light' : 'dark' }) },
    { id: 'print', label: 'Print', onChoose: commands.print },
  ];
}
