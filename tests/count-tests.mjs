/** @typedef {{ readonly passed: number, readonly failed: number }} Counts */

/** @type {Counts} */
export const noTests = { passed: 0, failed: 0 };

/** @param {Counts} a @param {Counts} b @returns {Counts} */
export function sumOf(a, b) {
  return { passed: a.passed + b.passed, failed: a.failed + b.failed };
}

/**
 * Counts of a vitest JSON report. A file that could not even be loaded has no tests and counts as one failure.
 * @param {any} report
 * @returns {Counts}
 */
export function countVitest(report) {
  const unloaded = report.testResults.filter(
    (/** @type {any} */ file) => file.status === 'failed' && file.assertionResults.length === 0,
  ).length;
  return { passed: report.numPassedTests, failed: report.numFailedTests + unloaded };
}

/**
 * Counts of a Playwright JSON report. A test that passed only when tried again is a failure; so is an error outside any test.
 * @param {any} report
 * @returns {Counts}
 */
export function countPlaywright(report) {
  const { expected, unexpected, flaky } = report.stats;
  return { passed: expected, failed: unexpected + flaky + (report.errors ?? []).length };
}
