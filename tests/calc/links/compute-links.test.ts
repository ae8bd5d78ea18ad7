import { expect, test } from 'vitest';
import { videoLinks } from '../../../src/calc/tables/video-links';
import { mode } from '../ports/plain-items';
import { linked, ownLink, type PlainSending } from './plain-links';

const square = { width: 2808, height: 2808 };
const first = (sending: PlainSending, rest = {}) => linked([sending], rest).results.surfaces[0]!;

// Handbook: 2808 x 2808 at 60 and 10 bit is some 500 MHz of pixel clock, more than one link of the older kinds.
test('computeLinks of 2808 x 2808 at 60 and 10 bit: clock, payload, and no TMDS that carries it', () => {
  const links = first({ canvases: [square] });
  expect(links.timing).toMatchObject({ pixelClockHz: 500_432_000, totalWidth: 2888, totalHeight: 2888 });
  expect(links.payloadBps).toBe(500_432_000 * 30);
  expect(links.activeBps).toBe(2808 * 2808 * 60 * 30);
  expect(links.fits.filter(({ linkId, fits }) => fits && linkId.startsWith('hdmi-tmds'))).toEqual([]);
  expect(links.leastId).toBe('hdmi-frl-3x6');
  expect(links.chosen?.linkId).toBe('hdmi-frl-3x6');
  expect(links.fits.map(({ linkId }) => linkId)).toEqual(videoLinks.map(({ id }) => id));
});

test('computeLinks counts the worst of every served mode', () => {
  // 120 at 8 bit asks more of a clock than 60 at 10 bit, and less of the depth.
  const links = first({ canvases: [{ width: 1920, height: 1080 }], served: [mode(60, 10), mode(120, 8)] });
  expect(links.mode).toEqual(mode(120, 8));
  expect(links.timing?.pixelClockHz).toBe(274_560_000);
  // The first TMDS falls by the clock at 8 bit and by the depth at 10.
  expect(links.fits.find(({ linkId }) => linkId === 'hdmi-tmds-165')?.fits).toBe(false);
  expect(links.fits.find(({ linkId }) => linkId === 'hdmi-tmds-340')).toMatchObject({ fits: true, mode: mode(120, 8) });
});

test('computeLinks counts the largest canvas of a surface', () => {
  const links = first({ canvases: [{ width: 1000, height: 1000 }, square] });
  expect(links.canvas).toEqual(square);
  expect(links.chosen?.canvas).toEqual(square);
});

test('computeLinks takes the link of the surface before that of the stage, and knows one that is not there', () => {
  const sending = { canvases: [square] };
  expect(first(sending, { linkId: 'displayport-hbr3' }).chosen?.linkId).toBe('displayport-hbr3');
  expect(
    first(sending, { linkId: 'displayport-hbr3', bySurface: [ownLink('a', 'displayport-uhbr10')] }).chosen?.linkId,
  ).toBe('displayport-uhbr10');
  expect(first(sending, { linkId: 'not-there' })).toMatchObject({ chosen: null, leastId: 'hdmi-frl-3x6', cables: 0 });
});

test('computeLinks counts an output for each processor, and the cables of its link', () => {
  const links = first({ canvases: [{ width: 1920, height: 1080 }], sharing: 4 }, { linkId: 'sdi-3g-dual' });
  expect([links.outputs, links.cables]).toEqual([4, 8]);
});

test('computeLinks says why a canvas has no timing, and still what needs none', () => {
  const links = first({ canvases: [square], served: [mode(60, 10), mode(72, 10)] }, { timing: 'cta' });
  expect(links).toMatchObject({ timing: null, noTiming: 'no-mode-of-this-size', payloadBps: null });
  expect(links.leastId).toBe('st-2110-25');
});

test('computeLinks of a surface that is sent nothing', () => {
  expect(first({ canvases: [] })).toMatchObject({ canvas: null, fits: [], chosen: null, outputs: 0, cables: 0 });
});

test('computeLinks keeps surfaces apart', () => {
  const { results } = linked([
    { letter: 'A', canvases: [square] },
    { letter: 'B', canvases: [{ width: 1280, height: 720 }], served: [mode(60, 8)] },
  ]);
  expect(results.surfaces.map(({ letter, leastId }) => [letter, leastId])).toEqual([
    ['A', 'hdmi-frl-3x6'],
    ['B', 'hdmi-tmds-165'],
  ]);
});
