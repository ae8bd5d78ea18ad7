import { expect, it } from 'vitest';
import { culpritKinds } from '../../../src/calc/faults/culprit';
import { darkBy } from '../../../src/calc/faults/dark-by';
import { culpritsOf, makeFaultModel } from '../../../src/calc/faults/fault-model';
import { mostDarkened } from '../../../src/calc/faults/most-darkened';
import { smallStage } from './small-stage';

const model = makeFaultModel(smallStage({ returnPorts: ['1B-02', null, null, '1C-01'] }));
const circuits = new Map(
  [...culpritsOf(model, 'circuit')].map((circuit) => [circuit.index, darkBy(model, circuit).length]),
);

it('mostDarkened is never less than what a part darkens', () => {
  const all = culpritKinds.flatMap((kind) => [...culpritsOf(model, kind)]);
  for (const known of [circuits, new Map<number, number>()]) {
    expect(all.filter((culprit) => mostDarkened(model, culprit, known) < darkBy(model, culprit).length)).toEqual([]);
  }
});

it('mostDarkened holds a jumper to its run and a power jumper to its circuit', () => {
  expect(mostDarkened(model, { kind: 'jumper', index: 4 }, circuits)).toBe(3);
  // Circuit D2-1 has the last panel of every run: what it darkens are its own four.
  expect(mostDarkened(model, { kind: 'power-jumper', index: 9 }, circuits)).toBe(4);
});
