import { expect, test } from 'vitest';
import type { Check, Fix } from '../../src/calc/chapter';
import type { Evaluation } from '../../src/calc/evaluation';
import { proveFixes } from '../../src/calc/prove-fixes';
import { setFieldsFix } from '../../src/calc/set-fields-fix';
import type { Plan } from '../../src/plan/plan';
import { samplePlan } from '../arbitraries/sample-plans';

const plan = samplePlan('flat');
const spares = (value: number) =>
  setFieldsFix(`${value} spare`, 'spare nodes', [{ path: ['feed', 'spareNodes'], value }]);
const check = (id: string, severity: Check['severity'], fix?: Fix): Check => ({
  id,
  chapter: 'nodes',
  severity,
  measured: null,
  limit: null,
  unit: 'count',
  where: [],
  sentence: '',
  ...(fix === undefined ? {} : { fix }),
});

/** An evaluation in which three spare nodes clear 'nodes.a', and from five on 'nodes.b' stops. */
function evaluateWith(fix: Fix) {
  let evaluated = 0;
  const evaluate = ({ feed }: Plan) => {
    evaluated++;
    const checks = [
      check('nodes.a', feed.spareNodes >= 3 ? 'pass' : 'stop', fix),
      check('nodes.b', feed.spareNodes >= 5 ? 'stop' : 'pass'),
    ];
    return { nodes: { results: {}, checks, working: [] }, checks } as unknown as Evaluation;
  };
  const { nodes, checks } = proveFixes(evaluate)(plan);
  expect(nodes.checks).toEqual(checks);
  return { fix: checks[0]!.fix, evaluated: () => evaluated };
}

test('proveFixes keeps a fix that holds, without what was to be offered instead', () => {
  expect(evaluateWith({ ...spares(3), otherwise: null }).fix).toEqual(spares(3));
});

test('proveFixes drops a fix that leaves its check standing or stops something else', () => {
  expect(evaluateWith({ ...spares(2), otherwise: null }).fix).toBeUndefined();
  expect(evaluateWith({ ...spares(5), otherwise: null }).fix).toBeUndefined();
});

test('proveFixes offers the other where the first does not hold', () => {
  expect(evaluateWith({ ...spares(5), otherwise: spares(3) }).fix).toEqual(spares(3));
});

test('proveFixes drops a fix that no plan takes', () => {
  expect(evaluateWith({ ...spares(-1), otherwise: null }).fix).toBeUndefined();
});

test('proveFixes evaluates once where nothing is to be proved', () => {
  const { fix, evaluated } = evaluateWith(spares(9));
  expect(fix).toEqual(spares(9));
  expect(evaluated()).toBe(1);
});
