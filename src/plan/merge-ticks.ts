import type { Tick } from './build-log';

function compareTexts(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}

/**
 * Which of two ticks is the newer one: by time, then by who, then a tick before its taking back, then by the rest, so that
 * no two ticks that differ are equal and every device comes to the same answer.
 */
export function compareTicks(one: Tick, other: Tick): number {
  return (
    one.atMs - other.atMs ||
    compareTexts(one.who, other.who) ||
    Number(other.done) - Number(one.done) ||
    compareTexts(one.step, other.step) ||
    compareTexts(one.of, other.of) ||
    compareTexts(one.name, other.name)
  );
}

/**
 * Both lists as one set: every tick of either, each once, the oldest first. Whatever is merged with whatever, in whatever
 * order and however often, the answer is the same list. Where the second list adds nothing to a first that is in order,
 * the answer is the first list itself.
 */
export function mergeTicks(ticks: readonly Tick[], others: readonly Tick[]): readonly Tick[] {
  const merged = [...ticks, ...others].sort(compareTicks);
  const once = merged.filter((tick, place) => place === 0 || compareTicks(merged[place - 1]!, tick) !== 0);
  const adds = once.length !== ticks.length || once.some((tick, place) => compareTicks(tick, ticks[place]!) !== 0);
  return adds ? once : ticks;
}
