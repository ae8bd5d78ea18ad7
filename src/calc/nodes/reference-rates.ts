import type { FrameRate } from '../../plan/primitives';
import type { Sync } from '../../plan/sync';

type ReferenceKind = Sync['reference'];

/**
 * Frame rates at which a kind of reference beats; null: at any. Black burst: SMPTE ST 170 and ITU-R BT.1700 (25 and 30000/1001);
 * tri-level: SMPTE ST 274 and ST 296; precision time protocol: SMPTE ST 2059-1, alignment points of every rate. All from memory.
 */
export const referenceRates: Readonly<Record<ReferenceKind, readonly FrameRate[] | null>> = {
  'black-burst': [
    { frames: 25, seconds: 1 },
    { frames: 30_000, seconds: 1001 },
  ],
  'tri-level': [
    { frames: 24_000, seconds: 1001 },
    { frames: 24, seconds: 1 },
    { frames: 25, seconds: 1 },
    { frames: 30_000, seconds: 1001 },
    { frames: 30, seconds: 1 },
    { frames: 50, seconds: 1 },
    { frames: 60_000, seconds: 1001 },
    { frames: 60, seconds: 1 },
  ],
  ptp: null,
};

/** Whether `rate` is a whole multiple of `beat`, so that every beat finds a frame that begins. */
export function isMultiple(rate: FrameRate, beat: FrameRate): boolean {
  return (rate.frames * beat.seconds) % (rate.seconds * beat.frames) === 0;
}
