import { expect, it } from 'vitest';
import { culpritKinds } from '../../../src/calc/faults/culprit';
import { culpritName } from '../../../src/calc/faults/culprit-words';
import { culpritsTouching } from '../../../src/calc/faults/culprits-touching';
import { darkBy } from '../../../src/calc/faults/dark-by';
import { culpritsOf, makeFaultModel } from '../../../src/calc/faults/fault-model';
import { smallStage } from './small-stage';

it('culpritsTouching leaves out what cannot darken the panel', () => {
  const model = makeFaultModel(smallStage());
  const touching = culpritsTouching(model, [11]);
  const names = (kind: (typeof culpritKinds)[number]) =>
    touching.get(kind)!.map((culprit) => culpritName(model, culprit));
  // Panel 11 is the last of run 2A-01, which crosses all three circuits.
  expect(names('panel').sort()).toEqual(['C4 R1', 'C4 R2', 'C4 R3']);
  expect(names('jumper')).toEqual(['jumper C4 R1 to C4 R2', 'jumper C4 R2 to C4 R3']);
  expect(names('breakout')).toEqual(['breakout 2A']);
  expect(names('processor')).toEqual(['processor 2']);
  expect(names('circuit').sort()).toEqual(['circuit D1-1', 'circuit D1-2', 'circuit D2-1']);
});

it('culpritsTouching leaves out nothing that darkens it', () => {
  const model = makeFaultModel(
    smallStage({ returnPorts: ['2A-09', null, '1C-01', null], legs: ['L1-L2', 'L3', 'L2'] }),
  );
  for (const kind of culpritKinds) {
    for (let panel = 0; panel < 12; panel++) {
      const touching = new Set(
        culpritsTouching(model, [panel])
          .get(kind)!
          .map(({ index }) => index),
      );
      const missed = [...culpritsOf(model, kind)].filter(
        (culprit) => darkBy(model, culprit).includes(panel) && !touching.has(culprit.index),
      );
      expect(missed).toEqual([]);
    }
  }
});
