import type { Panel } from '../../plan/panel';
import type { PanelFigures, PanelsResults } from './panel-result';

/** Figures that follow from each sheet of the catalogue. Pitch is width over pixels wide; that of height stands beside it. */
export function computePanels(panels: readonly Panel[]): PanelsResults {
  return { panels: panels.map(figuresOf) };
}

function figuresOf({ id, name, size, pixels, massKg, power }: Panel): PanelFigures {
  const areaM2 = (size.widthMm * size.heightMm) / 1e6;
  const pitchAcrossMm = size.widthMm / pixels.wide;
  const count = pixels.wide * pixels.high;
  return {
    panelId: id,
    name,
    pitchMm: pitchAcrossMm,
    pitchAcrossMm,
    pitchUpMm: size.heightMm / pixels.high,
    areaM2,
    pixels: count,
    wattsPerM2: power.fullWhiteW / areaM2,
    kgPerM2: massKg / areaM2,
    pixelsPerM2: count / areaM2,
  };
}
