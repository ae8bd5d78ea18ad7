import type { Check, Place } from '../chapter';
import { checkSurfaceNames } from '../surfaces/check-surface-names';
import type { SurfaceTable } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import { checkOutlets } from './check-outlets';
import { checkPair } from './check-pair';
import { checkProcessorChoice } from './check-processor-choice';
import type { PortsInputs } from './compute-ports';
import { panelsUnlimited } from './panels-unlimited';
import type { PortsResults, SurfacePorts } from './port-result';

/** Processors chosen, pairs of panel and processor, what one port carries, chain limits, breakouts and trunks. */
export function checkPorts(inputs: PortsInputs, results: PortsResults): Check[] {
  return [
    ...checkNames(inputs),
    ...results.surfaces.flatMap((ports, i) => {
      const surface = inputs.surfaces.surfaces[i]!;
      if (ports.processor === null) return [checkProcessorChoice(inputs, surface)];
      return [
        ...checkPair(inputs, results.surfaces, surface, ports.processor),
        ...checkOnePanel(surface, ports),
        ...checkSheet(surface, ports),
        ...checkChain(surface, ports),
        ...checkOutlets(inputs, surface, ports.processor, ports),
      ];
    }),
  ];
}

const placeOf = (surface: SurfaceTable): Place => ({ kind: 'surface', name: surface.letter });

function checkNames({ signal, surfaces }: PortsInputs): Check[] {
  return checkSurfaceNames(surfaces, {
    id: 'ports.surface-names',
    chapter: 'ports',
    path: ['signal', 'bySurface'],
    field: 'surfaceId',
    entries: signal.bySurface,
    keep: (own, isThere) => (isThere(own.surfaceId) ? own : null),
    sentence: 'Choices of a processor for a surface that is not there: {measured}.',
    called: 'processors by surface',
  });
}

function checkOnePanel(surface: SurfaceTable, ports: SurfacePorts): Check[] {
  const first = ports.byType[0];
  if (first === undefined) return [];
  const worst = ports.byType.reduce((least, next) => (next.panelsAPort < least.panelsAPort ? next : least), first);
  const { rate, pictures, depthBits } = worst.mode;
  const on = surfaceWords(surface);
  return [
    {
      id: `ports.one-panel.${surface.letter}`,
      chapter: 'ports',
      severity: worst.panelsAPort === 0 ? 'stop' : 'pass',
      measured: worst.panelPixels,
      limit: worst.usablePixels,
      unit: 'px',
      where: [placeOf(surface)],
      sentence:
        worst.panelsAPort === 0
          ? `One panel on ${on} has {measured}; a port carries {limit} at {rate} and {depth}: not even one panel fits.`
          : worst.panelsAPort === 1
            ? `A port on ${on} carries one panel of {measured} at {rate} and {depth}, within {limit}.`
            : `A port on ${on} carries {panels} panels of {measured} each at {rate} and {depth}, within {limit}.`,
      values: {
        panels: { value: worst.panelsAPort, unit: 'count' },
        rate: { value: (rate.frames * pictures) / rate.seconds, unit: 'fps' },
        depth: { value: depthBits, unit: 'bit' },
      },
    },
  ];
}

function checkSheet(surface: SurfaceTable, ports: SurfacePorts): Check[] {
  const silent = ports.byType.filter(({ sheetPixels }) => sheetPixels === null);
  const first = silent[0];
  if (first === undefined) return [];
  return [
    {
      id: `ports.sheet.${surface.letter}`,
      chapter: 'ports',
      severity: 'offer',
      measured: Math.floor(first.linePixels),
      limit: null,
      unit: 'px',
      where: [placeOf(surface)],
      sentence: `Not stated: how many pixels a port on ${surfaceWords(surface)} carries by the sheet. The line rate alone gives {measured}.`,
    },
  ];
}

function checkChain(surface: SurfaceTable, ports: SurfacePorts): Check[] {
  if (ports.panelsMost < panelsUnlimited || ports.byType.length === 0) return [];
  return [
    {
      id: `ports.chain.${surface.letter}`,
      chapter: 'ports',
      severity: 'offer',
      measured: Math.max(...ports.byType.map(({ panelsAPort }) => panelsAPort)),
      limit: null,
      unit: 'count',
      where: [placeOf(surface)],
      sentence: `Not stated: how many panels a data chain on ${surfaceWords(surface)} may carry. By pixels a port takes {measured}.`,
    },
  ];
}
