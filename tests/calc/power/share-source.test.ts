import { expect, it } from 'vitest';
import { shareSource } from '../../../src/calc/power/share-source';

it('shareSource calls the share the plan’s own, and names NEC practice only at 0.8 (NEC 210.20(A))', () => {
  expect(shareSource(0.8).text).toMatch(
    /^rating and share as planned; 0\.8 is NEC practice .*elsewhere common practice$/,
  );
  expect(shareSource(0.7)).toEqual({ kind: 'given', text: 'rating and share as planned' });
});
