import { expect, test } from 'vitest';
import { checkInput } from '../../../src/calc/links/check-input';
import { linked } from './plain-links';

function checks(sharing: number, inputGbps: number | null) {
  const { inputs, results } = linked([{ canvases: [{ width: 3840, height: 2160 }], sharing }], { inputGbps });
  return checkInput(inputs, inputs.surfaces.surfaces[0]!, results.surfaces[0]!);
}

// 3840 x 2160 at 60 and 10 bit: 522.614 MHz x 30 = 15.67842 Gbit/s (fixtures/reference/cvt-timings.json).
test('checkInput holds the whole canvas against the input of each processor that shares it', () => {
  expect(checks(4, 15.67842)).toMatchObject([{ id: 'links.input.A', severity: 'pass', measured: 15.67842e9 }]);
  expect(checks(4, 15.678)).toMatchObject([{ severity: 'stop', limit: 15.678e9 }]);
});

test('checkInput leaves to the zones what is one processor alone, and an input that nobody stated', () => {
  expect(checks(1, 1)).toEqual([]);
  expect(checks(4, null)).toEqual([]);
});

test('checkInput takes a canvas with blank columns in the last zone for one processor alone', () => {
  const { inputs, results } = linked([{ canvases: [{ width: 3840, height: 2160 }] }], { inputGbps: 20 });
  const [node] = inputs.nodes;
  const narrow = { ...node!, crops: [{ processor: 2, x: 0, y: 0, width: 100, height: 2160 }] };
  const nodes = [node!, narrow];
  expect(checkInput({ ...inputs, nodes }, inputs.surfaces.surfaces[0]!, results.surfaces[0]!)).toEqual([]);
});
