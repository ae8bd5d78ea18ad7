import type { Evaluation } from '../calc/evaluation';
import type { Plan } from '../plan/plan';
import { listSchedules } from '../sheets/list-schedules';
import type { NamedFile } from './files-to-zip';
import { schedulesToXlsx } from './schedules-to-xlsx';

/** Every schedule of a plan in one spreadsheet file, a sheet each. The same plan gives the same bytes. */
export async function planWorkbook(plan: Plan, evaluation: Evaluation): Promise<NamedFile> {
  const [first, ...others] = listSchedules(plan, evaluation);
  const bytes = await schedulesToXlsx([first.schedule, ...others.map(({ schedule }) => schedule)], plan.currency);
  return { name: 'schedules.xlsx', bytes };
}
