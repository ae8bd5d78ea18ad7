import { z } from 'zod';
import { bitDepth, frameRate, id } from './primitives';
import { uniqueList } from './unique-list';

/** A rate the panels are fed with: frames a second of the camera, depth, and pictures a camera frame (interleaved views). */
export const mode = z.strictObject({ rate: frameRate, depthBits: bitDepth, pictures: z.int().min(1).max(16) });
export type Mode = z.infer<typeof mode>;

/** Rates and depths: what runs on every surface, where a surface differs, and what else the stage must serve. */
export const picture = z.strictObject({
  base: mode,
  bySurface: uniqueList(z.strictObject({ surfaceId: id, mode }), 100, 'surfaceId'),
  /** Hardware is sized for the worst of these and of what runs. `surfaceIds` null: every surface. */
  alsoServe: uniqueList(z.strictObject({ id, mode, surfaceIds: z.array(id).max(100).nullable() }), 50),
});
export type Picture = z.infer<typeof picture>;

/** 60 frames a second at 10 bit on every surface. */
export const defaultPicture: Picture = {
  base: { rate: { frames: 60, seconds: 1 }, depthBits: 10, pictures: 1 },
  bySurface: [],
  alsoServe: [],
};
