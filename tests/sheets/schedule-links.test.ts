import { expect, it } from 'vitest';
import { scheduleLinks } from '../../src/sheets/schedule-links';
import { linked } from '../calc/links/plain-links';
import { cells } from './cells';

const square = { width: 2808, height: 2808 };

it('scheduleLinks has a row for each output of a node with its processor and link', () => {
  const { inputs, results } = linked([{ canvases: [square], sharing: 4 }]);
  const schedule = scheduleLinks({ nodes: inputs.nodes, links: results.surfaces });
  expect(schedule.count).toBe(4);
  expect(cells(schedule, 2)).toMatchObject({
    node: 'N1',
    output: 3,
    processor: 3,
    surface: 'A',
    raster: '2808 × 2808',
    clock: 500_432_000,
    payload: 500_432_000 * 30,
    link: 'HDMI FRL 3 × 6',
    cables: 1,
  });
  expect(cells(schedule, 'totals')).toMatchObject({ node: '4 outputs', cables: 4 });
  expect(schedule.panelOf(0)).toBeNull();
});

it('scheduleLinks names the fixed raster that SDI sends, and its cables', () => {
  const { inputs, results } = linked([{ canvases: [{ width: 1900, height: 1000 }] }], { linkId: 'sdi-3g-dual' });
  const schedule = scheduleLinks({ nodes: inputs.nodes, links: results.surfaces });
  expect(cells(schedule, 0)).toMatchObject({ raster: '1920 × 1080', cables: 2, left: 0 });
});

it('scheduleLinks leaves blank what a link that does not fit, or is not there, has left', () => {
  const of = (linkId: string) => {
    const { inputs, results } = linked([{ canvases: [square] }], { linkId });
    return cells(scheduleLinks({ nodes: inputs.nodes, links: results.surfaces }), 0);
  };
  expect(of('hdmi-tmds-600')).toMatchObject({ link: 'HDMI TMDS 600 MHz', left: null });
  expect(of('not-there')).toMatchObject({ link: null, cables: null, raster: '2808 × 2808' });
});

it('scheduleLinks passes over a node whose surface is not there', () => {
  const { inputs } = linked([{ canvases: [square] }]);
  expect(scheduleLinks({ nodes: inputs.nodes, links: [] }).count).toBe(0);
});
