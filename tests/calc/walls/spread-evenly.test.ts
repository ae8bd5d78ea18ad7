import { describe, expect, it } from 'vitest';
import { spreadEvenly } from '../../../src/calc/walls/spread-evenly';

describe('spreadEvenly', () => {
  it('puts one in the middle and two at a quarter from each end', () => {
    expect([...spreadEvenly(5, 1)]).toEqual([0, 0, 1, 0, 0]);
    expect([...spreadEvenly(8, 2)]).toEqual([0, 0, 1, 0, 0, 1, 0, 0]);
  });

  it('chooses none of any, and all where more are asked than there are', () => {
    expect([...spreadEvenly(3, 0)]).toEqual([0, 0, 0]);
    expect([...spreadEvenly(3, 7)]).toEqual([1, 1, 1]);
    expect(spreadEvenly(0, 2)).toHaveLength(0);
  });

  it('chooses exactly as many as asked, evenly, and alike from both ends wherever that is possible', () => {
    for (let places = 1; places <= 60; places++) {
      for (let chosen = 1; chosen <= places; chosen++) {
        const picked = [...spreadEvenly(places, chosen)];
        const at = picked.flatMap((one, i) => (one === 1 ? [i] : []));
        expect(at, `${chosen} of ${places}`).toHaveLength(chosen);
        const off = at.filter((place) => picked[places - 1 - place] === 0).length;
        expect(off, `${chosen} of ${places} from both ends`).toBeLessThanOrEqual(
          places % 2 === 0 && chosen % 2 === 1 ? 1 : 0,
        );
        const gaps = at.slice(1).map((place, i) => place - at[i]!);
        // An even spread has gaps of at most two neighbouring sizes; folding it about the middle may widen that by one.
        if (gaps.length > 0)
          expect(Math.max(...gaps) - Math.min(...gaps), `${chosen} of ${places}`).toBeLessThanOrEqual(2);
      }
    }
  });
});
