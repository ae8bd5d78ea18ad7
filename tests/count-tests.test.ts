import { expect, test } from 'vitest';
import { countPlaywright, countVitest, sumOf } from './count-tests.mjs';

test('countVitest counts tests, and a file that could not be loaded as one failure', () => {
  const report = {
    numPassedTests: 12,
    numFailedTests: 2,
    testResults: [
      { status: 'passed', assertionResults: [{}] },
      { status: 'failed', assertionResults: [{}, {}] },
      { status: 'failed', assertionResults: [] },
    ],
  };
  expect(countVitest(report)).toEqual({ passed: 12, failed: 3 });
});

test('countPlaywright counts a flaky test and an error outside tests as failures', () => {
  const report = { stats: { expected: 5, unexpected: 1, flaky: 1, skipped: 3 }, errors: [{}] };
  expect(countPlaywright(report)).toEqual({ passed: 5, failed: 3 });
});

test('sumOf adds both counts', () => {
  expect(sumOf({ passed: 1, failed: 2 }, { passed: 10, failed: 20 })).toEqual({ passed: 11, failed: 22 });
});
