import { expect, test } from 'vitest';
import { z } from 'zod';
import { judge } from '../../src/plan/judge';

const door = z.strictObject({
  widthMm: z.number().min(100).max(4000),
  leaves: z.int(),
  name: z.string().max(5),
  locks: z.array(z.strictObject({ kind: z.enum(['bolt', 'latch']) })).max(2),
  turnDeg: z.literal([0, 90]),
  form: z.discriminatedUnion('kind', [z.strictObject({ kind: z.literal('flat') })]),
});
const good = { widthMm: 900, leaves: 1, name: 'A', locks: [], turnDeg: 0 as const, form: { kind: 'flat' as const } };

test('judge gives the value back with its keys in the order of the schema', () => {
  const { widthMm, ...rest } = good;
  const judged = judge(door, { ...rest, widthMm });
  expect(Object.keys('value' in judged ? judged.value : {})).toEqual(Object.keys(good));
});

test.each<[string, object, string, string]>([
  ['a wrong type', { name: 4 }, 'name', 'a text belongs here'],
  ['a missing field', { name: undefined }, 'name', 'a text is missing here'],
  ['a fraction of a count', { leaves: 1.5 }, 'leaves', 'a whole number belongs here'],
  ['too small a length', { widthMm: 50 }, 'widthMm', 'at least 100 mm'],
  ['too large a length', { widthMm: 5000 }, 'widthMm', 'at most 4000 mm'],
  ['too long a text', { name: 'abcdef' }, 'name', 'at most 5 characters'],
  ['too long a list', { locks: [1, 2, 3].map(() => ({ kind: 'bolt' })) }, 'locks', 'at most 2 entries'],
  ['an unknown choice', { locks: [{ kind: 'chain' }] }, 'locks[0].kind', 'one of bolt, latch belongs here'],
  ['an unknown number', { turnDeg: 45 }, 'turnDeg', 'one of 0, 90 belongs here'],
  ['an unknown kind', { form: { kind: 'round' } }, 'form.kind', 'of no kind that this program knows'],
  ['an unknown field', { colour: 'grey' }, 'colour', 'this program knows no such field'],
])('judge names %s and its place', (_what, change, path, reason) => {
  expect(judge(door, { ...good, ...change })).toEqual({ path, reason, faults: 1 });
});

test('judge counts the faults and begins its path where it is told', () => {
  const judged = judge(door, { ...good, widthMm: 1, leaves: 'two' }, ['doors', 3]);
  expect(judged).toMatchObject({ path: 'doors[3].widthMm', faults: 2 });
});
