import type { Plan } from '../../../plan/plan';
import type { LeverStep } from '../lever';
import { allModes, mapModes } from './rate-steps';

/** Fewer interleaved pictures a camera frame. */
export function picturesSteps(plan: Plan): readonly LeverStep[] {
  const most = Math.max(...allModes(plan.picture).map((mode) => mode.pictures));
  return Array.from({ length: most - 1 }, (_, i) => most - 1 - i).map((pictures) => ({
    from: { value: most, unit: 'count' },
    to: { value: pictures, unit: 'count' },
    command: {
      name: 'set-fields',
      args: {
        fields: [
          {
            path: ['picture'],
            value: mapModes(plan.picture, (mode) => (mode.pictures > pictures ? { ...mode, pictures } : mode)),
          },
        ],
        label: 'pictures a frame',
      },
    },
    buys: 0,
  }));
}
