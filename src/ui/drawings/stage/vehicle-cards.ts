import type { Opening } from '../../../sheets/find-opening';
import type { StageParts } from '../../../sheets/stage-parts';
import { type VehicleBox, vehicleBoxes } from '../../../sheets/vehicle-boxes';
import type { Outlook } from './camera-views';
import type { StageExtent } from './stage-extent';

/** Radii that it stands in front of a stage without an opening. */
const forward = 0.3;

/** Two unit cards, cab and body, as matrices of the scene: the vehicle that must drive in, before the opening, or beside the stage and in front of it. */
export function vehicleCards(
  vehicle: StageParts['vehicle'],
  opening: Pick<Opening, 'middle' | 'outX' | 'outY'> | null,
  outlook: Pick<Outlook, 'x' | 'y'>,
  extent: StageExtent,
): Float32Array {
  const boxes = vehicleBoxes(vehicle);
  const width = boxes[1].wideMm / 1000;
  const out = opening === null ? { x: outlook.x, y: outlook.y } : { x: opening.outX, y: opening.outY };
  const nose =
    opening === null
      ? {
          x: extent.x + outlook.y * (extent.radius + width) + outlook.x * extent.radius * forward,
          y: -extent.z - outlook.x * (extent.radius + width) + outlook.y * extent.radius * forward,
        }
      : { x: opening.middle.xMm / 1000 + out.x * 1.5, y: opening.middle.yMm / 1000 + out.y * 1.5 };
  const cards = new Float32Array(32);
  for (const [i, box] of boxes.entries()) card(cards, i * 16, nose, out, box);
  return cards;
}

/** A unit card has its middle at (0, 0) of its face and reaches from z = -1 to 0; its face here looks into the stage. */
function card(
  cards: Float32Array,
  at: number,
  nose: { readonly x: number; readonly y: number },
  out: { readonly x: number; readonly y: number },
  { fromMm, longMm, wideMm, highMm, clearMm }: VehicleBox,
): void {
  const [from, long, wide, high] = [fromMm / 1000, longMm / 1000, wideMm / 1000, highMm / 1000];
  cards.set([out.y * wide, 0, out.x * wide, 0], at);
  cards.set([0, high, 0, 0], at + 4);
  cards.set([-out.x * long, 0, out.y * long, 0], at + 8);
  cards.set([nose.x + out.x * from, clearMm / 1000 + high / 2, -(nose.y + out.y * from), 1], at + 12);
}
