/** Longest stretch of a search between two reports; short enough to show progress, long enough not to flood the page. */
const stretchMs = 60;

/** How a search ended: by itself with an answer, or because somebody stopped it. */
export type Ended = { readonly answer: unknown } | { readonly stopped: true };

/**
 * Runs a search in stretches. After each one it reports the items that are new and waits until they are taken, which is when a
 * request to stop comes through. An answer that takes its time is waited for.
 */
export async function runInStretches(
  steps: Generator<unknown, unknown>,
  report: (items: readonly unknown[]) => Promise<void>,
  isStopped: () => boolean,
  now: () => number,
): Promise<Ended> {
  for (;;) {
    const until = now() + stretchMs;
    const items: unknown[] = [];
    let step = steps.next();
    while (!step.done) {
      items.push(step.value);
      if (now() >= until) break;
      step = steps.next();
    }
    if (items.length > 0) await report(items);
    if (isStopped()) return { stopped: true };
    if (step.done) return { answer: await step.value };
  }
}
