import { createEvaluator } from '../../../src/calc/evaluate';
import type { Evaluation } from '../../../src/calc/evaluation';
import type { Plan } from '../../../src/plan/plan';
import type { Block, CrewPart, CrewSheet, TableBlock } from '../../../src/sheets/crew-set/crew-part';
import type { CrewSetOptions } from '../../../src/sheets/crew-set/crew-set-options';

/** About what a drawing has on a level A3. */
export const options: CrewSetOptions = {
  display: { lengths: 'metric', locale: 'en-GB', currency: 'EUR' },
  rooms: [{ widthMm: 390, heightMm: 250 }],
  url: null,
  since: null,
};

export interface Evaluated {
  readonly plan: Plan;
  readonly evaluation: Evaluation;
}

export function evaluated(plan: Plan): Evaluated {
  return { plan, evaluation: createEvaluator().evaluate(plan) };
}

export function blocksOf(sheet: CrewSheet): readonly Block[] {
  return sheet.kind === 'blocks' ? sheet.blocks : sheet.under;
}

export function textsOf(part: CrewPart): readonly string[] {
  return part.sheets.flatMap(blocksOf).flatMap((block) => (block.kind === 'text' ? [block.text] : []));
}

export function tablesOf(part: CrewPart): readonly TableBlock[] {
  return part.sheets.flatMap(blocksOf).filter((block) => block.kind === 'table');
}
