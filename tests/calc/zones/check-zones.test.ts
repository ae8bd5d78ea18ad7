import { expect, test } from 'vitest';
import { checkZones } from '../../../src/calc/zones/check-zones';
import { computeZones, type ZonesInputs } from '../../../src/calc/zones/compute-zones';
import { mode, plainPanel, plainProcessor, plainSignal } from '../ports/plain-items';
import { plainSurface, plainType } from './plain-surface';
import { plainZones } from './plain-zones';

const named = (given: ZonesInputs, id: string) =>
  checkZones(given, computeZones(given)).find((check) => check.id === id);
const processor = (inputGbps: number | null, highest = 8192) =>
  plainProcessor({}, { canvas: { pixels: 8_900_000, widest: 8192, highest, inputGbps } });

test('checkZones passes a surface whose canvas a processor drives', () => {
  const found = named(plainZones(), 'zones.fit.A');
  // 4 x 3 panels of 216 x 216: 864 x 648.
  expect(found).toMatchObject({ severity: 'pass', measured: 864 * 648, limit: 8_900_000, unit: 'px' });
  expect(found?.values).toMatchObject({ zones: { value: 1 }, wide: { value: 864 }, high: { value: 648 } });
});

test('checkZones stops with the reason where no zone fits', () => {
  const found = named(plainZones({ signal: plainSignal({ processorId: null }) }), 'zones.fit.A');
  expect(found).toMatchObject({
    severity: 'stop',
    measured: null,
    limit: null,
    sentence: 'No zone of wall A fits. No processor is chosen.',
  });
  expect(found?.fix).toBeUndefined();
});

test('checkZones lets as few zones up as fit where the number asked for is what hinders', () => {
  const own = { surfaceId: 'a', processorId: 'proc', nodeId: null, zoneColumnsMost: null, returns: null, zonesUp: 1 };
  const given = plainZones({ processors: [processor(null, 300)], signal: plainSignal({ bySurface: [own] }) });
  const found = named(given, 'zones.fit.A');
  expect(found?.severity).toBe('stop');
  expect(found?.fix?.command.args).toMatchObject({
    fields: [{ path: ['signal', 'bySurface', 0, 'zonesUp'], value: null }],
  });
  const signal = plainSignal({ bySurface: [{ ...own, returns: null, zonesUp: null }] });
  expect(named(plainZones({ processors: [processor(null, 300)], signal }), 'zones.fit.A')?.severity).toBe('pass');
});

test('checkZones reads an input that nobody stated as not stated', () => {
  const found = named(plainZones(), 'zones.input.A');
  expect(found).toMatchObject({ severity: 'offer', limit: null, unit: 'bps' });
  expect(found?.sentence).toContain('Not stated');
  // More than the active pixels: 864 x 648 at 60 Hz and 24 bit.
  expect(found!.measured!).toBeGreaterThan(864 * 648 * 60 * 24);
});

test('checkZones holds the canvas against the input where it is stated', () => {
  expect(named(plainZones({ processors: [processor(12)] }), 'zones.input.A')).toMatchObject({
    severity: 'pass',
    limit: 12e9,
  });
});

test('checkZones cannot compute the input at a rate without blanking', () => {
  const wall = plainSurface({ columns: 1, bands: [{ type: plainType(16), rows: 1 }] });
  const given = plainZones({ wall, base: mode(3000), panels: [plainPanel(16)] });
  expect(named(given, 'zones.input.A')).toMatchObject({ severity: 'offer', measured: null });
});

test('checkZones has nothing to say of a surface without panels', () => {
  const wall = plainSurface({ columns: 1, bands: [{ type: plainType(216), rows: 1 }], isHole: () => true });
  const given = plainZones({ wall });
  expect(checkZones(given, computeZones(given))).toEqual([]);
});
