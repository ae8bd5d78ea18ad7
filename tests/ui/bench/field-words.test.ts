import { expect, test } from 'vitest';
import { fieldWords } from '../../../src/ui/bench/field-words';

test.each([
  ['heat.roomRiseK', 'Heat: room rise'],
  ['wish.hall.lengthMm', 'Wish: hall, length'],
  ['wish.coolingW', 'Wish: cooling'],
  ['walls[0].path[2].columns', 'Walls: 1, path 3, columns'],
  ['power.circuit.ratedA', 'Power: circuit, rated'],
  ['signal.freeShare', 'Runs: signal, free share'],
  ['ceilings', 'Ceiling: ceilings'],
  ['revision', 'Plan: revision'],
])('fieldWords of %s are %s', (path, words) => {
  expect(fieldWords(path)).toBe(words);
});
