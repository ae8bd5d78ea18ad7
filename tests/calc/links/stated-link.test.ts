import { expect, test } from 'vitest';
import { statedLink } from '../../../src/calc/links/stated-link';

const own = (linkId: string | null) => ({ surfaceId: 'a', zonesANode: 1, linkId, canvas: null });

test("statedLink is the surface's own before the stage's", () => {
  expect(statedLink({ linkId: 'x', bySurface: [own('y')] }, 'a')).toBe('y');
  expect(statedLink({ linkId: 'x', bySurface: [own(null)] }, 'a')).toBe('x');
  expect(statedLink({ linkId: 'x', bySurface: [own('y')] }, 'b')).toBe('x');
  expect(statedLink({ linkId: null, bySurface: [] }, 'a')).toBeNull();
});
