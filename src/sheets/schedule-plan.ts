import type { Evaluation } from '../calc/evaluation';
import type { Plan } from '../plan/plan';
import type { Cell, Schedule } from './schedule';
import { figures, words } from './schedule-column';

/** What the other schedules belong to: the plan by name, what it counts, and how many checks stop it or want a look. */
export function schedulePlan(
  { name, revision, currency }: Pick<Plan, 'name' | 'revision' | 'currency'>,
  { headline, checks }: Pick<Evaluation, 'headline' | 'checks'>,
): Schedule {
  const marked = (severity: 'stop' | 'watch') => checks.filter((check) => check.severity === severity).length;
  const rows: readonly (readonly Cell[])[] = [
    ['Plan', name],
    ['Revision', revision === '' ? null : revision],
    ['Currency', currency],
    ['Panels', headline.panels],
    ['Processors', headline.processors],
    ['Ports used', headline.portsUsed],
    ['Circuits', headline.circuits],
    ['Checks that stop it', marked('stop')],
    ['Checks to look at', marked('watch')],
  ];
  return {
    id: 'plan',
    title: 'Plan',
    columns: [words('what', 'What'), figures('figure', 'As planned', 'count')],
    count: rows.length,
    row: (index) => rows[index]!,
    panelOf: () => null,
    totals: null,
  };
}
