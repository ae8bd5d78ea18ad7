import type { StageParts } from './stage-parts';

/** Where the plan does not state the vehicle: a usual lorry, common practice, no source. Its length is never stated. */
const usual = { widthMm: 2550, heightMm: 4000 };
const bodyMm = 6200;
const cabMm = 1900;
const cabGapMm = 250;
const cabShare = { width: 0.94, height: 0.78 };
const cabMostMm = 3000;
const clearMm = 450;

/** A box of the vehicle: from how far behind its nose, how long, wide and high, and how far above the floor. */
export interface VehicleBox {
  readonly fromMm: number;
  readonly longMm: number;
  readonly wideMm: number;
  readonly highMm: number;
  readonly clearMm: number;
}

/** Cab and body of what must drive in; one that is lower than its wheels is as flat as a sheet. */
export function vehicleBoxes(vehicle: StageParts['vehicle']): readonly [cab: VehicleBox, body: VehicleBox] {
  const wideMm = vehicle.widthMm ?? usual.widthMm;
  const heightMm = vehicle.heightMm ?? usual.heightMm;
  const above = (topMm: number) => Math.max(1, topMm - clearMm);
  return [
    {
      fromMm: 0,
      longMm: cabMm,
      wideMm: wideMm * cabShare.width,
      highMm: above(Math.min(heightMm * cabShare.height, cabMostMm)),
      clearMm,
    },
    { fromMm: cabMm + cabGapMm, longMm: bodyMm, wideMm, highMm: above(heightMm), clearMm },
  ];
}
