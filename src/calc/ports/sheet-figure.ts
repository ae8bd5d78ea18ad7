import type { Processor } from '../../plan/processor';
import type { PanelData } from '../panels/panel-views';

/** Pixels a port at 60 Hz and 8 bit: the figure of the pair where the panel's sheet has one, else the processor's own; null where neither states any. */
export function sheetFigure(panel: PanelData, processor: Processor): number | null {
  const pair = panel.data.drivenBy.find(({ processorId }) => processorId === processor.id);
  return pair?.portPixels ?? processor.port.sheetPixels;
}
