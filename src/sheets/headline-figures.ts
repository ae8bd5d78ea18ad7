import type { Headline } from '../calc/evaluation';
import type { DisplayOptions } from '../units/display-options';
import { formatQuantity } from '../units/format-quantity';
import type { Unit } from '../units/unit';

export interface HeadlineFigure {
  readonly name: string;
  /** Written out with its unit; '-' where it cannot be computed. */
  readonly value: string;
}

/** The figures that lead, as people read them: what the stage is, and what drives and feeds it. */
export function headlineFigures(
  headline: Headline,
  display: DisplayOptions,
): { readonly stage: readonly HeadlineFigure[]; readonly supply: readonly HeadlineFigure[] } {
  const of = (name: string, value: number | null, unit: Unit): HeadlineFigure => ({
    name,
    value: value === null ? '-' : formatQuantity(value, unit, display),
  });
  const portsLeast = formatQuantity(headline.portsLeast, 'count', display);
  return {
    stage: [
      of('Panels', headline.panels, 'count'),
      of('Columns', headline.columns, 'count'),
      of('Rows', headline.rows, 'count'),
      of('Inside diameter', headline.insideDiameterMm, 'mm'),
      of('Opening', headline.openingMm, 'mm'),
      of('Wall height', headline.wallHeightMm, 'mm'),
      of('Pixels', headline.pixels, 'px'),
      of('Mass', headline.massKg, 'kg'),
      of('Price', headline.priceTotal, 'money'),
    ],
    supply: [
      of('Processors', headline.processors, 'count'),
      of('Breakouts', headline.breakouts, 'count'),
      { name: 'Ports used', value: `${formatQuantity(headline.portsUsed, 'count', display)} (least ${portsLeast})` },
      { name: 'Panels a port', value: rangeOf(headline.panelsPerPortMin, headline.panelsPerPortMax) },
      of('Fullest port', headline.fullestPortShare, 'share'),
      of('Circuits', headline.circuits, 'count'),
      of('Worst leg', headline.worstLegA, 'A'),
      of('Neutral', headline.neutralA, 'A'),
      of('Full white', headline.powerMaxW, 'W'),
      of('Heat, all in', headline.heatTons, 'tons'),
    ],
  };
}

function rangeOf(least: number | null, most: number | null): string {
  if (least === null || most === null) return '-';
  return least === most ? `${least}` : `${least} to ${most}`;
}
