import type { LogState, StepsOfThing } from '../calc/log/log-state';
import { type BuildStep, buildStep, type TickedKind } from '../plan/build-log';
import { counted } from '../units/counted';
import { utcText } from '../units/utc-text';
import type { Cell, Schedule } from './schedule';
import { figures, words } from './schedule-column';

const titles: Readonly<Record<BuildStep, string>> = {
  stands: 'Stands',
  wired: 'Wired',
  powered: 'Powered',
  tested: 'Tested',
};

interface Row {
  readonly of: TickedKind;
  readonly name: string;
  /** null: not in the plan now. */
  readonly panels: readonly number[] | null;
  readonly steps: StepsOfThing;
}

/** What was ticked: a row for each column, port and circuit that somebody ticked, those that rest last; moments in universal time. */
export function scheduleLog(state: LogState): Schedule {
  const rows: readonly Row[] = [
    ...[...state.column, ...state.port, ...state.circuit].filter(({ steps }) => Object.keys(steps).length > 0),
    ...state.resting.map((thing) => ({ ...thing, panels: null })),
  ];
  return {
    id: 'log',
    title: 'Build log',
    columns: [
      words('kind', 'Kind'),
      words('name', 'Name'),
      figures('panels', 'Panels', 'count'),
      ...buildStep.options.flatMap((step) => [
        words(step, titles[step]),
        words(`${step}By`, `${titles[step]}: by`),
        words(`${step}At`, `${titles[step]}: when, UTC`),
      ]),
    ],
    count: rows.length,
    row: (index) => {
      const { of, name, panels, steps } = rows[index]!;
      return [of, name, panels?.length ?? null, ...buildStep.options.flatMap((step) => stepCells(steps, step))];
    },
    panelOf: (index) => rows[index]!.panels?.[0] ?? null,
    totals: [
      null,
      counted(rows.length, 'thing'),
      null,
      ...buildStep.options.flatMap((step) => [
        `${rows.filter(({ steps }) => steps[step]?.done).length} done`,
        null,
        null,
      ]),
    ],
  };
}

function stepCells(steps: StepsOfThing, step: BuildStep): readonly Cell[] {
  const last = steps[step];
  return last ? [last.done ? 'yes' : 'taken back', last.who, utcText(last.atMs)] : [null, null, null];
}
