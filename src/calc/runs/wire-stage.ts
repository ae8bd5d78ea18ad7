import type { HandChange } from '../../plan/hand-change';
import { type LaidChanges, layHandChanges } from './hand-changes/lay-hand-changes';
import type { AnchorGround } from './locate-anchor';
import { type WireInputs, wireZones } from './wire-zones';

export interface StageInputs extends WireInputs, AnchorGround {
  readonly handChanges: readonly HandChange[];
}

/** The wiring of the whole stage: every zone as the search chooses, hand changes laid over it. What the runs chapter is made of. */
export function wireStage(inputs: StageInputs): LaidChanges {
  return layHandChanges(wireZones(inputs), inputs.handChanges, inputs);
}
