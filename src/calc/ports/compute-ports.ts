import type { Breakout } from '../../plan/breakout';
import type { Processor } from '../../plan/processor';
import type { Signal } from '../../plan/signal';
import type { PanelData } from '../panels/panel-views';
import type { PictureResults, SurfacePicture } from '../picture/picture-result';
import type { SurfaceSet, SurfaceTable } from '../surfaces/surface-table';
import { capacityForPanel } from './capacity-for-panel';
import { countOutlets } from './count-outlets';
import { compared, type Fraction, wholePart } from './fraction';
import { runsAProcessor } from './outlets';
import { panelsUnlimited } from './panels-unlimited';
import type { PortsResults, SurfacePorts } from './port-result';
import { scaleSheet } from './scale-sheet';

export interface PortsInputs {
  readonly signal: Signal;
  readonly processors: readonly Processor[];
  readonly breakouts: readonly Breakout[];
  readonly panels: readonly PanelData[];
  readonly surfaces: SurfaceSet;
  readonly picture: PictureResults;
}

/** Ports of every surface: what one carries at the served mode that leaves least, and how many a processor has. */
export function computePorts(inputs: PortsInputs): PortsResults {
  return {
    surfaces: inputs.surfaces.surfaces.map((surface, i) => portsOf(inputs, surface, inputs.picture.surfaces[i]!)),
  };
}

/** The processor that drives a surface; null where none is chosen or the catalogue has none of that id. */
function processorOf({ signal, processors }: PortsInputs, surfaceId: string): Processor | null {
  const own = signal.bySurface.find((choice) => choice.surfaceId === surfaceId);
  const wanted = own?.processorId ?? signal.processorId;
  return processors.find(({ id }) => id === wanted) ?? null;
}

function portsOf(inputs: PortsInputs, surface: SurfaceTable, picture: SurfacePicture): SurfacePorts {
  const { signal, breakouts, panels } = inputs;
  const processor = processorOf(inputs, surface.surfaceId);
  if (processor === null) return withoutProcessor(surface.surfaceId);
  const ids = [...new Set(surface.types.map(({ panelId }) => panelId))];
  const types = ids.flatMap((id) => panels.find((panel) => panel.id === id) ?? []);
  const byType = types.map((panel) => capacityForPanel({ panel, processor, signal, served: picture.served }));
  const returns = signal.bySurface.find((own) => own.surfaceId === surface.surfaceId)?.returns ?? signal.returns;
  const outlets = { ...countOutlets(processor, breakouts), returns };
  const least = (values: readonly number[]) => (values.length > 0 ? Math.min(...values) : 0);
  return {
    surfaceId: surface.surfaceId,
    processor,
    counting: processor.port.counting,
    usablePixels: least(byType.map(({ usablePixels }) => usablePixels)),
    capacityPixels: least(byType.map(({ capacityPixels }) => capacityPixels)),
    panelsMost: Math.min(
      panelsUnlimited,
      signal.panelsMost ?? panelsUnlimited,
      ...types.map(({ data }) => data.chainPanels ?? panelsUnlimited),
    ),
    byType,
    ...outlets,
    runsAProcessor: runsAProcessor(outlets),
    processorPixels: wholePart(
      leastOf(picture.served.map((mode) => scaleSheet(processor.canvas.pixels, mode, processor.port))),
    ),
  };
}

function leastOf(fractions: readonly Fraction[]): Fraction {
  return fractions.reduce((least, next) => (compared(next, least) < 0 ? next : least));
}

function withoutProcessor(surfaceId: string): SurfacePorts {
  return {
    surfaceId,
    processor: null,
    counting: 'panels',
    usablePixels: 0,
    capacityPixels: 0,
    panelsMost: 0,
    byType: [],
    portsAProcessor: 0,
    portsABreakout: 0,
    breakoutsAProcessor: 0,
    returns: 'none',
    runsAProcessor: 0,
    processorPixels: 0,
  };
}
