import fc from 'fast-check';
import { expect, test } from 'vitest';
import { tickFileText, tickListOf } from '../../src/files/tick-file';
import type { Tick } from '../../src/plan/build-log';
import { tickList } from '../arbitraries/tick';

const tick: Tick = { step: 'wired', of: 'port', name: '3B-04', done: true, who: 'Ada', atMs: 1000 };

test('tickListOf takes the ticks of a plan under its id and name', () => {
  expect(tickListOf({ id: 'plan-1', name: 'Stage', log: { ticks: [tick] } })).toEqual({
    format: 'voussoir-ticks',
    version: 1,
    planId: 'plan-1',
    planName: 'Stage',
    ticks: [tick],
  });
});

test('tickFileText writes a line for each tick', () => {
  const text = tickFileText(
    tickListOf({ id: 'plan-1', name: 'Stage', log: { ticks: [tick, { ...tick, done: false }] } }),
  );
  expect(text.split('\n')).toEqual([
    '{',
    '  "format": "voussoir-ticks",',
    '  "version": 1,',
    '  "planId": "plan-1",',
    '  "planName": "Stage",',
    '  "ticks": [',
    '    {"step":"wired","of":"port","name":"3B-04","done":true,"who":"Ada","atMs":1000},',
    '    {"step":"wired","of":"port","name":"3B-04","done":false,"who":"Ada","atMs":1000}',
    '  ]',
    '}',
    '',
  ]);
});

test('tickFileText is JSON that holds just the list, ticks or none', () => {
  fc.assert(
    fc.property(tickList, (list) => {
      expect(JSON.parse(tickFileText(list))).toEqual(list);
    }),
  );
});
