import { z } from 'zod';
import { amount, count, id, label } from './primitives';

/** A processor: turns one video input into panel data. Rates are those of its data sheet. */
export const processor = z.strictObject({
  id,
  name: label,
  canvas: z.strictObject({
    /** Pixels it drives at 60 Hz and 8 bit; scaled by rate and depth like a port's. */
    pixels: z.int().min(1).max(1e9),
    widest: z.int().min(1).max(1e6),
    highest: z.int().min(1).max(1e6),
    /** Payload of its video input in Gbit/s; null: not stated. */
    inputGbps: z.number().min(0.01).max(10_000).nullable(),
  }),
  port: z.strictObject({
    /** Line rate of one data outlet in Mbit/s. */
    lineMbps: z.number().min(1).max(1e6),
    /** Pixels one port carries at 60 Hz and 8 bit by the sheet; null: line rate alone decides. */
    sheetPixels: z.int().min(1).max(1e8).nullable(),
    /** Below 60 fps the sheet's figure grows only down to this rate. */
    lowestRateHz: z.number().min(1).max(1000),
    /** Bits a pixel takes on the wire at each depth. Packed: 24, 30, 36; padded: 24, 48, 48. */
    carriageBits: z.strictObject({
      at8: z.int().min(1).max(256),
      at10: z.int().min(1).max(256),
      at12: z.int().min(1).max(256),
    }),
    /** panels: the panels' own pixels count; rectangle: the smallest canvas rectangle round a port's panels counts. */
    counting: z.enum(['panels', 'rectangle']),
  }),
  outlets: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('direct'), ports: z.int().min(1).max(10_000) }),
    z.strictObject({ kind: z.literal('breakouts'), breakoutId: id, most: z.int().min(1).max(1000) }),
  ]),
  powerW: z.number().min(0).max(1e5),
  massKg: z.number().min(0).max(1000),
  rackUnits: z.int().min(0).max(60),
  purchase: z.strictObject({ price: amount.nullable(), leadDays: count.nullable() }),
});
export type Processor = z.infer<typeof processor>;
