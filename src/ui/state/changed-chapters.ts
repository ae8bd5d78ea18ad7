import type { Evaluation } from '../../calc/evaluation';

/** The properties of `next` that are not the very objects of `last`; all of them where there is no `last`. */
export function changedChapters(last: Evaluation | null, next: Evaluation): Partial<Evaluation> {
  if (!last) return next;
  const entries = Object.entries(next).filter(([name, value]) => value !== last[name as keyof Evaluation]);
  return Object.fromEntries(entries) as Partial<Evaluation>;
}
