import { cautions } from '../calc/cautions';
import type { Check, Severity } from '../calc/chapter';
import type { Evaluation, Headline } from '../calc/evaluation';
import type { Plan } from '../plan/plan';
import { headlineFigures } from '../sheets/headline-figures';
import { namePlaces } from '../sheets/name-places';
import type { DisplayOptions } from '../units/display-options';
import { formatSentence } from '../units/format-sentence';
import { alignColumns } from './align-columns';
import { wrapText } from './wrap-text';

/** What `check` prints: the headline figures, then the checks, worst first. */
export function checkReport(
  plan: Pick<Plan, 'name' | 'revision'>,
  evaluation: Pick<Evaluation, 'headline' | 'checks'>,
  options: DisplayOptions,
  width: number,
): string {
  const title = plan.revision === '' ? plan.name : `${plan.name}, revision ${plan.revision}`;
  return [
    ...wrapText(title, width),
    '',
    ...headlineLines(evaluation.headline, options),
    '',
    ...checkLines(evaluation.checks, options, width),
    '',
    ...wrapText(cautions.general, width),
    '',
  ].join('\n');
}

/** Two figures a line: what the stage is on the left, what drives and feeds it on the right. */
function headlineLines(headline: Headline, options: DisplayOptions): string[] {
  const { stage, supply } = headlineFigures(headline, options);
  return alignColumns(
    supply.map(({ name, value }, i) => [stage[i]?.name ?? '', stage[i]?.value ?? '', '', name, value]),
    ['l', 'r', 'l', 'l', 'l'],
  );
}

const order: readonly Severity[] = ['stop', 'watch', 'offer', 'pass'];
const letters: Readonly<Record<Severity, string>> = { stop: 'S', watch: 'W', offer: 'o', pass: '.' };

/** A letter for how bad it is, the sentence, and below it where and what would repair it. */
function checkLines(checks: readonly Check[], options: DisplayOptions, width: number): string[] {
  const counts = order.map((severity) => {
    const count = checks.filter((check) => check.severity === severity).length;
    return `${count} ${severity} (${letters[severity]})`;
  });
  return [
    `Checks: ${counts.join(', ')}`,
    ...order.flatMap((severity) =>
      checks
        .filter((check) => check.severity === severity)
        .flatMap((check) => [
          ...wrapText(`${letters[severity]} ${formatSentence(check, options)}`, width, '  '),
          ...placeLines(check, width),
        ]),
    ),
  ];
}

function placeLines({ id, severity, where, fix }: Check, width: number): string[] {
  if (severity === 'pass') return [];
  const parts = [id, namePlaces(where), fix === undefined ? '' : `repair: ${fix.label}`];
  return wrapText(`[${parts.filter((part) => part !== '').join('; ')}]`, width - 2).map((line) => `  ${line}`);
}
