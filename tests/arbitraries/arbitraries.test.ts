import fc from 'fast-check';
import { describe, it } from 'vitest';
import { ceiling } from '../../src/plan/ceiling';
import { panel } from '../../src/plan/panel';
import { wall } from '../../src/plan/wall';
import { ceilingArbitrary } from './ceiling';
import { panelArbitrary } from './panel';
import { wallArbitrary } from './wall';

describe('arbitraries', () => {
  it('make only records that the schema accepts', () => {
    fc.assert(fc.property(panelArbitrary(), (made) => void panel.parse(made)));
    fc.assert(fc.property(wallArbitrary, (made) => void wall.parse(made)));
    fc.assert(fc.property(ceilingArbitrary, (made) => void ceiling.parse(made)));
  });
});
