import type { Breakout } from '../breakout';
import type { Node } from '../node';
import type { Processor } from '../processor';

/** Invented processors: one with breakouts, one with ports of its own, a small one. From memory, common practice, no source. */
export const starterProcessors: readonly Processor[] = [
  {
    id: 'weir-24',
    name: 'Weir, three breakouts (invented)',
    canvas: { pixels: 8_850_000, widest: 8192, highest: 8192, inputGbps: 38 },
    port: {
      lineMbps: 1000,
      sheetPixels: 650_000,
      lowestRateHz: 60,
      carriageBits: { at8: 24, at10: 30, at12: 36 },
      counting: 'panels',
    },
    outlets: { kind: 'breakouts', breakoutId: 'sluice-8', most: 3 },
    powerW: 140,
    massKg: 9.4,
    rackUnits: 2,
    purchase: { price: 13_800, leadDays: 35 },
  },
  {
    id: 'culvert-16',
    name: 'Culvert, sixteen ports (invented)',
    canvas: { pixels: 8_300_000, widest: 7680, highest: 7680, inputGbps: 30 },
    port: {
      lineMbps: 1000,
      sheetPixels: 655_000,
      lowestRateHz: 24,
      carriageBits: { at8: 24, at10: 30, at12: 36 },
      counting: 'rectangle',
    },
    outlets: { kind: 'direct', ports: 16 },
    powerW: 110,
    massKg: 7.2,
    rackUnits: 2,
    purchase: { price: 9600, leadDays: 28 },
  },
  {
    id: 'brook-4',
    name: 'Brook, four ports (invented)',
    canvas: { pixels: 2_300_000, widest: 3840, highest: 2160, inputGbps: 8 },
    port: {
      lineMbps: 1000,
      sheetPixels: 650_000,
      lowestRateHz: 60,
      carriageBits: { at8: 24, at10: 48, at12: 48 },
      counting: 'panels',
    },
    outlets: { kind: 'direct', ports: 4 },
    powerW: 38,
    massKg: 2.9,
    rackUnits: 1,
    purchase: { price: 1950, leadDays: 14 },
  },
];

/** Invented breakouts: copper ports at the end of a fibre trunk. From memory, common practice, no source. */
export const starterBreakouts: readonly Breakout[] = [
  {
    id: 'sluice-8',
    name: 'Sluice, eight ports (invented)',
    ports: 8,
    trunkMbps: 10_000,
    powerW: 42,
    massKg: 3.1,
    rackUnits: 1,
    purchase: { price: 2750, leadDays: 28 },
  },
  {
    id: 'sluice-16',
    name: 'Sluice, sixteen ports (invented)',
    ports: 16,
    trunkMbps: 25_000,
    powerW: 70,
    massKg: 4.4,
    rackUnits: 1,
    purchase: { price: 4900, leadDays: 42 },
  },
];

/** Invented render nodes. From memory, common practice, no source. */
export const starterNodes: readonly Node[] = [
  {
    id: 'mill-4',
    name: 'Mill render node (invented)',
    outputs: 4,
    canvasPixels: 35_389_440,
    powerW: 1250,
    massKg: 27,
    rackUnits: 4,
    purchase: { price: 18_500, leadDays: 30 },
  },
];
