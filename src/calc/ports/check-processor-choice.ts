import type { Check } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import type { SurfaceTable } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import { computePorts, type PortsInputs } from './compute-ports';

/** A surface without a processor: none chosen, or one that the catalogue does not have. Offers the first that suits. */
export function checkProcessorChoice(inputs: PortsInputs, surface: SurfaceTable): Check {
  const { signal, surfaces } = inputs;
  const own = signal.bySurface.findIndex(({ surfaceId }) => surfaceId === surface.surfaceId);
  const path = own >= 0 ? ['signal', 'bySurface', own, 'processorId'] : ['signal', 'processorId'];
  const suits = suitable(inputs, surfaces.surfaces.indexOf(surface));
  const named = own >= 0 || signal.processorId !== null;
  return {
    id: `ports.processor.${surface.letter}`,
    chapter: 'ports',
    severity: 'stop',
    measured: null,
    limit: null,
    unit: 'count',
    where: [
      { kind: 'surface', name: surface.letter },
      { kind: 'field', name: own >= 0 ? `signal.bySurface[${own}].processorId` : 'signal.processorId' },
    ],
    sentence: named
      ? `The processor chosen for ${surfaceWords(surface)} is not in the catalogue.`
      : `No processor is chosen for ${surfaceWords(surface)}, so nothing of it can be wired.`,
    ...(suits === null ? {} : { fix: setFieldsFix(`Take ${suits.name}`, 'processor', [{ path, value: suits.id }]) }),
  };
}

/** First processor of the catalogue that all panels of the surface name on their sheets and whose port and outlets carry one. */
function suitable(inputs: PortsInputs, index: number): { readonly id: string; readonly name: string } | null {
  const surface = inputs.surfaces.surfaces[index]!;
  const panels = inputs.panels.filter(({ id }) => surface.types.some(({ panelId }) => panelId === id));
  const found = inputs.processors.find(({ id }) => {
    if (!panels.every(({ data }) => data.drivenBy.some(({ processorId }) => processorId === id))) return false;
    const signal = { ...inputs.signal, processorId: id, bySurface: [] };
    const ports = computePorts({ ...inputs, signal }).surfaces[index]!;
    return ports.portsAProcessor > 0 && ports.byType.every(({ panelsAPort }) => panelsAPort > 0);
  });
  return found ?? null;
}
