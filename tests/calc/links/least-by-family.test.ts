import { expect, test } from 'vitest';
import { leastByFamily } from '../../../src/calc/links/least-by-family';
import { linkById } from '../../../src/calc/links/link-by-id';
import { linked } from './plain-links';

const least = (width: number, height: number) => {
  const { results } = linked([{ canvases: [{ width, height }] }]);
  return { surface: results.surfaces[0]!, found: leastByFamily(results.surfaces[0]!) };
};

test('leastByFamily: of each family one that carries the canvas, and none of it with a lower payload and as few cables does', () => {
  const { surface, found } = least(3840, 2160);
  expect(found.size).toBeGreaterThanOrEqual(4);
  for (const [kind, { linkId, fits }] of found) {
    expect(fits).toBe(true);
    const { cables, payloadBps } = linkById(linkId)!;
    for (const other of surface.fits.filter((fit) => fit.fits && linkById(fit.linkId)!.kind === kind)) {
      const link = linkById(other.linkId)!;
      // SDI sends its own rasters, of which a larger one is worse whatever its cables.
      if (kind !== 'sdi' && link.cables === cables) expect(link.payloadBps).toBeGreaterThanOrEqual(payloadBps);
    }
  }
  // The least of all is the least of its family.
  expect([...found.values()].map(({ linkId }) => linkId)).toContain(surface.leastId);
});

test('leastByFamily leaves out a family of which no link carries the canvas', () => {
  // 600 MHz at 8 bit is the most of TMDS; 3840 x 2160 at 60 and 10 bit asks 522.6 MHz x 10 / 8 = 653 (CVT, reduced blanking 2).
  expect(least(3840, 2160).found.has('tmds')).toBe(false);
  expect(least(1920, 1080).found.has('tmds')).toBe(true);
  expect(leastByFamily({ fits: [], timing: null, canvas: null }).size).toBe(0);
});
