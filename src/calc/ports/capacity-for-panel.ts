import type { Mode } from '../../plan/picture';
import type { Processor } from '../../plan/processor';
import type { Signal } from '../../plan/signal';
import type { PanelData } from '../panels/panel-views';
import { asNumber, compared, type Fraction, fractionOf, minus, times, wholePart } from './fraction';
import { linePixels } from './line-pixels';
import type { PortCapacity } from './port-result';
import { scaleSheet } from './scale-sheet';
import { sheetFigure } from './sheet-figure';

export interface CapacityInputs {
  readonly panel: PanelData;
  readonly processor: Processor;
  readonly signal: Pick<Signal, 'freeShare' | 'panelsMost'>;
  /** At least one. */
  readonly served: readonly Mode[];
}

interface AtMode {
  readonly mode: Mode;
  readonly sheet: Fraction | null;
  readonly line: Fraction;
  readonly capacity: Fraction;
}

/** What one port carries of one panel type, sized for the served mode that leaves least. */
export function capacityForPanel({ panel, processor, signal, served }: CapacityInputs): PortCapacity {
  const { mode, sheet, line, capacity } = served
    .map((mode) => atMode(panel, processor, mode))
    .reduce((least, next) => (compared(next.capacity, least.capacity) < 0 ? next : least));
  const usable = wholePart(times(capacity, minus(fractionOf(1), fractionOf(signal.freeShare))));
  const panelPixels = panel.pixels.wide * panel.pixels.high;
  const byPixels = Math.floor(usable / panelPixels);
  const chain = panel.data.chainPanels ?? byPixels;
  const user = signal.panelsMost ?? byPixels;
  const panelsAPort = Math.min(byPixels, chain, user);
  return {
    panelId: panel.id,
    sheetPixels: sheet === null ? null : asNumber(sheet),
    linePixels: asNumber(line),
    capacityPixels: asNumber(capacity),
    usablePixels: usable,
    mode,
    panelPixels,
    panelsAPort,
    limitedBy: panelsAPort === byPixels ? 'pixels' : panelsAPort === chain ? 'chain' : 'user',
  };
}

function atMode(panel: PanelData, processor: Processor, mode: Mode): AtMode {
  const figure = sheetFigure(panel, processor);
  const sheet = figure === null ? null : scaleSheet(figure, mode, processor.port);
  const line = linePixels(mode, processor.port);
  return { mode, sheet, line, capacity: sheet !== null && compared(sheet, line) < 0 ? sheet : line };
}
