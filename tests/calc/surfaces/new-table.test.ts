import { describe, expect, it } from 'vitest';
import { newTable } from '../../../src/calc/surfaces/new-table';

const surface = { id: 'w', letter: 'A', name: 'Wall' };

describe('newTable', () => {
  it('has room for its panels and none yet in any place', () => {
    const table = newTable(surface, 'wall', [], { count: 3, columns: 2, rows: 2 }, { width: 10, height: 20 });
    expect(table.xMm).toHaveLength(3);
    expect(table.canvasY).toHaveLength(3);
    expect([...table.at]).toEqual([-1, -1, -1, -1]);
    expect(table).toMatchObject({ surfaceId: 'w', letter: 'A', kind: 'wall', canvasWidth: 10, canvasHeight: 20 });
  });
});
