import { useMemo, useState } from 'react';
import type { Build, PanelBuilds } from '../../../calc/finder/build';
import { SearchProgress } from '../../bench/SearchProgress';
import { useBench } from '../../state/use-bench';
import { useSweep } from '../../state/use-sweep';
import { Button } from '../../widgets/Button';
import { EmptyState } from '../../widgets/EmptyState';
import type { FigureColumn } from '../../widgets/FigureTable';
import { BuildsTable } from './BuildsTable';

const none: readonly PanelBuilds[] = [];

/** The row that opens and closes a panel's other rings and heights. */
function othersRow(
  found: readonly PanelBuilds[],
  title: string,
  opened: string | null,
  open: (panelId: string | null) => void,
): FigureColumn<Build> {
  return {
    key: 'others',
    title,
    cell: ({ panelId, panelName }) => {
      const count = (found.find((one) => one.panelId === panelId)?.builds.length ?? 1) - 1;
      if (count === 0) return 'none';
      const isOpen = panelId === opened;
      return (
        <Button
          small
          aria-expanded={isOpen}
          aria-label={`${title} of ${panelName}`}
          onClick={() => open(isOpen ? null : panelId)}
        >
          {isOpen ? 'Close' : `${count} more`}
        </Button>
      );
    },
  };
}

/** Which panel, which ring: one best build for each panel side by side; each opens to its other rings and heights. */
export function BuildsFound() {
  const plan = useBench((state) => state.plan);
  const [opened, setOpened] = useState<string | null>(null);
  const search = useSweep(plan, 'builds', null);
  const { isCurrent } = search;
  const found = search.answer ?? none;
  const best = useMemo(() => found.flatMap(({ builds }) => builds.slice(0, 1)), [found]);
  const others = useMemo(() => found.find(({ panelId }) => panelId === opened)?.builds.slice(1) ?? [], [found, opened]);
  const refused = found.filter((one) => one.refused !== null);
  const title = plan.wish.wall.form === 'ring' ? 'Other rings and heights' : 'Other lengths and heights';
  const progress = <SearchProgress of={search} label="Looking for builds" share={null} />;
  const { acrossMm, heightMm } = plan.wish.wall;
  if (acrossMm === null || heightMm === null)
    return <EmptyState title="Say how large and how high, and every panel shows its best ring here." />;
  if (search.answer === null) return progress;
  return (
    <>
      {!search.isRunning && progress}
      {best.length > 0 && (
        <BuildsTable
          caption="One best build for each panel"
          plan={plan}
          builds={best}
          isCurrent={isCurrent}
          isChosen={({ panelId }) => panelId === opened}
          more={othersRow(found, title, opened, setOpened)}
        />
      )}
      {others.length > 0 && (
        <>
          <h3>
            {title} of {others[0]!.panelName}
          </h3>
          <BuildsTable
            caption={`${title} of ${others[0]!.panelName}`}
            plan={plan}
            builds={others}
            isCurrent={isCurrent}
          />
        </>
      )}
      {refused.length > 0 && (
        <ul className="stops">
          {refused.map(({ panelId, panelName, refused: reason }) => (
            <li key={panelId}>
              {panelName}: {reason}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
