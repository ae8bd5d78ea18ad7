import { expect, test } from 'vitest';
import { statesOfPorts } from '../../../src/calc/names/states-of-ports';

const run = { surfaceId: 'a', zone: 0, start: 0, count: 2, pixels: 1, share: 0, entryHeightMm: 0, inReach: true };
const runs = [{ ...run, port: '1A-01', returnPort: '1B-02', returnProcessor: 1, exitHeightMm: 0 }];

test('statesOfPorts judges runs by their ports and returns by those they go back to', () => {
  const held = [{ name: '1A-01', first: 0, last: 1, returnName: '1B-01' }];
  expect(statesOfPorts(held, { runs, runOf: Int32Array.of(0, 0) })).toEqual({
    kept: ['1A-01'],
    renamed: [{ name: '1B-01', now: '1B-02' }],
    reused: [],
    joined: [],
    resting: [],
  });
});

test('statesOfPorts lets a return rest with its run', () => {
  const held = [{ name: '1A-03', first: -1, last: -1, returnName: '1B-03' }];
  expect(statesOfPorts(held, { runs, runOf: Int32Array.of(0, 0) }).resting).toEqual(['1A-03', '1B-03']);
});
