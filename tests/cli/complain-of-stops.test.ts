import { expect, test } from 'vitest';
import type { Check } from '../../src/calc/chapter';
import { complainOfStops } from '../../src/cli/complain-of-stops';
import { givenTerminal } from './given-terminal';

const check = (severity: Check['severity']): Check => ({
  id: 'walls.crossing.A',
  chapter: 'walls',
  severity,
  measured: null,
  limit: null,
  unit: 'count',
  where: [],
  sentence: 'It crosses.',
});

test('complainOfStops counts the checks that stop a plan, and is silent without one', () => {
  const terminal = givenTerminal();
  complainOfStops([check('watch'), check('pass')], terminal);
  expect(terminal.complaints()).toBe('');
  complainOfStops([check('stop'), check('watch'), check('stop')], terminal);
  expect(terminal.complaints()).toBe('voussoir: checks that stop this plan: 2; see check\n');
});
