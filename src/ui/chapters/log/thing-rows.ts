import { isDone, type ThingState } from '../../../calc/log/log-state';
import { type BuildStep, buildStep } from '../../../plan/build-log';

/** Which things a table shows: all of them, or those of which a step is still open, or done. */
export type ThingFilter = 'all' | `open ${BuildStep}` | `done ${BuildStep}`;

export const thingFilters: readonly { readonly value: ThingFilter; readonly label: string }[] = [
  { value: 'all', label: 'all' },
  { value: 'open stands', label: 'do not stand yet' },
  ...(['wired', 'powered', 'tested'] as const).map((step) => ({
    value: `open ${step}` as const,
    label: `not yet ${step}`,
  })),
  { value: 'done stands', label: 'stand' },
  ...(['wired', 'powered', 'tested'] as const).map((step) => ({ value: `done ${step}` as const, label: step })),
];

export function filterThings(things: readonly ThingState[], filter: ThingFilter): readonly ThingState[] {
  const step = buildStep.options.find((one) => filter.endsWith(` ${one}`));
  if (step === undefined) return things;
  const wanted = filter.startsWith('done');
  return things.filter((thing) => isDone(thing, step) === wanted);
}

/** What a table says of one step: '✓ Ada, 25 Nov, 14:05'; empty where nobody ticked it. */
export function stepCell(
  { steps }: Pick<ThingState, 'steps'>,
  step: BuildStep,
  moment: (atMs: number) => string,
): string {
  const last = steps[step];
  return last ? `${last.done ? '✓' : 'taken back'} ${last.who}, ${moment(last.atMs)}` : '';
}
