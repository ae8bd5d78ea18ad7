import type { Plan } from '../../../plan/plan';
import type { BitDepth } from '../../../plan/primitives';
import type { LeverStep } from '../lever';
import { allModes, mapModes } from './rate-steps';

const depths: readonly BitDepth[] = [12, 10, 8];

/** Fewer bits: whatever runs deeper comes down to it. */
export function depthSteps(plan: Plan): readonly LeverStep[] {
  const deepest = Math.max(...allModes(plan.picture).map((mode) => mode.depthBits));
  return depths
    .filter((depthBits) => depthBits < deepest)
    .map((depthBits) => ({
      from: { value: deepest, unit: 'bit' },
      to: { value: depthBits, unit: 'bit' },
      command: {
        name: 'set-fields',
        args: {
          fields: [
            {
              path: ['picture'],
              value: mapModes(plan.picture, (mode) => (mode.depthBits > depthBits ? { ...mode, depthBits } : mode)),
            },
          ],
          label: 'bit depth',
        },
      },
      buys: 0,
    }));
}
