import { expect, test } from 'vitest';
import { checkCarried } from '../../../src/calc/links/check-carried';
import { mode } from '../ports/plain-items';
import { linked, ownLink, type PlainSending } from './plain-links';

function checks(sending: PlainSending, rest: Parameters<typeof linked>[1] = {}) {
  const { inputs, results } = linked([sending], rest);
  return checkCarried(inputs, results, inputs.surfaces.surfaces[0]!, results.surfaces[0]!);
}
const check = (...args: Parameters<typeof checks>) => checks(...args)[0]!;
const square = { width: 2808, height: 2808 };

test('checkCarried passes the least link, and says at most of FRL', () => {
  const found = check({ canvases: [square] });
  expect(found).toMatchObject({ id: 'links.carried.A', severity: 'pass', measured: 500_432_000 * 30 });
  expect(found.sentence).toContain('at most {measured}');
  expect(check({ canvases: [square] }, { linkId: 'displayport-hbr2' }).sentence).not.toContain('at most');
});

test.each([
  ['pixel clock is too high', 'hdmi-tmds-600', square],
  ['does not send this depth', 'hdmi-tmds-165', { width: 640, height: 480 }],
  ['it needs {measured}', 'displayport-hbr2', { width: 3840, height: 4000 }],
  ['none of its fixed rasters', 'sdi-12g-single', square],
  ['do not run at this rate', 'sdi-3g-single', { width: 1920, height: 1080 }],
  ['packets take {measured}', 'st-2110-10', square],
] as const)('checkCarried stops a link stated that does not carry it: %s', (words, linkId, canvas) => {
  const found = check({ canvases: [canvas] }, { linkId });
  expect(found.severity).toBe('stop');
  expect(found.sentence).toContain(words);
  expect(found.fix?.label).toBe('Use the least link that carries it');
  expect(found.fix?.command.args).toMatchObject({ fields: [{ path: ['feed', 'linkId'], value: null }] });
});

test("checkCarried mends the surface's own link where that is what is stated", () => {
  const found = check({ canvases: [square] }, { bySurface: [ownLink('a', 'hdmi-tmds-600')] });
  expect(found.fix?.command.args).toMatchObject({
    fields: [{ path: ['feed', 'bySurface', 0, 'linkId'], value: null }],
  });
});

test('checkCarried only watches FRL that may still carry it', () => {
  const found = check(
    { canvases: [{ width: 1920, height: 1080 }], served: [mode(120, 10)] },
    { linkId: 'hdmi-frl-3x3' },
  );
  expect(found).toMatchObject({ severity: 'watch' });
  expect(found.sentence).toContain('not proved');
});

test('checkCarried has nothing to say of a link that is not in the table', () => {
  expect(checks({ canvases: [square] }, { linkId: 'not-there' })).toEqual([]);
});

test('checkCarried stops where no link of the table carries it, without a fix that would not help', () => {
  const found = check({ canvases: [{ width: 20_000, height: 20_000 }], served: [mode(240, 12)] });
  expect(found).toMatchObject({ severity: 'stop' });
  expect(found.sentence).toContain('No link of the table');
  expect(found.fix).toBeUndefined();
});
