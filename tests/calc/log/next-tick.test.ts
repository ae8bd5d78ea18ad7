import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isDone } from '../../../src/calc/log/log-state';
import { nextTick } from '../../../src/calc/log/next-tick';
import { stateWith, ticked } from './small-stage';

const columnOf = (log: Parameters<typeof stateWith>[0]) => stateWith(log).column[0]!;

test('nextTick ticks what nobody ticked, with who and when', () => {
  const { of, name } = columnOf([]);
  expect(nextTick(columnOf([]), 'stands', 'Bo', 5000.4)).toEqual({
    of,
    name,
    step: 'stands',
    done: true,
    who: 'Bo',
    atMs: 5000,
  });
});

test('nextTick takes back what is done, and ticks again what was taken back', () => {
  const done = ticked('column', 'C1', 'stands', { atMs: 1000 });
  const back = nextTick(columnOf([done]), 'stands', 'Ada', 2000);
  expect(back).toMatchObject({ done: false, atMs: 2000 });
  expect(nextTick(columnOf([done, back]), 'stands', 'Ada', 3000)).toMatchObject({ done: true, atMs: 3000 });
});

test('nextTick is newer than a tick of a clock that ran ahead', () => {
  const ahead = ticked('column', 'C1', 'stands', { atMs: 9000 });
  expect(nextTick(columnOf([ahead]), 'stands', 'Bo', 4000)).toMatchObject({ done: false, atMs: 9001 });
});

test('nextTick turns the step round, whoever presses and whatever the clock says', () => {
  fc.assert(
    fc.property(
      fc.boolean(),
      fc.integer({ min: 0, max: 10_000 }),
      fc.integer({ min: 0, max: 10_000 }),
      fc.constantFrom('', 'Ada', 'Zoe'),
      (done, atMs, nowMs, who) => {
        const log = [ticked('column', 'C1', 'wired', { done, atMs })];
        const pressed = nextTick(columnOf(log), 'wired', who, nowMs);
        expect(isDone(columnOf([pressed, ...log]), 'wired')).toBe(!done);
      },
    ),
  );
});
