import type { Check, Fix } from './chapter';

/**
 * `checks`, each fix left only where it holds what it promises: tried by `recheck`, which gives the checks after it, its
 * own check is no longer a stop or a watch, and nothing stops that did not stop before.
 */
export function keepSoundFixes(checks: readonly Check[], recheck: (fix: Fix) => readonly Check[]): readonly Check[] {
  const stopped = new Set(checks.flatMap((check) => (check.severity === 'stop' ? [check.id] : [])));
  return checks.map((check) => {
    if (check.fix === undefined) return check;
    const after = recheck(check.fix);
    const clears = !after.some((one) => one.id === check.id && (one.severity === 'stop' || one.severity === 'watch'));
    if (clears && !after.some((one) => one.severity === 'stop' && !stopped.has(one.id))) return check;
    const { fix: _unsound, ...plain } = check;
    return plain;
  });
}
