import { cautions } from '../calc/cautions';
import type { Check, Place, Severity, Unit } from '../calc/chapter';
import type { Evaluation, Headline } from '../calc/evaluation';
import type { Plan } from '../plan/plan';
import type { DisplayOptions } from '../units/display-options';
import { formatQuantity } from '../units/format-quantity';
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

type Figure = readonly [name: string, value: string];

/** Two figures a line: what the stage is on the left, what drives and feeds it on the right. */
function headlineLines(headline: Headline, options: DisplayOptions): string[] {
  const of = (value: number | null, unit: Unit) => (value === null ? '-' : formatQuantity(value, unit, options));
  const stage: Figure[] = [
    ['Panels', of(headline.panels, 'count')],
    ['Columns', of(headline.columns, 'count')],
    ['Rows', of(headline.rows, 'count')],
    ['Inside diameter', of(headline.insideDiameterMm, 'mm')],
    ['Opening', of(headline.openingMm, 'mm')],
    ['Wall height', of(headline.wallHeightMm, 'mm')],
    ['Pixels', of(headline.pixels, 'px')],
    ['Mass', of(headline.massKg, 'kg')],
    ['Price', of(headline.priceTotal, 'money')],
  ];
  const supply: Figure[] = [
    ['Processors', of(headline.processors, 'count')],
    ['Breakouts', of(headline.breakouts, 'count')],
    ['Ports used', `${of(headline.portsUsed, 'count')} (least ${of(headline.portsLeast, 'count')})`],
    ['Panels a port', rangeOf(headline.panelsPerPortMin, headline.panelsPerPortMax)],
    ['Fullest port', of(headline.fullestPortShare, 'share')],
    ['Circuits', of(headline.circuits, 'count')],
    ['Worst leg', of(headline.worstLegA, 'A')],
    ['Neutral', of(headline.neutralA, 'A')],
    ['Full white', of(headline.powerMaxW, 'W')],
    ['Heat, all in', of(headline.heatTons, 'tons')],
  ];
  return alignColumns(
    supply.map(([name, value], i) => [...(stage[i] ?? ['', '']), '', name, value]),
    ['l', 'r', 'l', 'l', 'l'],
  );
}

function rangeOf(least: number | null, most: number | null): string {
  if (least === null || most === null) return '-';
  return least === most ? `${least}` : `${least} to ${most}`;
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

/** Places named before the rest are counted. */
const placesNamed = 6;

/** Names of the places; fields of the file only where nothing else is named. */
function namesOf(where: readonly Place[]): string[] {
  const things = where.filter((place) => place.kind !== 'field');
  return (things.length > 0 ? things : where).map((place) => place.name);
}

function placeLines({ id, severity, where, fix }: Check, width: number): string[] {
  if (severity === 'pass') return [];
  const named = namesOf(where);
  const more = named.length > placesNamed ? [`and ${named.length - placesNamed} more`] : [];
  const parts = [
    id,
    [...named.slice(0, placesNamed), ...more].join(', '),
    fix === undefined ? '' : `repair: ${fix.label}`,
  ];
  return wrapText(`[${parts.filter((part) => part !== '').join('; ')}]`, width - 2).map((line) => `  ${line}`);
}
