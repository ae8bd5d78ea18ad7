import { describe, expect, it } from 'vitest';
import { type Culprit, culpritKinds } from '../../../src/calc/faults/culprit';
import { culpritName, lookFirst, whereIs } from '../../../src/calc/faults/culprit-words';
import { culpritsOf, makeFaultModel } from '../../../src/calc/faults/fault-model';
import { smallStage } from './small-stage';

const model = makeFaultModel(smallStage({ returnPorts: ['1B-02', null, null, null] }));

describe('culpritName', () => {
  it('gives every part of a plan a name of its own', () => {
    const names = culpritKinds.flatMap((kind) =>
      [...culpritsOf(model, kind)].map((culprit) => culpritName(model, culprit)),
    );
    expect(new Set(names).size).toBe(names.length);
  });
});

describe('whereIs', () => {
  it.each<[Culprit, string, string]>([
    [{ kind: 'panel', index: 4 }, 'C2 R2', 'place 2 of 3 on port 1A-02'],
    [{ kind: 'jumper', index: 4 }, 'jumper C2 R1 to C2 R2', 'from place 1 to place 2 of 3 on port 1A-02'],
    [{ kind: 'power-jumper', index: 5 }, 'power jumper C1 R2 to C2 R2', 'from place 1 to place 2 of 4 on circuit D1-2'],
    [{ kind: 'home-run', index: 1 }, 'home run 1A-02', 'at port 1A-02, entry C2 R1'],
    // The return of the first run stands at its last panel.
    [{ kind: 'port', index: 4 }, 'port 1B-02', 'at port 1B-02, return C1 R3'],
    [{ kind: 'trunk', index: 1 }, 'trunk 1B', 'from processor 1 to breakout 1B'],
    [{ kind: 'breakout', index: 0 }, 'breakout 1A', '2 ports, 1A-01 to 1A-02'],
    [{ kind: 'processor', index: 1 }, 'processor 2', 'port 2A-01'],
    [{ kind: 'node', index: 0 }, 'node N1', '2 processors, 1 to 2'],
    [{ kind: 'circuit', index: 2 }, 'circuit D2-1', 'distro 2, entry C1 R3'],
    [{ kind: 'distro', index: 0 }, 'distro 1', '2 circuits, D1-1 to D1-2'],
    [{ kind: 'leg', index: 1 }, 'leg L2', 'at the supply, before every distro'],
    [{ kind: 'distro-leg', index: 5 }, 'leg L3 of distro 2', 'behind distro 2'],
  ])('says of %o that it is %s and where', (culprit, name, where) => {
    expect(culpritName(model, culprit)).toBe(name);
    expect(whereIs(model, culprit)).toBe(where);
  });

  it('says so of a panel on no run', () => {
    const stage = smallStage();
    const bare = makeFaultModel({
      ...stage,
      runs: { runs: [], order: new Uint32Array(0), runOf: new Int32Array(12).fill(-1) },
    });
    expect(whereIs(bare, { kind: 'panel', index: 0 })).toBe('on no run');
  });
});

describe('lookFirst', () => {
  it('leaves the supply before the circuits to who answers for it', () => {
    for (const kind of ['leg', 'distro', 'distro-leg'] as const)
      expect(lookFirst[kind]).toContain('who answers for the supply');
  });
});

it('whereIs lists ports in their order, whichever run they belong to', () => {
  const returning = makeFaultModel(smallStage({ returnPorts: ['1B-02', '1A-08', null, null] }));
  // Entries 1A-01, 1A-02 and 1B-01, returns 1B-02 and 1A-08.
  expect(whereIs(returning, { kind: 'processor', index: 0 })).toBe('5 ports, 1A-01 to 1B-02');
});
