import type { Evaluation } from '../../calc/evaluation';
import type { Plan } from '../../plan/plan';
import { revisionOnPaper } from '../../plan/revision-on-paper';
import { formatQuantity } from '../../units/format-quantity';
import { describeStage } from '../describe-stage';
import { headlineFigures } from '../headline-figures';
import { scheduleChecks } from '../schedule-checks';
import { stageParts } from '../stage-parts';
import { blocksPart } from './blocks-part';
import type { Block, CrewPart } from './crew-part';
import type { CrewSetOptions } from './crew-set-options';
import { planCautions } from './plan-cautions';

/** Cover: what the plan is, what stops it, who decides, what is in the set, and the way to the plan's file. */
export function coverPart(plan: Plan, evaluation: Evaluation, { display, url }: CrewSetOptions): CrewPart {
  const text = (style: 'title' | 'lead' | 'body' | 'caution', said: string): readonly Block[] =>
    said === '' ? [] : [{ kind: 'text', style, text: said }];
  const { stage, supply } = headlineFigures(evaluation.headline, display);
  const checks = scheduleChecks(evaluation.checks, display);
  const blocks: readonly Block[] = [
    ...text('title', plan.name),
    ...text('lead', setWords(plan)),
    ...text('body', plan.note),
    ...text(
      'body',
      describeStage(stageParts(plan, evaluation), (value, unit) => formatQuantity(value, unit, display)),
    ),
    ...(evaluation.surfaces.total === 0
      ? text(
          'lead',
          'There are no panels in this plan yet: sheets for walls, ceilings, ports and circuits are missing.',
        )
      : []),
    { kind: 'figures', entries: [...stage, ...supply] },
    ...planCautions(plan, evaluation).flatMap((caution) => text('caution', caution)),
    ...(checks.count === 0
      ? text('lead', 'No check stops this plan, and none wants a look.')
      : [{ kind: 'table', title: checks.title, schedule: checks } as const]),
    ...(url === null
      ? text('body', 'No code leads to the plan here: ask whoever made these sheets for its file.')
      : [{ kind: 'qr', url, caption: 'Scan to open a copy of this plan.' } as const]),
    { kind: 'contents' },
  ];
  return blocksPart('cover', 'Cover', null, blocks);
}

function setWords(plan: Plan): string {
  if (plan.revision === '') return 'Crew set';
  const revision = revisionOnPaper(plan);
  return revision === plan.revision
    ? `Crew set, revision ${revision}`
    : `Crew set, changed after revision ${plan.revision} and not issued since`;
}
