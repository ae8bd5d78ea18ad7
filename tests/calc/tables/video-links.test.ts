import { expect, test } from 'vitest';
import reference from '../../../fixtures/reference/link-rates.json';
import { displayPortFigures, packetFigures, sdiFigures, videoLinks } from '../../../src/calc/tables/video-links';

const gbps = (id: string) => videoLinks.find((link) => link.id === id)!.payloadBps / 1e9;

// Source: fixtures/reference/link-rates.json, published payload rates; its DisplayPort figures are rounded to 0.01 Gbit/s.
test.each(Object.entries(reference.tmdsGbps))('HDMI TMDS at %s MHz carries %d Gbit/s', (clock, published) => {
  expect(gbps(`hdmi-tmds-${clock}`)).toBeCloseTo(published, 9);
});

test.each(Object.entries(reference.displayPortGbps).filter(([name]) => name.startsWith('U') || /HBR[23]/.test(name)))(
  'DisplayPort %s carries %d Gbit/s',
  (name, published) => {
    expect(Math.abs(gbps(`displayport-${name.toLowerCase().replace('.', '-')}`) - published)).toBeLessThan(0.01);
  },
);

test.each(Object.entries(reference.frlAfter16b18bGbps))(
  'HDMI FRL %s carries %d less its error correction',
  (lanes, published) => {
    expect(gbps(`hdmi-frl-${lanes}`)).toBeCloseTo((published * 251) / 255, 3);
  },
);

test.each(Object.entries(reference.sdiGbps))('SDI %s carries %d Gbit/s a cable', (kind, published) => {
  expect(gbps(`sdi-${kind}-single`)).toBeCloseTo(published, 9);
  expect(gbps(`sdi-${kind}-dual`)).toBeCloseTo(2 * published, 9);
  expect(gbps(`sdi-${kind}-quad`)).toBeCloseTo(4 * published, 9);
});

// The rasters are from memory; 40 bits a pixel of the raster with its blanking is a second way to the same list.
test('videoLinks: an SDI link runs full on the fastest rate of its largest raster, and takes none that is more', () => {
  for (const link of videoLinks.filter(({ kind }) => kind === 'sdi')) {
    const needs = link.rasters.map(
      ({ height, fastestFps }) => sdiFigures.bitsAPixel * 2200 * (height / 1080) * 1125 * (height / 1080) * fastestFps,
    );
    expect(Math.max(...needs)).toBeCloseTo(link.payloadBps, 0);
  }
});

test('videoLinks have ids of their own and say where they are from', () => {
  expect(new Set(videoLinks.map(({ id }) => id)).size).toBe(videoLinks.length);
  for (const { id, source, howKnown } of videoLinks) {
    expect(id).toMatch(/^[a-z0-9][a-z0-9-]*$/);
    expect(source.length).toBeGreaterThan(8);
    expect(howKnown.length).toBeGreaterThan(20);
  }
  expect(packetFigures.source).toContain('ST 2110-20');
});

// Preamble 8, Ethernet 14, IP 20, UDP 8, RTP 12, extended sequence 2, sample row 6, check 4, gap 12.
test('packetFigures sum what stands round the samples of a packet', () => {
  expect(packetFigures.overheadOctets).toBe(8 + 14 + 20 + 8 + 12 + 2 + 6 + 4 + 12);
  expect(displayPortFigures.clockLossShare).toBe(0.006);
});
