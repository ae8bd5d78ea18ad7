import type { Check, Severity } from './chapter';

const severities: readonly Severity[] = ['stop', 'watch', 'offer', 'pass'];

/** The checks of all chapters: by severity, within it in the order of the chapters given. */
export function worstFirst(chapters: readonly { readonly checks: readonly Check[] }[]): readonly Check[] {
  const checks = chapters.flatMap((chapter) => chapter.checks);
  return severities.flatMap((severity) => checks.filter((check) => check.severity === severity));
}
