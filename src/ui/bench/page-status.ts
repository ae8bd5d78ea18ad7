import type { Check } from '../../calc/chapter';
import type { Evaluation } from '../../calc/evaluation';
import type { Page } from '../state/pages';

/** How a page stands: its worst mark and how many checks bear it. An offer marks nothing; `none`: nothing passed yet. */
export interface PageStatus {
  readonly status: 'none' | 'pass' | 'watch' | 'stop';
  readonly count: number;
}

/** Checks that stand on a page: those of its chapters; the summary has them all. */
export function checksOfPage(evaluation: Evaluation, page: Page): readonly Check[] {
  if (page.id === 'summary') return evaluation.checks;
  const [only, ...more] = page.chapters;
  if (only !== undefined && more.length === 0) return evaluation[only].checks;
  return page.chapters.flatMap((chapter) => evaluation[chapter].checks);
}

export function statusOf(checks: readonly Check[]): PageStatus {
  const stops = checks.filter((check) => check.severity === 'stop').length;
  if (stops > 0) return { status: 'stop', count: stops };
  const watches = checks.filter((check) => check.severity === 'watch').length;
  if (watches > 0) return { status: 'watch', count: watches };
  return { status: checks.some((check) => check.severity === 'pass') ? 'pass' : 'none', count: 0 };
}
