import { describe, expect, it } from 'vitest';
import { panelsById } from '../../../src/calc/panels/panels-by-id';

describe('panelsById', () => {
  it('keeps the first of several with one id', () => {
    const byId = panelsById([
      { id: 'a', name: 'first' },
      { id: 'b', name: 'other' },
      { id: 'a', name: 'second' },
    ]);
    expect([...byId.values()].map((panel) => panel.name)).toEqual(['first', 'other']);
  });
});
