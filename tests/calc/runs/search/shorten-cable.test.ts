import { expect, test } from 'vitest';
import { shortenCable } from '../../../../src/calc/runs/search/shorten-cable';
import { wireInWay } from '../../../../src/calc/runs/search/wire-in-way';
import { makeReady } from '../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from './block-of-panels';

const zone = makeReady(block(8, 6), aPort(10));
const [rows] = wireInWay(zone, { kind: 'rows' });

test('shortenCable takes less cable on as many ports, none of them over, no entry more above reach', () => {
  const wiring = shortenCable(zone, rows!, 60_000);
  expect(wiring.cableMm).toBeLessThan(rows!.cableMm);
  expect(wiring.ports).toBe(rows!.ports);
  expect(wiring.entriesOutOfReach).toBeLessThanOrEqual(rows!.entriesOutOfReach);
  expect(wiring.fullestPixels).toBeLessThanOrEqual(10 * 216 * 216);
  expect([...wiring.order].sort((a, b) => a - b)).toEqual(Array.from(Array(48).keys()));
});

test('shortenCable without a step is the wiring as it was', () => {
  expect(shortenCable(zone, rows!, 0).cableMm).toBe(rows!.cableMm);
});
