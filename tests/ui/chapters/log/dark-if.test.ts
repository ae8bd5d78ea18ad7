import { expect, test } from 'vitest';
import { darkIf } from '../../../../src/ui/chapters/log/dark-if';
import { picked, wall } from './wall-in-hand';

const rowsOf = (name: string) =>
  darkIf(wall, picked(name)).map((row) => [row.name, row.panels, row.first, row.last] as const);

test('darkIf of a panel goes along its cable: to it, itself, from it, then its port and its circuit', () => {
  // The run of C2 above row 4 has two panels, its circuit has six; without power they pass no data on either.
  expect(rowsOf('C2 R5')).toEqual([
    ['home run 1A-02', 2, 'C2 R5', 'C2 R6'],
    ['C2 R5', 2, 'C2 R5', 'C2 R6'],
    ['jumper C2 R5 to C2 R6', 1, 'C2 R6', 'C2 R6'],
    ['port 1A-02', 2, 'C2 R5', 'C2 R6'],
    ['circuit D1-2', 6, 'C2 R1', 'C2 R6'],
  ]);
});

test('darkIf of the last panel of a run has no cable from it', () => {
  expect(rowsOf('C2 R6').map(([name]) => name)).toEqual([
    'jumper C2 R5 to C2 R6',
    'C2 R6',
    'port 1A-02',
    'circuit D1-2',
  ]);
});

test('darkIf of a port and of a circuit has what feeds them as well, and of a column has nothing', () => {
  expect(rowsOf('1A-02').map(([name]) => name)).toEqual(['port 1A-02', 'breakout 1A']);
  expect(rowsOf('D1-2').map(([name]) => name)).toEqual(['circuit D1-2', 'distro 1']);
  expect(rowsOf('C2')).toEqual([]);
  expect(rowsOf('distro 1')).toEqual([['distro 1', 72, 'C1 R1', 'C12 R6']]);
});
