import type { BuildStep, Tick } from '../../plan/build-log';
import type { ThingState } from './log-state';

/** Latest moment that a tick can carry. */
const lastMs = 8_640_000_000_000_000;

/**
 * The tick of one press: done where it was not, taken back where it was. It is always newer than what it answers, even
 * where the clock of the device before ran ahead of this one.
 */
export function nextTick(
  thing: Pick<ThingState, 'of' | 'name' | 'steps'>,
  step: BuildStep,
  who: string,
  nowMs: number,
): Tick {
  const before = thing.steps[step];
  const earliestMs = before === undefined ? 0 : before.atMs + 1;
  const atMs = Math.min(lastMs, Math.max(earliestMs, Math.round(nowMs)));
  return { step, of: thing.of, name: thing.name, done: !before?.done, who, atMs };
}
