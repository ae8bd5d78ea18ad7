import { expect, it } from 'vitest';
import { makeFaultModel } from '../../../src/calc/faults/fault-model';
import { findCulprit } from '../../../src/calc/faults/find-culprit';
import { panelsOn } from '../../../src/calc/faults/panels-on';
import { smallStage } from './small-stage';

const model = makeFaultModel(smallStage({ returnPorts: ['2B-02', null, null, null], legs: ['L1', 'L2-L3', 'L3'] }));

it.each([
  ['C2 R2', [4]],
  ['jumper C1 R1 to C1 R2', [0, 1]],
  ['power jumper C1 R2 to C2 R2', [1, 4]],
  ['home run 1A-02', [3]],
  // The return of run 1A-01 stands at its last panel; its port feeds the whole run.
  ['home run 2B-02', [2]],
  ['port 2B-02', [0, 1, 2]],
  ['breakout 1A', [0, 1, 2, 3, 4, 5]],
  ['trunk 1B', [6, 7, 8]],
  ['processor 2', [0, 1, 2, 9, 10, 11]],
  ['node N1', [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]],
  ['circuit D1-2', [1, 4, 7, 10]],
  ['distro 1', [0, 3, 6, 9, 1, 4, 7, 10]],
  ['leg L3', [1, 4, 7, 10, 2, 5, 8, 11]],
  ['leg L3 of distro 2', [2, 5, 8, 11]],
  ['leg L1 of distro 2', []],
])('panelsOn gives what hangs on %s', (name, expected) => {
  expect(panelsOn(model, findCulprit(model, name)!)).toEqual(expected);
});
