import type { Mode, Picture } from '../../../plan/picture';
import type { Plan } from '../../../plan/plan';
import type { FrameRate } from '../../../plan/primitives';
import { publishedRates } from '../../picture/published-rates';
import type { LeverStep } from '../lever';

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

/** Slower rates, one by one, from the published ones: whatever runs faster comes down to it. */
export function rateSteps(plan: Plan): readonly LeverStep[] {
  const fastest = allModes(plan.picture).reduce((a, b) => (hertz(b.rate) > hertz(a.rate) ? b : a)).rate;
  return publishedRates
    .toReversed()
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
