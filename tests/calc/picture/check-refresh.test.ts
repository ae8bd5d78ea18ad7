import { describe, expect, test } from 'vitest';
import { checkRefresh, type PanelLight } from '../../../src/calc/picture/check-refresh';
import { computePicture } from '../../../src/calc/picture/compute-picture';
import type { Mode } from '../../../src/plan/picture';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';

const surfaces = setOf(plainSurface({ columns: 2, bands: [{ type: plainType(100), rows: 2 }] }));
const light = (refreshHz: number | null, refreshMode: 'locked' | 'fixed'): PanelLight => ({
  id: 'p100',
  name: 'Panel',
  light: { refreshHz, refreshMode, peakNits: null },
});
const mode = (frames: number, seconds = 1, pictures = 1): Mode => ({
  rate: { frames, seconds },
  depthBits: 10,
  pictures,
});
const check = (panel: PanelLight, base: Mode, ...also: Mode[]) => {
  const alsoServe = also.map((one, i) => ({ id: `also-${i}`, mode: one, surfaceIds: null }));
  const picture = computePicture({ picture: { base, bySurface: [], alsoServe }, surfaces });
  return checkRefresh(surfaces, picture, [panel])[0];
};

// The trade handbook, chapter 8: locked panels take a whole multiple of the fed rate at or below the sheet's figure; fixed ones
// are checked, 3840 Hz being no multiple of 25 or 23.976.
describe('checkRefresh', () => {
  test.each([
    // 3840 / 24 = 160, / 25 = 153.6, / 48 = 80, / 60 = 64; 3840 x 1001 / 30000 = 128.128.
    [24, 1, 160, 3840],
    [25, 1, 153, 3825],
    [30_000, 1001, 128, (128 * 30_000) / 1001],
    [48, 1, 80, 3840],
    [60, 1, 64, 3840],
  ])('locked panels of 3840 Hz at %d/%d take %d times the rate', (frames, seconds, times, hertz) => {
    const found = check(light(3840, 'locked'), mode(frames, seconds));
    expect(found).toMatchObject({ severity: 'pass', limit: 3840, values: { times: { value: times } } });
    expect(found?.measured).toBeCloseTo(hertz, 9);
  });

  test.each([
    [24, 1, 'pass'],
    [25, 1, 'watch'],
    [24_000, 1001, 'watch'],
    [30_000, 1001, 'watch'],
    [48, 1, 'pass'],
    [60, 1, 'pass'],
  ])('fixed panels of 3840 Hz at %d/%d: %s', (frames, seconds, severity) => {
    expect(check(light(3840, 'fixed'), mode(frames, seconds))?.severity).toBe(severity);
  });

  test('names the panel and the multiple that would do', () => {
    const found = check(light(3840, 'fixed'), mode(25));
    expect(found).toMatchObject({ id: 'picture.refresh.A', measured: 3825, limit: 3840 });
    expect(found?.where).toContainEqual({ kind: 'item', name: 'Panel' });
  });

  test('counts the pictures of every camera frame, and looks at every rate served', () => {
    // Three pictures of 24 a second are 72: 3840 / 72 = 53.3. 3840 / 25 = 153.6.
    expect(check(light(3840, 'fixed'), mode(24, 1, 3))?.severity).toBe('watch');
    expect(check(light(3840, 'fixed'), mode(24), mode(25))?.severity).toBe('watch');
    expect(check(light(3840, 'fixed'), mode(24), mode(48))?.severity).toBe('pass');
  });

  test('watches locked panels that are fed faster than they refresh', () => {
    expect(check(light(50, 'locked'), mode(60))).toMatchObject({ severity: 'watch', measured: 0, limit: 50 });
  });

  test('reads not stated where the sheet says nothing', () => {
    expect(check(light(null, 'locked'), mode(60))).toMatchObject({ severity: 'offer', measured: null, limit: null });
  });
});
