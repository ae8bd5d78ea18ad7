import type { Panel } from '../../plan/panel';
import type { Source, Step } from '../chapter';
import type { PanelsResults } from './panel-result';

const sheet: Source = { kind: 'sheet', text: 'size, pixels, mass and full white from the panel’s sheet' };

/** Pitch, area and the figures by area of every panel of the catalogue. `results` are those of the same panels. */
export function workPanels(panels: readonly Panel[], results: PanelsResults): Step[] {
  return panels.flatMap((panel, i): Step[] => {
    const { name, size, pixels, massKg, power } = panel;
    const figures = results.panels[i]!;
    const width = size.widthMm;
    const height = size.heightMm;
    const area = figures.areaM2;
    const step = (
      figure: string,
      symbol: string,
      expression: string,
      numbers: Step['numbers'],
      value: number,
      unit: Step['unit'],
    ): Step => ({ figure: `${figure} of ${name}`, symbol, expression, numbers, value, unit, source: sheet });
    return [
      step('pitch', 'pitch', 'width / wide', { width, wide: pixels.wide }, figures.pitchMm, 'mm'),
      step('pitch upwards', 'pitchUp', 'height / high', { height, high: pixels.high }, figures.pitchUpMm, 'mm'),
      step('area', 'area', 'width * height / 10^6', { width, height }, area, 'm2'),
      step(
        'watts a square metre',
        'wattsArea',
        'white / area',
        { white: power.fullWhiteW, area },
        figures.wattsPerM2,
        'W',
      ),
      step('mass a square metre', 'massArea', 'mass / area', { mass: massKg, area }, figures.kgPerM2, 'kg'),
      step(
        'pixels a square metre',
        'pixelsArea',
        'wide * high / area',
        { wide: pixels.wide, high: pixels.high, area },
        figures.pixelsPerM2,
        'px',
      ),
    ];
  });
}
