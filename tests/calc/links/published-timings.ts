import reference from '../../../fixtures/reference/cvt-timings.json';

/** Rows of one blanking from the timings that an outside program printed. */
export function publishedTimings(blanking: 'full' | 'reduced-1' | 'reduced-2') {
  return reference.timings
    .filter((row) => row.blanking === blanking)
    .map((row) => ({
      ...row,
      rate: { frames: row.frames, seconds: row.seconds },
      // One kilohertz that the program loses to floating point where the exact clock is a whole number of steps.
      clockKHz: Math.round((row.exactClockMHz ?? row.pixelClockMHz) * 1000),
    }));
}
