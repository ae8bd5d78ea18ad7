import type { Check, Fix } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import type { SurfaceTable } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import { computePorts, type PortsInputs } from './compute-ports';

/** A surface without a processor: none chosen, or one that the catalogue does not have. Offers the first that suits. */
export function checkProcessorChoice(inputs: PortsInputs, surface: SurfaceTable): Check {
  const { signal } = inputs;
  const own = signal.bySurface.findIndex(({ surfaceId }) => surfaceId === surface.surfaceId);
  const named = own >= 0 || signal.processorId !== null;
  const fix = chooseProcessor(inputs, surface, own);
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
    ...(fix === null ? {} : { fix }),
  };
}

/**
 * For a surface that names its own: the first that suits. Else the stage's, where one suits every surface that hangs on it;
 * where none does, one for this surface alone, so that no other is given what does not drive it.
 */
function chooseProcessor(inputs: PortsInputs, surface: SurfaceTable, own: number): Fix | null {
  const { signal, surfaces } = inputs;
  const { surfaceId } = surface;
  const forThis = suitable(inputs, [surface]);
  if (forThis === null) return null;
  if (own >= 0) {
    const path = ['signal', 'bySurface', own, 'processorId'];
    return setFieldsFix(`Take ${forThis.name}`, 'processor', [{ path, value: forThis.id }]);
  }
  const sharing = surfaces.surfaces.filter((other) =>
    signal.bySurface.every((choice) => choice.surfaceId !== other.surfaceId),
  );
  const forAll = suitable(inputs, sharing);
  if (forAll !== null) {
    return setFieldsFix(`Take ${forAll.name}`, 'processor', [{ path: ['signal', 'processorId'], value: forAll.id }]);
  }
  const choice = {
    surfaceId,
    processorId: forThis.id,
    nodeId: null,
    zoneColumnsMost: null,
    returns: null,
    zonesUp: null,
  };
  return setFieldsFix(`Take ${forThis.name} for ${surfaceWords(surface)}`, 'processor', [
    { path: ['signal', 'bySurface'], value: [...signal.bySurface, choice] },
  ]);
}

/** First processor of the catalogue that all panels of the surfaces name on their sheets and whose port and outlets carry a run. */
function suitable(
  inputs: PortsInputs,
  surfaces: readonly SurfaceTable[],
): { readonly id: string; readonly name: string } | null {
  const used = new Set(surfaces.flatMap(({ types }) => types.map(({ panelId }) => panelId)));
  const panels = inputs.panels.filter(({ id }) => used.has(id));
  const places = surfaces.map((surface) => inputs.surfaces.surfaces.indexOf(surface));
  const found = inputs.processors.find(({ id }) => {
    if (!panels.every(({ data }) => data.drivenBy.some(({ processorId }) => processorId === id))) return false;
    const bySurface = inputs.signal.bySurface.map((own) => ({ ...own, processorId: id }));
    const results = computePorts({ ...inputs, signal: { ...inputs.signal, processorId: id, bySurface } });
    return places.every((place) => {
      const { runsAProcessor, byType } = results.surfaces[place]!;
      return runsAProcessor > 0 && byType.every(({ panelsAPort }) => panelsAPort > 0);
    });
  });
  return found ?? null;
}
