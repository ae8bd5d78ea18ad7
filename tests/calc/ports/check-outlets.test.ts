import { expect, test } from 'vitest';
import { checkOutlets } from '../../../src/calc/ports/check-outlets';
import { computePorts } from '../../../src/calc/ports/compute-ports';
import type { Breakout } from '../../../src/plan/breakout';
import type { Processor } from '../../../src/plan/processor';
import { plainBreakout, plainProcessor } from './plain-items';
import { plainPorts } from './plain-ports';

function check(processor: Processor, breakouts: readonly Breakout[]) {
  const given = plainPorts({ processors: [processor], breakouts });
  return checkOutlets(given, given.surfaces.surfaces[0]!, processor, computePorts(given).surfaces[0]!);
}

// Common practice, no source: a 10G trunk carries ten ports of 1G.
test('checkOutlets passes a 10G trunk with ten gigabit ports', () => {
  const [found] = check(plainProcessor(), [plainBreakout()]);
  expect(found).toMatchObject({ id: 'ports.trunk.A', severity: 'pass', measured: 1e10, limit: 1e10, unit: 'bps' });
  expect(found?.sentence).toContain('every port');
});

test('checkOutlets watches a trunk that leaves ports unused and stops one that carries none', () => {
  const few = check(plainProcessor(), [plainBreakout({ ports: 16 })])[0];
  expect(few).toMatchObject({ severity: 'watch', values: { carried: { value: 10 }, ports: { value: 16 } } });
  expect(check(plainProcessor(), [plainBreakout({ trunkMbps: 900 })])[0]).toMatchObject({ severity: 'stop' });
});

test('checkOutlets stops without the breakout and takes the first of the catalogue that carries a port', () => {
  const weak = plainBreakout({ id: 'weak', name: 'Weak', trunkMbps: 100 });
  const other = plainBreakout({ id: 'other', name: 'Other' });
  const [found] = check(plainProcessor(), [weak, other]);
  expect(found).toMatchObject({ id: 'ports.breakout.A', severity: 'stop', fix: { label: 'Take Other' } });
  expect(found?.fix?.command.args).toMatchObject({
    fields: [{ path: ['catalogue', 'processors', 0, 'outlets', 'breakoutId'], value: 'other' }],
  });
  expect(check(plainProcessor(), [])[0]?.fix).toBeUndefined();
});

test('checkOutlets has nothing to say of direct ports', () => {
  expect(check(plainProcessor({}, { outlets: { kind: 'direct', ports: 8 } }), [])).toEqual([]);
});
