import { useEffect, useMemo, useState } from 'react';
import { createEvaluator } from '../../../calc/evaluate';
import type { Build, ExactFigures, PanelBuilds } from '../../../calc/finder/build';
import { exactList } from '../../../calc/finder/exact-figures';
import { findBuilds } from '../../../calc/finder/find-builds';
import { freshId } from '../../../plan/fresh-id';
import { useActions, useBench } from '../../state/use-bench';
import { useSweep } from '../../state/use-sweep';
import { Button } from '../../widgets/Button';
import { ComparisonTable } from '../../widgets/ComparisonTable';
import { EmptyState } from '../../widgets/EmptyState';
import type { FigureColumn } from '../../widgets/FigureTable';
import { ProgressBar } from '../../widgets/ProgressBar';
import { type Format, useFormat } from '../../widgets/use-format';

type Exact = ReadonlyMap<string, ExactFigures | null>;

function columnsOf(
  format: Format,
  exact: Exact,
  onUse: (build: Build) => void,
  onKeep: (build: Build) => void,
): readonly FigureColumn<Build>[] {
  const of = (build: Build, figure: (figures: ExactFigures) => string) => {
    const figures = exact.get(build.key);
    return figures ? figure(figures) : figures === null ? 'none' : '…';
  };
  return [
    {
      key: 'panel',
      title: 'Panel',
      cell: ({ panelName, mixed }) => (mixed ? `${panelName}, mixed joints` : panelName),
    },
    {
      key: 'use',
      title: 'Choose',
      cell: (build) => (
        <>
          <Button
            small
            look="primary"
            aria-label={`Use ${build.panelName}, ${build.columns} columns of ${build.rows}`}
            onClick={() => onUse(build)}
          >
            Use
          </Button>{' '}
          <Button
            small
            aria-label={`Keep ${build.panelName}, ${build.columns} columns of ${build.rows} as an alternative`}
            onClick={() => onKeep(build)}
          >
            Keep
          </Button>
        </>
      ),
    },
    { key: 'across', title: 'Across', cell: ({ acrossMm }) => format(acrossMm, 'mm') },
    { key: 'opening', title: 'Opening', cell: ({ openingMm }) => format(openingMm, 'mm', 'none') },
    {
      key: 'height',
      title: 'Height',
      cell: ({ heightMm, withinStack }) => `${format(heightMm, 'mm')}${withinStack ? '' : ', above its stack'}`,
    },
    { key: 'lattice', title: 'Columns × rows', cell: ({ columns, rows }) => `${columns} × ${rows}` },
    { key: 'worst', title: 'Off the circle', cell: ({ worstMm }) => format(worstMm, 'mm', 'flat') },
    { key: 'room', title: 'Room in the hall', cell: ({ roomMm }) => format(roomMm, 'mm', 'not stated') },
    { key: 'area', title: 'Area', cell: ({ areaM2 }) => format(areaM2, 'm2') },
    { key: 'pixels', title: 'Pixels', cell: ({ pixels }) => format(pixels, 'px') },
    { key: 'mass', title: 'Mass', cell: ({ massKg }) => format(massKg, 'kg') },
    { key: 'price', title: 'Panels cost', cell: ({ price }) => format(price, 'money', 'not stated') },
    {
      key: 'processors',
      title: 'Processors',
      cell: (build) => of(build, ({ processors }) => format(processors, 'count')),
    },
    { key: 'ports', title: 'Ports', cell: (build) => of(build, ({ ports }) => format(ports, 'count')) },
    { key: 'leg', title: 'Worst leg', cell: (build) => of(build, ({ worstLegA }) => format(worstLegA, 'A')) },
    { key: 'stops', title: 'Stops', cell: (build) => of(build, ({ stops }) => format(stops.length, 'count')) },
  ];
}

/** The row that opens and closes a panel's other rings. */
function othersRow(
  found: readonly PanelBuilds[],
  opened: string | null,
  open: (panelId: string | null) => void,
): FigureColumn<Build> {
  return {
    key: 'others',
    title: 'Other rings',
    cell: ({ panelId, panelName }) => {
      const count = (found.find((one) => one.panelId === panelId)?.builds.length ?? 1) - 1;
      if (count === 0) return 'none';
      const isOpen = panelId === opened;
      return (
        <Button
          small
          aria-expanded={isOpen}
          aria-label={`Other rings of ${panelName}`}
          onClick={() => open(isOpen ? null : panelId)}
        >
          {isOpen ? 'Close' : `${count} more`}
        </Button>
      );
    },
  };
}

/** Which panel, which ring: one best build for each panel side by side; each opens to its other rings. */
export function BuildsFound() {
  const plan = useBench((state) => state.plan);
  const { dispatch } = useActions();
  const format = useFormat();
  const [opened, setOpened] = useState<string | null>(null);
  const evaluator = useMemo(() => createEvaluator(), []);
  const { start, stop, items, running } = useSweep<
    { readonly key: string; readonly figures: ExactFigures | null },
    void
  >();
  const found = useMemo(() => findBuilds(plan), [plan]);
  const others = found.find(({ panelId }) => panelId === opened)?.builds ?? null;
  const shown = useMemo(
    () => [...found.flatMap(({ builds }) => builds.slice(0, 1)), ...(others?.slice(1) ?? [])],
    [found, others],
  );

  useEffect(() => {
    start(() => exactList(plan, shown, evaluator.evaluate));
    return stop;
  }, [plan, shown, evaluator, start, stop]);

  const exact: Exact = new Map(items.map(({ key, figures }) => [key, figures]));
  const use = (build: Build) => dispatch(build.command);
  const keep = (build: Build) => {
    if (build.command.name !== 'use-build') return;
    const name = `${build.panelName}, ${build.columns} columns of ${build.rows}`;
    dispatch({
      name: 'keep-alternative',
      args: { id: freshId(plan, 'alternative'), name, wall: build.command.args.wall },
    });
  };
  const columns = columnsOf(format, exact, use, keep);
  const best = found.flatMap(({ builds }) => builds.slice(0, 1));
  const refused = found.filter((one) => one.refused !== null);
  if (best.length === 0)
    return <EmptyState title="Say how large and how high, and every panel shows its best ring here." />;
  return (
    <>
      {running && (
        <ProgressBar
          label="Working out signal and power"
          share={items.length / Math.max(1, shown.length)}
          onStop={stop}
        />
      )}
      <ComparisonTable
        caption="One best build for each panel"
        figures={[...columns, othersRow(found, opened, setOpened)]}
        things={best}
        keyOf={({ key }) => key}
        isChosen={({ panelId }) => panelId === opened}
      />
      {others && others.length > 1 && (
        <>
          <h3>Other rings of {others[0]!.panelName}</h3>
          <ComparisonTable
            caption={`Other rings of ${others[0]!.panelName}`}
            figures={columns}
            things={others.slice(1)}
            keyOf={({ key }) => key}
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
