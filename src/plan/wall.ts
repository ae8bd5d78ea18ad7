import { z } from 'zod';
import { angleDeg, id, jointDeg, label, lengthMm, offsetMm, turnDeg } from './primitives';
import { uniqueList } from './unique-list';

/** Neighbouring columns with one joint angle, or two mixed evenly. */
export const segment = z.strictObject({
  id,
  columns: z.int().min(1).max(5000),
  /** Joint between neighbouring columns of this segment. */
  jointDeg,
  /** `count` of the segment's joints take `jointDeg` of this record instead, spread evenly; null: all alike. */
  mixed: z.strictObject({ jointDeg, count: z.int().min(1).max(5000) }).nullable(),
  /** Joint to the segment before; without meaning on the first. */
  jointBeforeDeg: jointDeg,
});
export type Segment = z.infer<typeof segment>;

/** Rows of one panel type, stacked upwards. */
export const band = z.strictObject({ id, panelId: id, rows: z.int().min(1).max(1000), turnDeg });
export type Band = z.infer<typeof band>;

/** A rectangle of panels left out: a door, a window. Anchored like a hand change; rows from the floor. */
export const wallHole = z.strictObject({
  id,
  name: label,
  segmentId: id,
  column: z.int().min(1).max(5000),
  row: z.int().min(1).max(5000),
  columns: z.int().min(1).max(5000),
  rows: z.int().min(1).max(5000),
});
export type WallHole = z.infer<typeof wallHole>;

/** A wall: a path of columns, rows in bands from the floor up. */
export const wall = z.strictObject({
  id,
  letter: z.string().regex(/^[A-Z]$/, 'a surface has one letter, A to Z'),
  name: label,
  /** Where the middle of the wall stands: the best-fit centre of an arc of half a turn or more, else the middle between its ends. */
  place: z.strictObject({ xMm: offsetMm, yMm: offsetMm, turnDeg: angleDeg }),
  baseMm: lengthMm,
  /** stands: stacked from the floor; hangs: flown from above. */
  support: z.enum(['stands', 'hangs']),
  path: uniqueList(segment, 500).min(1),
  bands: uniqueList(band, 50).min(1),
  holes: uniqueList(wallHole, 200),
});
export type Wall = z.infer<typeof wall>;
