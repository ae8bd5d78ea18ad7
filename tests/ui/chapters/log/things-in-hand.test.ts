import { expect, test } from 'vitest';
import { thingsInHand } from '../../../../src/ui/chapters/log/things-in-hand';
import { logWith, picked, wall } from './wall-in-hand';

const namesOf = (name: string) => {
  const { column, port, circuit } = thingsInHand(wall, logWith(), picked(name));
  return [column?.name, port?.name, circuit?.name];
};

test('thingsInHand of a panel are its column, its port and its circuit', () => {
  // Runs above row 4 come first, one for each of the 12 columns.
  expect(namesOf('C2 R5')).toEqual(['C2', '1A-02', 'D1-2']);
});

test.each([
  ['C7', ['C7', undefined, undefined]],
  ['1A-03', [undefined, '1A-03', undefined]],
  ['D1-4', [undefined, undefined, 'D1-4']],
  ['home run 1A-03', [undefined, '1A-03', undefined]],
  ['jumper C2 R5 to C2 R6', [undefined, '1A-02', undefined]],
  ['power jumper C2 R1 to C2 R2', [undefined, undefined, 'D1-2']],
  ['processor 1', [undefined, undefined, undefined]],
  ['distro 1', [undefined, undefined, undefined]],
  ['N1', [undefined, undefined, undefined]],
])('thingsInHand of %s', (name, names) => {
  expect(namesOf(name)).toEqual(names);
});

test('thingsInHand carry what the log says of them', () => {
  const tick = { step: 'stands', of: 'column', name: 'C7', done: true, who: 'Ada', atMs: 5 } as const;
  expect(thingsInHand(wall, logWith([tick]), picked('C7')).column?.steps).toEqual({
    stands: { done: true, who: 'Ada', atMs: 5 },
  });
});
