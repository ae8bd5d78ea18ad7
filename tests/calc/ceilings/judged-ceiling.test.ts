import { describe, expect, it } from 'vitest';
import { ceilingField, surfacePlace } from '../../../src/calc/ceilings/judged-ceiling';

describe('places of a ceiling', () => {
  it('are the ceiling by its letter and a field by its path', () => {
    expect(surfacePlace({ letter: 'B' })).toEqual({ kind: 'surface', name: 'B' });
    expect(ceilingField(1, 'holes', 3)).toEqual({ kind: 'field', name: 'ceilings[1].holes[3]' });
  });
});
