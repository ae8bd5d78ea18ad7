import { describe, expect, it } from 'vitest';
import { culpritKinds } from '../../../src/calc/faults/culprit';
import { culpritsOf, makeFaultModel } from '../../../src/calc/faults/fault-model';
import { smallStage } from './small-stage';

describe('makeFaultModel', () => {
  const model = makeFaultModel(
    smallStage({ returnPorts: [null, '2C-07', null, null], legs: ['L1', 'L2-L3', 'L3-L1'] }),
  );

  it('names breakouts and processors by their ports, each once, those of returns too', () => {
    expect(model.breakouts).toEqual(['1A', '1B', '2A', '2C']);
    expect(model.processors).toEqual([1, 2]);
    expect(model.outlets.map(({ port, run, end }) => [port, run, end])).toEqual([
      ['1A-01', 0, 'entry'],
      ['1A-02', 1, 'entry'],
      ['1B-01', 2, 'entry'],
      ['2A-01', 3, 'entry'],
      ['2C-07', 1, 'return'],
    ]);
    expect([...model.returnOf]).toEqual([-1, 4, -1, -1]);
  });

  it('keeps the legs of a circuit as bits', () => {
    expect([...model.legsOf]).toEqual([0b001, 0b110, 0b101]);
  });

  it('takes a port of a processor with direct ports as on no breakout', () => {
    const stage = smallStage();
    const direct = makeFaultModel({
      ...stage,
      runs: { ...stage.runs, runs: [{ port: '2-04', zone: 1, start: 0, count: 3 }] },
    });
    expect(direct.outlets).toEqual([{ port: '2-04', run: 0, end: 'entry', breakout: -1, processor: 0 }]);
    expect(direct.processors).toEqual([2]);
    expect(direct.breakouts).toEqual([]);
  });
});

describe('culpritsOf', () => {
  it('counts every part of a stage once', () => {
    // 4 runs of 3 panels: 8 jumpers, 4 home runs and ports. 3 circuits of 4: 9 power jumpers. 2 distros, 3 legs each, 3 of the stage.
    const model = makeFaultModel(smallStage());
    const counts = culpritKinds.map((kind) => [kind, [...culpritsOf(model, kind)].length]);
    expect(Object.fromEntries(counts)).toEqual({
      panel: 12,
      jumper: 8,
      'home-run': 4,
      port: 4,
      trunk: 3,
      breakout: 3,
      processor: 2,
      node: 1,
      'power-jumper': 9,
      circuit: 3,
      distro: 2,
      'distro-leg': 6,
      leg: 3,
    });
  });

  it('has no leg where there is no circuit', () => {
    const stage = smallStage();
    const power = { circuits: [], order: new Uint32Array(12), circuitOf: new Int32Array(12).fill(-1) };
    expect([...culpritsOf(makeFaultModel({ ...stage, power }), 'leg')]).toEqual([]);
  });
});
