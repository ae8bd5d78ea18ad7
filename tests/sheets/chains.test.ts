import { describe, expect, it } from 'vitest';
import { dataChains, powerChains } from '../../src/sheets/chains';
import { stageFixture } from '../arbitraries/evaluation-fixture';

const parts = stageFixture({ columns: 4, rows: 2, jointDeg: 0, zoneColumns: 2, splitAboveRow: 2 });

describe('dataChains', () => {
  it('tags runs with their port, in short without the processor, numbered within each zone', () => {
    const chains = dataChains(parts);
    expect(chains.list.map(({ tag, shortTag, number }) => [tag, shortTag, number])).toEqual([
      ['1A-01', 'A-01', 0],
      ['2A-01', 'A-01', 0],
    ]);
  });
  it('shortens the tag of a direct port to its number', () => {
    const runs = { ...parts.runs, runs: [{ ...parts.runs.runs[0]!, port: '12-04' }] };
    expect(dataChains({ runs }).list[0]).toMatchObject({ tag: '12-04', shortTag: '04' });
  });
});

describe('powerChains', () => {
  it('tags circuits with name and leg, in short with the one that is asked for', () => {
    expect(powerChains(parts, 'circuit').list[1]).toMatchObject({ tag: 'D1-2 L2', shortTag: 'D1-2', number: 1 });
    expect(powerChains(parts, 'leg').list[1]).toMatchObject({ tag: 'D1-2 L2', shortTag: 'L2' });
  });
});
