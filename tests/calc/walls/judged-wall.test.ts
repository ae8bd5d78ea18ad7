import { describe, expect, it } from 'vitest';
import { columnPlace, surfacePlace, wallField } from '../../../src/calc/walls/judged-wall';
import { plainWall } from './plain-wall';

const judged = { wall: plainWall(3, 0), index: 2 };

describe('places of a wall', () => {
  it('are the wall by its letter, a column by its name and a field by its path', () => {
    expect(surfacePlace(judged)).toEqual({ kind: 'surface', name: 'A' });
    expect(columnPlace(judged, 37)).toEqual({ kind: 'column', name: 'A C38' });
    expect(wallField(judged, 'path', 2, 'columns')).toEqual({ kind: 'field', name: 'walls[2].path[2].columns' });
  });
});
