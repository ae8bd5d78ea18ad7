import type { TurnDeg } from '../../plan/primitives';
import type { PanelShape } from '../panels/panel-views';
import type { PlacedPanelType } from './surface-table';

/** A panel's sheet after its turn: a quarter turn swaps width with height and pixels wide with pixels high. */
export function placedPanelType(shape: PanelShape, turnDeg: TurnDeg): PlacedPanelType {
  const swaps = turnDeg === 90 || turnDeg === 270;
  const { size, pixels } = shape;
  return {
    panelId: shape.id,
    name: shape.name,
    turnDeg,
    widthMm: swaps ? size.heightMm : size.widthMm,
    heightMm: swaps ? size.widthMm : size.heightMm,
    depthMm: size.depthMm,
    pixelsWide: swaps ? pixels.high : pixels.wide,
    pixelsHigh: swaps ? pixels.wide : pixels.high,
  };
}
