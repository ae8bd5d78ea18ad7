import { z } from 'zod';
import { id, label, lengthMm } from './primitives';
import { uniqueList } from './unique-list';

/** What a good wiring puts first, once it fits. */
export const priority = z.enum(['repeats', 'fewest-ports', 'most-free', 'shortest-cable']);
export type Priority = z.infer<typeof priority>;

/** Where the last panel of a run goes back to: nowhere, a second port of the same processor, one of another breakout, or one of
 *  another processor. */
export const returns = z.enum(['none', 'port', 'breakout', 'processor']);
export type Returns = z.infer<typeof returns>;

/** Which processor drives a surface and how its zones are cut. */
export const surfaceSignal = z.strictObject({
  surfaceId: id,
  processorId: id,
  nodeId: id.nullable(),
  /** Widest zone in columns; null: as wide as the processor takes. */
  zoneColumnsMost: z.int().min(1).max(5000).nullable(),
  /** Zones one above the other; null: as few as fit. */
  zonesUp: z.int().min(1).max(100).nullable(),
  /** null: as the stage. */
  returns: returns.nullable(),
});
export type SurfaceSignal = z.infer<typeof surfaceSignal>;

/** Ports, zones and runs: the givens of the signal chapters. */
export const signal = z.strictObject({
  /** Used where a surface names no processor of its own; null: none chosen. */
  processorId: id.nullable(),
  nodeId: id.nullable(),
  bySurface: uniqueList(surfaceSignal, 100, 'surfaceId'),
  /** Share of every port that stays free. */
  freeShare: z.number().min(0).max(0.95),
  /** The user's own limit of panels a port; null: none. */
  panelsMost: z.int().min(1).max(10_000).nullable(),
  /** Highest lower edge of an entry panel that an adult reaches from the floor. */
  reachMm: lengthMm,
  priority,
  returns,
  /** Side of a ceiling where its loom arrives, as seen from below. */
  ceilingEntry: z.enum(['left', 'right', 'bottom', 'top']),
});
export type Signal = z.infer<typeof signal>;

/** A panel or a port as somebody else's table names it. */
const tag = z
  .string()
  .max(24)
  .regex(/^[^\p{Cc}\p{Cs}"\\]*$/u, 'a name has no control characters, quotes or backslashes');

/** A wiring that exists already, row by row as it was read: panel, port, place on the run (from 1). */
export const existingWiring = z.strictObject({
  source: label,
  rows: z.array(z.strictObject({ panel: tag, port: tag, place: z.int().min(1).max(100_000) })).max(250_000),
});
export type ExistingWiring = z.infer<typeof existingWiring>;

/** A tenth of every port free, entries where an adult reaches them (2.1 m: common practice, no source), a repeating wiring. */
export const defaultSignal: Signal = {
  processorId: null,
  nodeId: null,
  bySurface: [],
  freeShare: 0.1,
  panelsMost: null,
  reachMm: 2100,
  priority: 'repeats',
  returns: 'none',
  ceilingEntry: 'left',
};
