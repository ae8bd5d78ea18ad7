import { expect, test } from 'vitest';
import { FreePorts } from '../../../src/calc/names/free-ports';
import type { PortOutlets } from '../../../src/calc/ports/outlets';

/** Two breakouts of three ports: slots 0 to 2 and 3 to 5. */
const boxes: PortOutlets = { breakoutsAProcessor: 2, portsABreakout: 3, portsAProcessor: 6, returns: 'none' };
const ports = (held: readonly number[] = []) => new FreePorts(boxes, new Set(held));
const takeAll = (free: FreePorts, count: number) => Array.from({ length: count }, () => free.take(free.best()));

test('FreePorts gives ports in their order, and goes on behind the last where none is left', () => {
  expect(takeAll(ports(), 8)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
});

test('FreePorts keeps away from held ports as long as there are others', () => {
  const free = ports([0, 1]);
  free.take(0);
  // Slot 2 is on the breakout in use, 3 to 5 open another, slot 1 is held.
  expect(takeAll(free, 5)).toEqual([2, 3, 4, 5, 1]);
  expect(free.left).toBe(0);
});

test('FreePorts fills breakouts in use before it takes another', () => {
  const free = ports();
  free.take(4);
  expect(takeAll(free, 3)).toEqual([3, 5, 0]);
});

test('FreePorts counts what is left and knows what is free', () => {
  const free = ports();
  expect([free.left, free.isFree(2)]).toEqual([6, true]);
  free.take(2);
  expect([free.left, free.isFree(2)]).toEqual([5, false]);
});

test('FreePorts listens to what else speaks against a slot', () => {
  expect(ports().best((slot) => (slot < 3 ? 10 : 0))).toBe(3);
});

test('FreePorts sees one breakout on direct ports', () => {
  const direct = new FreePorts({ ...boxes, breakoutsAProcessor: 0, portsABreakout: 6 }, new Set());
  expect([0, 5].map((slot) => direct.boxOf(slot))).toEqual([0, 0]);
});
