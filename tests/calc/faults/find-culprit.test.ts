import { describe, expect, it } from 'vitest';
import { culpritKinds } from '../../../src/calc/faults/culprit';
import { culpritName } from '../../../src/calc/faults/culprit-words';
import { culpritsOf, makeFaultModel } from '../../../src/calc/faults/fault-model';
import { findCulprit } from '../../../src/calc/faults/find-culprit';
import { smallStage } from './small-stage';

const model = makeFaultModel(smallStage({ returnPorts: ['1B-02', null, null, null] }));

describe('findCulprit', () => {
  it('finds every part by its name, whatever the case', () => {
    for (const kind of culpritKinds) {
      for (const culprit of culpritsOf(model, kind)) {
        const name = culpritName(model, culprit);
        expect(findCulprit(model, name), name).toEqual(culprit);
        expect(findCulprit(model, ` ${name.toLowerCase().replaceAll(' ', '  ')} `), name).toEqual(culprit);
      }
    }
  });

  it.each([
    ['N1', { kind: 'node', index: 0 }],
    ['node 1', { kind: 'node', index: 0 }],
    ['1b', { kind: 'breakout', index: 1 }],
    ['2A-01', { kind: 'port', index: 3 }],
    ['d2-1', { kind: 'circuit', index: 2 }],
    ['L2', { kind: 'leg', index: 1 }],
    ['l3 of distro 2', { kind: 'distro-leg', index: 5 }],
    ['distro d2', { kind: 'distro', index: 1 }],
    ['c2r3', { kind: 'panel', index: 5 }],
  ])('reads %j as well', (text, expected) => {
    expect(findCulprit(model, text)).toEqual(expected);
  });

  it.each([
    '',
    'nonsense',
    'N2',
    'distro 9',
    'L1 of distro 9',
    '9Z-01',
    '9Z',
    'processor 3',
    'C5 R1',
    // Neighbours on the wall, but on two runs; and two of one run the wrong way round.
    'jumper C1 R1 to C2 R1',
    'jumper C1 R2 to C1 R1',
    // The last of one run and the first of the next.
    'jumper C1 R3 to C2 R1',
    'jumper C9 R1 to C9 R2',
    'power jumper C1 R1 to C1 R2',
  ])('finds nothing called %j', (text) => {
    expect(findCulprit(model, text)).toBeNull();
  });
});
