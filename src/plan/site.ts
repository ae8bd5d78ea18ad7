import { z } from 'zod';

/** Heat: what is in the room besides panels, and the air that carries heat away. */
export const heat = z.strictObject({
  people: z.int().min(0).max(10_000),
  lampsW: z.number().min(0).max(1e8),
  /** Rise of the air that carries the heat away. */
  airRiseK: z.number().min(0.1).max(100),
  /** Rise of the room at which a shoot must stop, for the warm-up time. */
  roomRiseK: z.number().min(0.1).max(100),
});
export type Heat = z.infer<typeof heat>;

/** Masses: frames and fittings that stand with the panels. */
export const masses = z.strictObject({
  /** Locks, bumpers and frames, by area of wall. */
  fittingsKgPerM2: z.number().min(0).max(1000),
  /** A support frame every so many columns. */
  columnsAFrame: z.int().min(1).max(1000),
  /** Plate under a support frame. */
  plateAreaM2: z.number().min(0.0001).max(100),
  /** Allowed load of the floor; null: not stated. */
  floorKpa: z.number().min(0).max(1e6).nullable(),
});
export type Masses = z.infer<typeof masses>;

/** A crew of thirty, no lamps, air that leaves 10 K warmer, a shoot that stops at 8 K (common practice, no source, from memory). */
export const defaultHeat: Heat = { people: 30, lampsW: 0, airRiseK: 10, roomRiseK: 8 };

/**
 * A frame behind every second column on a plate of half a metre square, and fittings of 3.5 kg to the square metre (common
 * practice, no source, from memory); the floor's load not stated.
 */
export const defaultMasses: Masses = { fittingsKgPerM2: 3.5, columnsAFrame: 2, plateAreaM2: 0.25, floorKpa: null };
