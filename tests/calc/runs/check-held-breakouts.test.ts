import { expect, test } from 'vitest';
import { checkHeldBreakouts } from '../../../src/calc/runs/check-held-breakouts';
import { computeRuns } from '../../../src/calc/runs/compute-runs';
import { wireStage } from '../../../src/calc/runs/wire-stage';
import { plainSurface, plainType } from '../zones/plain-surface';
import { plainRuns } from './plain-runs';

/** Two columns of three panels, each a run, on a processor of two breakouts of ten ports. */
const wall = plainSurface({ columns: 2, bands: [{ type: plainType(216), rows: 3 }] });
const check = (held: readonly { name: string; first: number; last: number; returnName: null }[]) => {
  const given = { ...plainRuns({ wall }), held };
  const stage = wireStage(given);
  return checkHeldBreakouts(held, stage.zones, given.surfaces, computeRuns(given, stage));
};
const chain = (name: string, first: number) => ({ name, first, last: first, returnName: null });

test('checkHeldBreakouts is content where held names take no more breakouts than the runs need', () => {
  expect(check([chain('1A-01', 0), chain('1A-02', 3)])).toEqual([]);
  expect(check([])).toEqual([]);
});

test('checkHeldBreakouts offers to let names at rest go that keep another breakout in use', () => {
  // All of breakout A but the first port is held for what is not there, so that the second run goes to B.
  const rest = [2, 3, 4, 5, 6, 7, 8, 9, 10].map((port) => chain(`1A-${`${port}`.padStart(2, '0')}`, -1));
  const [found] = check([chain('1A-01', 0), ...rest]);
  expect(found).toMatchObject({ id: 'runs.held-breakouts', severity: 'offer', measured: 2, limit: 1 });
  expect(found!.fix!.command).toEqual({ name: 'release-names', args: { ports: rest.map(({ name }) => name) } });
});

test('checkHeldBreakouts has no name to let go where those in force are on several breakouts', () => {
  const [found] = check([chain('1A-01', 0), chain('1B-01', 3)]);
  expect(found).toMatchObject({ measured: 2, limit: 1 });
  expect(found!.fix).toBeUndefined();
});
