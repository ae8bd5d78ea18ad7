import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packLists, unpackLists } from '../../src/files/packed-lists';
import { anyPlan } from '../arbitraries/plan';
import { samplePlan } from '../arbitraries/sample-plans';

const at = (column: number, row: number) => ({ surfaceId: 'wall', segmentId: 'left', column, row });
const port = (number: number) => ({ name: `1A-0${number}`, first: at(number, 1), last: at(number, 6) });

describe('packLists', () => {
  it('puts names that run regularly in a few steps', () => {
    const names = { processors: [{ number: 1, at: at(1, 1) }], ports: [port(1), port(2), port(3)], circuits: [] };
    expect(packLists({ names, existingWiring: null })).toEqual({
      names: [
        [['1'], ['wall left 1 1']],
        [
          ['1A-01', [0, 1], 1],
          ['wall left 1 1', [1, 0], 1],
          ['wall left 1 6', [1, 0], 1],
        ],
        [[], [], []],
      ],
      existingWiring: null,
    });
  });
  it('comes back as it was', () => {
    fc.assert(
      fc.property(anyPlan(), ({ names, existingWiring }) => {
        const packed = JSON.parse(JSON.stringify(packLists({ names, existingWiring })));
        expect(unpackLists(packed)).toEqual({ names, existingWiring });
      }),
      { numRuns: 60 },
    );
  });
  it('comes back with panels of a ceiling, which have no segment and columns below 1', () => {
    const first = { surfaceId: 'ceiling', segmentId: null, column: -2, row: 0 };
    const names = { processors: [], ports: [{ name: '2-01', first, last: { ...first, column: 3 } }], circuits: [] };
    expect(unpackLists(packLists({ names, existingWiring: null }))).toEqual({ names, existingWiring: null });
  });
});

describe('unpackLists', () => {
  it.each([
    [{}],
    [{ names: {}, existingWiring: null }],
    [{ names: [[], []], existingWiring: null }],
    [
      {
        names: [
          [['1'], []],
          [[], [], []],
          [[], [], []],
        ],
        existingWiring: null,
      },
    ],
    [{ names: [[[], []], 7, [[], [], []]], existingWiring: null }],
    [{ names: null, existingWiring: { source: 'a', rows: [] } }],
    [{ names: null, existingWiring: [1, [], [], []] }],
    [{ names: null, existingWiring: ['a', ['x'], [], []] }],
  ])('knows no lists in %j', (value) => {
    expect(unpackLists(value)).toBeNull();
  });
  it('leaves what no plan may hold to who judges the plan', () => {
    const lists = unpackLists({ names: null, existingWiring: ['a', ['A C1 R1'], ['1A-01'], ['first']] });
    expect(lists).toEqual({
      names: null,
      existingWiring: { source: 'a', rows: [{ panel: 'A C1 R1', port: '1A-01', place: Number.NaN }] },
    });
  });
  it('has nothing to pack in a plan that issued nothing', () => {
    expect(packLists(samplePlan('flat'))).toEqual({ names: null, existingWiring: null });
  });
});
