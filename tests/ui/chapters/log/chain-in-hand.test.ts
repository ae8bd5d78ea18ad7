import { expect, test } from 'vitest';
import { chainInHand } from '../../../../src/ui/chapters/log/chain-in-hand';
import { picked, wall } from './wall-in-hand';

test('chainInHand of a panel is its run in the order of the cable, with its place on it', () => {
  expect(chainInHand(wall, picked('C2 R6'))).toEqual({
    kind: 'port',
    title: 'Port 1A-02',
    panels: ['C2 R5', 'C2 R6'],
    at: 1,
  });
});

test('chainInHand of a port has no place, and of a circuit goes along the power', () => {
  expect(chainInHand(wall, picked('1A-02'))).toMatchObject({ panels: ['C2 R5', 'C2 R6'], at: -1 });
  expect(chainInHand(wall, picked('D1-2'))).toEqual({
    kind: 'circuit',
    title: 'Circuit D1-2',
    panels: ['C2 R1', 'C2 R2', 'C2 R3', 'C2 R4', 'C2 R5', 'C2 R6'],
    at: -1,
  });
});

test.each([
  ['jumper C2 R5 to C2 R6', 'Port 1A-02'],
  ['home run 1A-02', 'Port 1A-02'],
  ['power jumper C2 R1 to C2 R2', 'Circuit D1-2'],
])('chainInHand of the cable %s is the chain it lies on', (name, title) => {
  expect(chainInHand(wall, picked(name))).toMatchObject({ title, at: -1 });
});

test('chainInHand of a column or of a box is none', () => {
  expect(chainInHand(wall, picked('C2'))).toBeNull();
  expect(chainInHand(wall, picked('distro 1'))).toBeNull();
});
