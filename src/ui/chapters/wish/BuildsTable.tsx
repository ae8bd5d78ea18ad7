import { type ReactNode, useState } from 'react';
import { askedOpening } from '../../../calc/finder/asked-opening';
import type { Build } from '../../../calc/finder/build';
import { isBuildInUse } from '../../../calc/finder/is-build-in-use';
import type { Plan } from '../../../plan/plan';
import { formatSentence } from '../../../units/format-sentence';
import { SearchProgress } from '../../bench/SearchProgress';
import { useSweep } from '../../state/use-sweep';
import { Button } from '../../widgets/Button';
import { ComparisonTable } from '../../widgets/ComparisonTable';
import { useDisplayOptions } from '../../widgets/display-context';
import type { FigureColumn } from '../../widgets/FigureTable';
import { useFormat } from '../../widgets/use-format';
import { BuildButtons } from './BuildButtons';
import { gatherWeighed, shapeRows, weighedRows } from './build-figures';

export interface BuildsTableProps {
  readonly caption: string;
  readonly plan: Plan;
  /** The same list as long as the builds are the same. */
  readonly builds: readonly Build[];
  /** False while the builds are those of an earlier plan: nothing is asked about them and none can be chosen. */
  readonly isCurrent: boolean;
  readonly isChosen?: (build: Build) => boolean;
  readonly more?: FigureColumn<Build>;
}

/** Builds side by side: shape at once, signal and power as bounds marked 'at least', then exact. */
export function BuildsTable({ caption, plan, builds, isCurrent, isChosen, more }: BuildsTableProps) {
  const format = useFormat();
  const [asked, setAsked] = useState<string | null>(null);
  const search = useSweep(plan, 'weights', isCurrent ? builds : undefined);
  // While the builds are old, old figures stand with them; beside new builds they would be taken for theirs.
  const weighed = gatherWeighed(isCurrent && !search.isCurrent ? [] : search.items);
  const stopsOf = ({ key }: Build) => weighed.exact.get(key)?.stops ?? null;
  const shown = builds.find(({ key }) => key === asked);
  const stops = shown ? (stopsOf(shown) ?? []) : [];
  const name: FigureColumn<Build> = {
    key: 'panel',
    title: 'Panel',
    cell: ({ panelName, mixed }) => (mixed ? `${panelName}, mixed joints` : panelName),
  };
  const choose: FigureColumn<Build> = {
    key: 'use',
    title: 'Choose',
    cell: (build) => <BuildButtons build={build} isCurrent={isCurrent} />,
  };
  const stopping: FigureColumn<Build> = {
    key: 'stops',
    title: 'Stops',
    cell: (build) => {
      const found = stopsOf(build);
      if (found === null) return weighed.exact.get(build.key) === null ? 'none' : '…';
      if (found.length === 0) return '0';
      const isOpen = build.key === shown?.key;
      return (
        <Button
          small
          aria-expanded={isOpen}
          aria-label={`What stops ${build.panelName}, ${build.columns} columns of ${build.rows}`}
          onClick={() => setAsked(isOpen ? null : build.key)}
        >
          {isOpen ? 'Close' : `Show ${found.length}`}
        </Button>
      );
    },
  };
  return (
    <div className={isCurrent ? undefined : 'is-late'} aria-busy={!isCurrent}>
      {isCurrent && (
        <SearchProgress
          of={search}
          label="Working out signal and power"
          share={weighed.exact.size / Math.max(1, builds.length)}
        />
      )}
      <ComparisonTable
        caption={caption}
        figures={[
          name,
          choose,
          ...shapeRows({ format, openingFrom: plan.wish.wall.form === 'flat' ? null : askedOpening(plan.wish).from }),
          ...weighedRows({ weighed, format }),
          stopping,
          ...(more === undefined ? [] : [more]),
        ]}
        things={builds}
        keyOf={({ key }) => key}
        {...(isChosen === undefined ? {} : { isChosen })}
        current={{ is: (build) => isBuildInUse(build, plan.walls), words: 'in use' }}
      />
      {shown && stops.length > 0 && (
        <Stops title={`What would stop the plan with ${shown.panelName}, ${shown.columns} × ${shown.rows}`}>
          {stops.map((stop) => (
            <StopLine key={stop.id} stop={stop} />
          ))}
        </Stops>
      )}
    </div>
  );
}

function Stops({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <>
      <h3>{title}</h3>
      <ul className="stops">{children}</ul>
    </>
  );
}

function StopLine({ stop }: { readonly stop: Parameters<typeof formatSentence>[0] }) {
  return <li>{formatSentence(stop, useDisplayOptions())}</li>;
}
