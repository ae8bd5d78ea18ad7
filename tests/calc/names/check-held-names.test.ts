import { expect, test } from 'vitest';
import { checkHeldNames } from '../../../src/calc/names/check-held-names';

const ports = { chapter: 'runs', kind: 'port', things: 'ports', lost: 'the ports are not there' } as const;
const circuits = { chapter: 'power', kind: 'circuit', things: 'circuits', lost: 'the circuits are not there' } as const;
const nothing = { kept: [], renamed: [], reused: [], joined: [], resting: [] };

test('checkHeldNames has nothing to say where no name is held', () => {
  expect(checkHeldNames(ports, nothing)).toEqual([]);
});

test('checkHeldNames passes where every name stands', () => {
  expect(checkHeldNames(ports, { ...nothing, kept: ['1A-01', '1A-02'] })).toMatchObject([
    { id: 'runs.held-names', severity: 'pass', measured: 2 },
  ]);
});

test('checkHeldNames watches names that could not stay, at what they are now', () => {
  const [check, ...others] = checkHeldNames(ports, {
    ...nothing,
    kept: ['1A-02'],
    renamed: [{ name: '1A-01', now: '2A-04' }],
  });
  expect(others).toEqual([]);
  expect(check).toMatchObject({ id: 'runs.held-names', severity: 'watch', measured: 1, limit: 0 });
  expect(check!.where).toEqual([{ kind: 'port', name: '2A-04' }]);
  expect(check!.sentence).toContain('1A-01 is 2A-04 now');
});

test('checkHeldNames watches names that others took over', () => {
  expect(checkHeldNames(circuits, { ...nothing, reused: ['D1-4'] })).toMatchObject([
    { id: 'power.held-reused', severity: 'watch', measured: 1, where: [{ kind: 'circuit', name: 'circuit D1-4' }] },
  ]);
});

test('checkHeldNames offers to let names go that rest', () => {
  const [check] = checkHeldNames(circuits, { ...nothing, resting: ['D1-4', 'D1-5'] });
  expect(check).toMatchObject({ id: 'power.held-resting', severity: 'offer', measured: 2 });
  expect(check!.fix!.command).toEqual({ name: 'release-names', args: { circuits: ['D1-4', 'D1-5'] } });
});

test('checkHeldNames lists fifty places at most', () => {
  const renamed = Array.from({ length: 60 }, (_, i) => ({ name: `1A-${i}`, now: `2A-${i}` }));
  expect(checkHeldNames(ports, { ...nothing, renamed })[0]!.where).toHaveLength(50);
});
