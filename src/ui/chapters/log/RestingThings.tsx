import type { RestingThing } from '../../../calc/log/log-state';
import { buildStep } from '../../../plan/build-log';
import { useLog } from '../../state/use-log';
import { type FigureColumn, FigureTable } from '../../widgets/FigureTable';
import { kindWords, stepWords } from './step-words';
import { stepCell } from './thing-rows';
import { useMoment } from './use-moment';

/** What was ticked and is not in the plan now: nothing of it is lost, and it counts again when the plan has it again. */
export function RestingThings() {
  const { resting } = useLog();
  const moment = useMoment();
  if (resting.length === 0) return null;
  const columns: readonly FigureColumn<RestingThing>[] = [
    { key: 'name', title: 'Rests', cell: ({ of, name }) => `${kindWords[of]} ${name}` },
    ...buildStep.options.map((step) => ({
      key: step,
      title: stepWords[step],
      words: true,
      cell: (thing: RestingThing) => stepCell(thing, step, moment),
    })),
  ];
  return (
    <>
      <p className="quiet">
        These names were ticked and are not in the plan as it stands. Their ticks are kept, and count again when the
        plan has them again.
      </p>
      <FigureTable
        caption="Ticked, and not in the plan now"
        columns={columns}
        rows={resting}
        keyOf={({ of, name }) => `${of} ${name}`}
      />
    </>
  );
}
