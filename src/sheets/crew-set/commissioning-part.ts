import { cautions } from '../../calc/cautions';
import type { Evaluation } from '../../calc/evaluation';
import type { Plan } from '../../plan/plan';
import type { DisplayOptions } from '../../units/display-options';
import { words } from '../schedule-column';
import { blocksPart } from './blocks-part';
import { commissioningSteps } from './commissioning-steps';
import type { CrewPart } from './crew-part';

/** The list by which a stage is measured and handed over: a table for each step, with room for what was measured and who signs. */
export function commissioningPart(plan: Plan, evaluation: Evaluation, display: DisplayOptions): CrewPart | null {
  const steps = commissioningSteps(plan, evaluation, display);
  if (steps.length === 0) return null;
  return blocksPart('commissioning', 'Commissioning and hand-over', cautions.general, [
    { kind: 'text', style: 'body', text: 'In this order. Write down what was measured; who measured it signs.' },
    ...steps.map(({ title, rows }, i) => ({
      kind: 'table' as const,
      title,
      schedule: {
        id: `commissioning-${i + 1}`,
        title,
        columns: [words('what', 'What'), words('wanted', 'Wanted')],
        count: rows.length,
        row: (index: number) => [rows[index]!.what, rows[index]!.wanted],
        panelOf: () => null,
        totals: null,
      },
      boxes: ['Measured', 'Signed'],
    })),
  ]);
}
