import { expect, test } from 'vitest';
import type { Check, Severity } from '../../../src/calc/chapter';
import type { Evaluation } from '../../../src/calc/evaluation';
import { checksOfPage, statusOf } from '../../../src/ui/bench/page-status';
import { pageById } from '../../../src/ui/state/pages';

const check = (id: string, severity: Severity) => ({ id, severity }) as Check;

test('statusOf is the worst mark and how many bear it', () => {
  expect(statusOf([check('a', 'watch'), check('b', 'stop'), check('c', 'stop')])).toEqual({ status: 'stop', count: 2 });
  expect(statusOf([check('a', 'watch'), check('b', 'pass')])).toEqual({ status: 'watch', count: 1 });
});

test('an offer never marks a page', () => {
  expect(statusOf([check('a', 'offer'), check('b', 'pass')])).toEqual({ status: 'pass', count: 0 });
});

test('a page that nothing was checked on has no tick', () => {
  expect(statusOf([])).toEqual({ status: 'none', count: 0 });
  expect(statusOf([check('a', 'offer')])).toEqual({ status: 'none', count: 0 });
});

test('Runs shows the checks of ports as well, the summary those of all', () => {
  const evaluation = {
    ports: { checks: [check('p', 'pass')] },
    runs: { checks: [check('r', 'stop')] },
    heat: { checks: [check('h', 'watch')] },
    checks: [check('everything', 'pass')],
  } as unknown as Evaluation;
  expect(checksOfPage(evaluation, pageById('runs')).map(({ id }) => id)).toEqual(['p', 'r']);
  expect(checksOfPage(evaluation, pageById('heat'))).toBe(evaluation.heat.checks);
  expect(checksOfPage(evaluation, pageById('summary'))).toBe(evaluation.checks);
});
