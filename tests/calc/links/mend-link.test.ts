import { expect, test } from 'vitest';
import { mendLink } from '../../../src/calc/links/mend-link';
import { mode } from '../ports/plain-items';
import { linked, ownLink, type PlainSending } from './plain-links';

function mend(sendings: readonly PlainSending[], rest: Parameters<typeof linked>[1]) {
  const { inputs, results } = linked(sendings, rest);
  const args = mendLink(inputs, results, 'a')?.command.args as
    | { fields: { path: (string | number)[]; value: unknown }[] }
    | undefined;
  return args?.fields.map(({ path, value }) => [path.join('.'), value]) ?? null;
}
const square = { width: 2808, height: 2808 };

test('mendLink changes no more than is needed', () => {
  expect(mend([{ canvases: [square] }], { linkId: 'hdmi-tmds-600' })).toEqual([['feed.linkId', null]]);
  // 2808 x 2808 with full blanking is 682.25 MHz, 20.5 Gbit/s: HBR2 carries it with the least blanking.
  expect(mend([{ canvases: [square] }], { timing: 'full', linkId: 'displayport-hbr2' })).toEqual([
    ['feed.linkId', null],
  ]);
  expect(mend([{ canvases: [square] }], { timing: 'cta' })).toEqual([['feed.timing', 'reduced-2']]);
  expect(mend([{ canvases: [square] }], { timing: 'cta', linkId: 'hdmi-tmds-600' })).toEqual([
    ['feed.timing', 'reduced-2'],
    ['feed.linkId', null],
  ]);
});

test('mendLink takes nothing from another surface', () => {
  // B is sent over a link that carries it by a container alone; A's own link is what is changed.
  const sendings = [
    { letter: 'A', canvases: [square] },
    { letter: 'B', canvases: [{ width: 1920, height: 1080 }], served: [mode(60, 8)] },
  ];
  expect(mend(sendings, { linkId: 'hdmi-tmds-165', bySurface: [ownLink('b', 'hdmi-tmds-340')] })).toEqual([
    ['feed.linkId', null],
  ]);
});

test('mendLink finds nothing where nothing helps', () => {
  expect(mend([{ canvases: [{ width: 20_000, height: 20_000 }], served: [mode(240, 12)] }], {})).toBeNull();
});
