import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { culpritKinds } from '../../../src/calc/faults/culprit';
import { culpritName } from '../../../src/calc/faults/culprit-words';
import { darkBy } from '../../../src/calc/faults/dark-by';
import { culpritsOf, makeFaultModel } from '../../../src/calc/faults/fault-model';
import { type SmallStage, smallStage } from './small-stage';

/** Panels that the part with this name darkens, by hand from the drawing in `smallStage`. */
function lost(name: string, stage: SmallStage = {}, withReturns = true): number[] {
  const model = makeFaultModel(smallStage(stage));
  for (const kind of culpritKinds) {
    for (const culprit of culpritsOf(model, kind)) {
      if (culpritName(model, culprit) === name) return [...darkBy(model, culprit, withReturns)];
    }
  }
  throw new Error(`no ${name}`);
}

describe('without returns', () => {
  it.each<[string, number[]]>([
    // Panels of run 1A-01 from the entry are 0, 1, 2: what fails takes what follows it along.
    ['C1 R1', [0, 1, 2]],
    ['C1 R2', [1, 2]],
    ['C1 R3', [2]],
    ['jumper C1 R1 to C1 R2', [1, 2]],
    ['jumper C1 R2 to C1 R3', [2]],
    ['home run 1A-01', [0, 1, 2]],
    ['port 1A-02', [3, 4, 5]],
    // Breakout 1A has the ports 1A-01 and 1A-02, 1B has one, 2A one.
    ['breakout 1A', [0, 1, 2, 3, 4, 5]],
    ['trunk 1B', [6, 7, 8]],
    ['processor 1', [0, 1, 2, 3, 4, 5, 6, 7, 8]],
    ['processor 2', [9, 10, 11]],
    ['node N1', [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]],
  ])('%s darkens what follows it', (name, expected) => {
    expect(lost(name)).toEqual(expected);
  });

  it.each<[string, number[]]>([
    // Row 3 is the end of every run: nothing stands behind it.
    ['circuit D2-1', [2, 5, 8, 11]],
    // Row 2 without power: row 3 behind it has power, but no data.
    ['circuit D1-2', [1, 2, 4, 5, 7, 8, 10, 11]],
    ['circuit D1-1', [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]],
    // From C2 R2 on, circuit D1-2 feeds 7 and 10; 8 and 11 stand behind them.
    ['power jumper C2 R2 to C3 R2', [7, 8, 10, 11]],
    ['distro 2', [2, 5, 8, 11]],
    ['leg L2', [1, 2, 4, 5, 7, 8, 10, 11]],
    ['leg L3 of distro 2', [2, 5, 8, 11]],
    ['leg L1 of distro 2', []],
  ])('%s darkens its panels and what is behind them on their runs', (name, expected) => {
    expect(lost(name)).toEqual(expected);
  });

  it('darkens no more than the panels without power where these pass data on', () => {
    expect(lost('circuit D1-2', { passesUnpowered: true })).toEqual([1, 4, 7, 10]);
    expect(lost('distro 1', { passesUnpowered: true })).toEqual([0, 1, 3, 4, 6, 7, 9, 10]);
    // A broken panel passes nothing on, whatever its sheet says of one without power.
    expect(lost('C1 R2', { passesUnpowered: true })).toEqual([1, 2]);
  });

  it('loses a two-pole circuit with either of its legs', () => {
    const legs = ['L1', 'L2', 'L3-L1'] as const;
    expect(lost('leg L3', { legs })).toEqual([2, 5, 8, 11]);
    expect(lost('leg L1', { legs })).toHaveLength(12);
    expect(lost('leg L2', { legs })).toEqual([1, 2, 4, 5, 7, 8, 10, 11]);
    expect(lost('leg L1', { legs: ['L3', 'L3', 'L1-L2'] })).toEqual([2, 5, 8, 11]);
    expect(lost('leg L2', { legs: ['L3', 'L3', 'L1-L2'] })).toEqual([2, 5, 8, 11]);
    expect(lost('leg L2', { legs: ['L3', 'L3', 'L2-L3'] })).toEqual([2, 5, 8, 11]);
  });
});

describe('with returns', () => {
  // Run 1A-01 comes back to 1B-02, 1A-02 to a port of its own breakout, 2A-01 to processor 1.
  const returnPorts = ['1B-02', '1A-03', null, '1B-03'];

  it.each<[string, number[]]>([
    ['jumper C1 R1 to C1 R2', []],
    ['home run 1A-01', []],
    ['home run 1B-02', []],
    ['port 1A-02', []],
    // Fed from both ends: the broken panel alone.
    ['C1 R2', [1]],
    // Run 1A-01 is fed by breakout 1B, 1A-02 hangs on 1A with both ends.
    ['breakout 1A', [3, 4, 5]],
    ['trunk 1A', [3, 4, 5]],
    // 1B-01 has no return.
    ['breakout 1B', [6, 7, 8]],
    ['processor 1', [0, 1, 2, 3, 4, 5, 6, 7, 8]],
    // Run 2A-01 is fed by processor 1 from its other end.
    ['processor 2', []],
    // The picture of both processors comes from one node.
    ['node N1', [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]],
    // Row 2 is dark; row 3 gets its data from the return but for column 3.
    ['circuit D1-2', [1, 4, 7, 8, 10]],
    ['circuit D2-1', [2, 5, 8, 11]],
  ])('%s darkens what neither end feeds', (name, expected) => {
    expect(lost(name, { returnPorts })).toEqual(expected);
  });

  it('counts as without them when asked to', () => {
    expect(lost('jumper C1 R1 to C1 R2', { returnPorts }, false)).toEqual([1, 2]);
    expect(lost('home run 1B-02', { returnPorts }, false)).toEqual([]);
    expect(lost('processor 2', { returnPorts }, false)).toEqual([9, 10, 11]);
  });
});

const anyStage = fc.record({
  returnPorts: fc.array(fc.constantFrom(null, '1A-08', '1C-01', '3A-01'), { minLength: 4, maxLength: 4 }),
  passesUnpowered: fc.boolean(),
  legs: fc.array(fc.constantFrom('L1', 'L2', 'L1-L2', 'L3-L1'), { minLength: 3, maxLength: 3 }),
});

describe('always', () => {
  it('loses nothing by a cut jumper or home run where a return comes from another port', () => {
    fc.assert(
      fc.property(fc.constantFrom('1A-08', '1C-01', '3A-01'), (port) => {
        const model = makeFaultModel(smallStage({ returnPorts: [port, port, port, port].map((p, i) => `${p}${i}`) }));
        const cables = (['jumper', 'home-run', 'port'] as const).flatMap((kind) => [...culpritsOf(model, kind)]);
        expect(cables).toHaveLength(8 + 8 + 8);
        expect(cables.filter((culprit) => darkBy(model, culprit).length > 0)).toEqual([]);
      }),
    );
  });

  it('loses no more with returns than without, each panel once, in rising order', () => {
    fc.assert(
      fc.property(anyStage, (stage) => {
        const model = makeFaultModel(smallStage(stage));
        const all = culpritKinds.flatMap((kind) => [...culpritsOf(model, kind)]);
        const wrong = all.filter((culprit) => {
          const dark = [...darkBy(model, culprit)];
          const without = new Set(darkBy(model, culprit, false));
          return dark.some((panel, i) => !without.has(panel) || (i > 0 && panel <= dark[i - 1]!));
        });
        expect(wrong).toEqual([]);
      }),
    );
  });
});
