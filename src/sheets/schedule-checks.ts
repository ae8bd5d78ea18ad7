import type { Check } from '../calc/chapter';
import type { DisplayOptions } from '../units/display-options';
import { formatSentence } from '../units/format-sentence';
import { namePlaces } from './name-places';
import type { Schedule } from './schedule';
import { words } from './schedule-column';

const marks = { stop: 'stops it', watch: 'look at it' } as const;

/** The checks that stop a plan and those to look at, in this order, each with its sentence and the places that it concerns. */
export function scheduleChecks(checks: readonly Check[], display: DisplayOptions): Schedule {
  const rows = (['stop', 'watch'] as const).flatMap((severity) =>
    checks.filter((check) => check.severity === severity).map((check) => ({ check, mark: marks[severity] })),
  );
  return {
    id: 'checks',
    title: 'Checks',
    columns: [words('mark', 'Mark'), words('sentence', 'What'), words('where', 'Where')],
    count: rows.length,
    row: (index) => {
      const { check, mark } = rows[index]!;
      return [mark, formatSentence(check, display), namePlaces(check.where)];
    },
    panelOf: () => null,
    totals: null,
  };
}
