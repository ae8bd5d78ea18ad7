import { expect, test } from 'vitest';
import { checkHeldPorts } from '../../../src/calc/runs/check-held-ports';
import { computeRuns } from '../../../src/calc/runs/compute-runs';
import { wireStage } from '../../../src/calc/runs/wire-stage';
import { plainRuns } from './plain-runs';

const given = plainRuns();
const results = computeRuns(given, wireStage(given));
const first = results.order[0]!;

test('checkHeldPorts says that names stand, could not stay, or rest', () => {
  const chain = (name: string, panel: number) => ({ name, first: panel, last: panel, returnName: null });
  expect(checkHeldPorts([chain('1A-01', first)], results)).toMatchObject([{ id: 'runs.held-names', severity: 'pass' }]);
  expect(checkHeldPorts([chain('8A-01', first)], results)).toMatchObject([
    { id: 'runs.held-names', severity: 'watch', where: [{ kind: 'port', name: '1A-01' }] },
  ]);
  expect(checkHeldPorts([chain('8A-01', -1)], results)).toMatchObject([{ id: 'runs.held-resting', severity: 'offer' }]);
  expect(checkHeldPorts([], results)).toEqual([]);
});
