import { expect, test } from 'vitest';
import ethernet from '../../../fixtures/reference/ethernet.json';
import { asNumber } from '../../../src/calc/ports/fraction';
import { linePixels } from '../../../src/calc/ports/line-pixels';
import { ethernetFrame } from '../../../src/calc/tables/ethernet-frame';
import { mode, plainProcessor } from './plain-items';

const { port } = plainProcessor();
const frame = ethernet.examples.find(({ name }) => name === 'maximum untagged frame')!.values;

// IEEE 802.3 arithmetic as collected in fixtures/reference/ethernet.json.
test('ethernetFrame takes the published bytes on the wire', () => {
  expect(ethernetFrame.wireBytes).toBe(frame.onWire);
  expect(ethernetFrame.dataBytes / ethernetFrame.wireBytes).toBeCloseTo(frame.efficiency!, 12);
});

test('linePixels fills frames of the published size at the published rate', () => {
  // Frames a second at 1 Gbit/s x 1500 bytes x 8 bits / (60 x 24) pixels.
  const expected = (frame.framesPerSecondAt1G! * 1500 * 8) / (60 * 24);
  expect(asNumber(linePixels(mode(60), port))).toBeCloseTo(expected, 3);
});

test('linePixels counts the fed rate and the bits on the wire', () => {
  const at8 = asNumber(linePixels(mode(60), port));
  expect(asNumber(linePixels(mode(60, 10), port))).toBeCloseTo(at8 * 0.8, 6);
  expect(asNumber(linePixels(mode(30, 8, 2), port))).toBeCloseTo(at8, 6);
  expect(asNumber(linePixels(mode(24_000, 8, 1, 1001), port))).toBeCloseTo(at8 * 2.5 * 1.001, 6);
});
