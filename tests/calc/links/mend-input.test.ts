import { expect, test } from 'vitest';
import { mendInput } from '../../../src/calc/links/mend-input';
import { linked, ownLink } from './plain-links';

// 3840 x 2160 at 60 and 10 bit: 522.614 MHz x 30 = 15.67842 Gbit/s (fixtures/reference/cvt-timings.json).
const wide = [{ canvases: [{ width: 7680, height: 2160 }], sharing: 4 }];
const mend = (limitBps: number, changes: Parameters<typeof linked>[1] = {}) => {
  const { inputs } = linked(wide, changes);
  return mendInput(inputs, inputs.surfaces.surfaces[0]!.surfaceId, limitBps);
};

test('mendInput leaves as many zones on a node as the input takes in', () => {
  // Two of four zones are 3840 wide.
  expect(mend(15.67842e9)).toMatchObject({ label: 'At most 2 zones on a node', otherwise: null });
  expect(mend(15.678e9)?.label).toBe('A node for each zone');
  expect(mend(1e9)).toBeNull();
});

test('mendInput takes back a canvas that is stated larger than the zones need', () => {
  const { inputs } = linked(wide);
  const { surfaceId } = inputs.surfaces.surfaces[0]!;
  const stated = { ...ownLink(surfaceId, null), canvas: { width: 7680, height: 4320 } };
  const fix = mendInput({ ...inputs, bySurface: [stated] }, surfaceId, 40e9);
  expect(fix?.command.args).toMatchObject({ fields: [{ path: ['feed', 'bySurface', 0, 'canvas'], value: null }] });
});
