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

test('chainInHand of a column or of a box is none', () => {
  expect(chainInHand(wall, picked('C2'))).toBeNull();
  expect(chainInHand(wall, picked('distro 1'))).toBeNull();
});
