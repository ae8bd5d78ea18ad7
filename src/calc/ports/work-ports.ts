import type { Processor } from '../../plan/processor';
import type { Source, Step } from '../chapter';
import { fedRate } from '../picture/fed-rate';
import { ethernetFrame } from '../tables/ethernet-frame';
import { carriage } from './carriage';
import type { PortsInputs } from './compute-ports';
import { asNumber } from './fraction';
import type { PortCapacity, PortsResults } from './port-result';
import { countedRate } from './scale-sheet';
import { sheetFigure } from './sheet-figure';

const framing: Source = { kind: 'source', text: ethernetFrame.source };

/** How the panels on one port come about, for every panel type of every surface. */
export function workPorts(inputs: PortsInputs, results: PortsResults): Step[] {
  return results.surfaces.flatMap(({ processor, byType }, i) =>
    processor === null
      ? []
      : byType.flatMap((capacity) => workCapacity(inputs, inputs.surfaces.surfaces[i]!.letter, processor, capacity)),
  );
}

function workCapacity(inputs: PortsInputs, letter: string, processor: Processor, capacity: PortCapacity): Step[] {
  const panel = inputs.panels.find(({ id }) => id === capacity.panelId)!;
  const figure = `panels a port on ${letter}, ${panel.name}`;
  const { mode, sheetPixels, linePixels, capacityPixels } = capacity;
  const { frames, seconds } = fedRate(mode);
  const bits = carriage(processor.port.carriageBits, mode.depthBits);
  const stated = sheetFigure(panel, processor);
  const steps: Step[] = [];
  if (sheetPixels !== null && stated !== null) {
    steps.push({
      figure,
      symbol: 'sheet',
      expression: 'stated * 60 / fps * bits8 / bits',
      numbers: {
        stated,
        fps: asNumber(countedRate(mode, processor.port.lowestRateHz)),
        bits8: processor.port.carriageBits.at8,
        bits,
      },
      value: sheetPixels,
      unit: 'px',
      source: {
        kind: 'sheet',
        text: 'pixels a port at 60 Hz and 8 bit, from the sheet of the pair or of the processor',
      },
    });
  }
  steps.push({
    figure,
    symbol: 'line',
    expression: 'bitsASecond * data / wire / (frames / seconds * bits)',
    numbers: {
      bitsASecond: processor.port.lineMbps * 1e6,
      data: ethernetFrame.dataBytes,
      wire: ethernetFrame.wireBytes,
      frames,
      seconds,
      bits,
    },
    value: linePixels,
    unit: 'px',
    source: framing,
  });
  steps.push({
    figure,
    symbol: 'capacity',
    expression: sheetPixels === null ? 'line' : 'min(sheet, line)',
    numbers: sheetPixels === null ? { line: linePixels } : { sheet: sheetPixels, line: linePixels },
    value: capacityPixels,
    unit: 'px',
    source: { kind: 'practice', text: 'the smaller of the two ways of counting' },
  });
  steps.push(...workPanels(inputs, figure, capacity));
  return steps;
}

function workPanels({ signal, panels }: PortsInputs, figure: string, capacity: PortCapacity): Step[] {
  const { panelId, capacityPixels, usablePixels, panelPixels, panelsAPort } = capacity;
  const panel = panels.find(({ id }) => id === panelId)!;
  const limits: Record<string, number> = {};
  if (panel.data.chainPanels !== null) limits.chain = panel.data.chainPanels;
  if (signal.panelsMost !== null) limits.most = signal.panelsMost;
  const names = Object.keys(limits);
  const fitting = 'floor(usable / panel)';
  return [
    {
      figure,
      symbol: 'usable',
      expression: 'capacity * (1 - free)',
      numbers: { capacity: capacityPixels, free: signal.freeShare },
      value: capacityPixels * (1 - signal.freeShare),
      unit: 'px',
      source: { kind: 'given', text: 'the share of every port that stays free' },
    },
    {
      figure,
      symbol: 'panel',
      expression: 'wide * high',
      numbers: { wide: panel.pixels.wide, high: panel.pixels.high },
      value: panelPixels,
      unit: 'px',
      source: { kind: 'sheet', text: 'pixels of the panel' },
    },
    {
      figure,
      symbol: 'panels',
      expression: names.length === 0 ? fitting : `min(${[fitting, ...names].join(', ')})`,
      numbers: { usable: usablePixels, panel: panelPixels, ...limits },
      value: panelsAPort,
      unit: 'count',
      source: { kind: 'practice', text: 'a port carries whole panels, within the chain limit and your own' },
    },
  ];
}
