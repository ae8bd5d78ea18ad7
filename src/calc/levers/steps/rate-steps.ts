import type { Mode, Picture } from '../../../plan/picture';
import type { Plan } from '../../../plan/plan';
import type { FrameRate } from '../../../plan/primitives';
import type { LeverStep } from '../lever';

/** Rates that cameras and displays run at, fastest first. Source: ITU-R BT.709-6 and BT.2100; 48 by common practice. */
export const usualRates: readonly FrameRate[] = [
  { frames: 120, seconds: 1 },
  { frames: 100, seconds: 1 },
  { frames: 60, seconds: 1 },
  { frames: 60_000, seconds: 1001 },
  { frames: 50, seconds: 1 },
  { frames: 48, seconds: 1 },
  { frames: 48_000, seconds: 1001 },
  { frames: 30, seconds: 1 },
  { frames: 30_000, seconds: 1001 },
  { frames: 25, seconds: 1 },
  { frames: 24, seconds: 1 },
  { frames: 24_000, seconds: 1001 },
];

const hertz = (rate: FrameRate) => rate.frames / rate.seconds;

/** Every mode of a picture, changed alike. */
export function mapModes(picture: Picture, change: (mode: Mode) => Mode): Picture {
  return {
    base: change(picture.base),
    bySurface: picture.bySurface.map((entry) => ({ ...entry, mode: change(entry.mode) })),
    alsoServe: picture.alsoServe.map((entry) => ({ ...entry, mode: change(entry.mode) })),
  };
}

export function allModes(picture: Picture): readonly Mode[] {
  return [
    picture.base,
    ...picture.bySurface.map((entry) => entry.mode),
    ...picture.alsoServe.map((entry) => entry.mode),
  ];
}

/** Slower rates, one by one: whatever runs faster comes down to it. */
export function rateSteps(plan: Plan): readonly LeverStep[] {
  const fastest = allModes(plan.picture).reduce((a, b) => (hertz(b.rate) > hertz(a.rate) ? b : a)).rate;
  return usualRates
    .filter((rate) => hertz(rate) < hertz(fastest))
    .map((rate) => ({
      from: { value: hertz(fastest), unit: 'fps' },
      to: { value: hertz(rate), unit: 'fps' },
      command: {
        name: 'set-fields',
        args: {
          fields: [
            {
              path: ['picture'],
              value: mapModes(plan.picture, (mode) => (hertz(mode.rate) > hertz(rate) ? { ...mode, rate } : mode)),
            },
          ],
          label: 'frame rate',
        },
      },
      buys: 0,
    }));
}
