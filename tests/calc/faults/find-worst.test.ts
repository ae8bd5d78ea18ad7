import { expect, it } from 'vitest';
import { culpritKinds } from '../../../src/calc/faults/culprit';
import { culpritName } from '../../../src/calc/faults/culprit-words';
import { darkBy } from '../../../src/calc/faults/dark-by';
import { culpritsOf, type FaultModel, makeFaultModel } from '../../../src/calc/faults/fault-model';
import { findWorst as findWorstBy } from '../../../src/calc/faults/find-worst';
import { stageFixture } from '../../arbitraries/evaluation-fixture';
import { smallStage } from './small-stage';

const findWorst = (model: FaultModel) => findWorstBy(model, (culprit) => darkBy(model, culprit));

it('findWorst lists by panels lost, then by name, at most three of a kind', () => {
  // By hand from the stage of 12 panels: the node, circuit D1-1, distro 1, leg L1 of it and of the stage, the power jumpers
  // lose from 12 downwards: D1-1 after C1, after C2, after C3: 9, 6, 3.
  const found = findWorst(makeFaultModel(smallStage())).map(({ name, dark }) => [name, dark.length]);
  expect(found).toEqual([
    ['circuit D1-1', 12],
    ['distro 1', 12],
    ['leg L1', 12],
    ['leg L1 of distro 1', 12],
    ['node N1', 12],
    ['power jumper C1 R1 to C2 R1', 9],
    ['processor 1', 9],
    ['circuit D1-2', 8],
    ['leg L2', 8],
    ['leg L2 of distro 1', 8],
  ]);
});

it('findWorst leaves out what darkens nothing', () => {
  const stage = smallStage();
  const power = { circuits: [], order: new Uint32Array(12), circuitOf: new Int32Array(12).fill(-1) };
  const nodes = { nodes: [{ name: 'N1' }, { name: 'N2' }], nodeOfZone: [0, 0] };
  expect(findWorst(makeFaultModel({ ...stage, power, nodes })).map(({ name }) => name)).not.toContain('node N2');
});

it('findWorst takes those that lose as much by their numbers', () => {
  // 12 circuits of one column each, and no signal: legs, legs of the distro and the distro lose more.
  const parts = stageFixture({ columns: 12, rows: 2, jointDeg: 0 });
  const runs = { runs: [], order: new Uint32Array(0), runOf: new Int32Array(24).fill(-1) };
  const nodes = { nodes: [], nodeOfZone: [] };
  const model = makeFaultModel({ ...parts, runs, nodes, passes: new Uint8Array(24) });
  const circuits = findWorst(model).filter(({ culprit }) => culprit.kind === 'circuit');
  expect(circuits.map(({ name }) => name)).toEqual(['circuit D1-1', 'circuit D1-2', 'circuit D1-3']);
});

it('findWorst finds what trying every part finds', () => {
  const parts = stageFixture({ columns: 7, rows: 5, jointDeg: 0, zoneColumns: 3 });
  const nodes = { nodes: [{ name: 'N1' }], nodeOfZone: [0, 0, 0] };
  const model = makeFaultModel({ ...parts, nodes, passes: new Uint8Array(35) });
  const losses = culpritKinds
    .filter((kind) => kind !== 'trunk' && kind !== 'port')
    .flatMap((kind) =>
      [...culpritsOf(model, kind)]
        .map((culprit) => ({ name: culpritName(model, culprit), lost: darkBy(model, culprit).length }))
        .sort((a, b) => b.lost - a.lost)
        .slice(0, 3)
        .map(({ lost }) => lost),
    )
    .sort((a, b) => b - a)
    .slice(0, 10);
  expect(findWorst(model).map(({ dark }) => dark.length)).toEqual(losses);
});
