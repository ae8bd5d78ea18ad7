import type { Processor } from '../../plan/processor';
import type { Check } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import type { SurfaceTable } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import type { PortsInputs } from './compute-ports';
import type { SurfacePorts } from './port-result';

/**
 * Whether the sheets of a surface's panels name the processor that drives them. The fix for a sheet that names none writes
 * down every processor that drives such a panel on some surface, for one alone would speak against the others.
 */
export function checkPair(
  { panels, surfaces }: Pick<PortsInputs, 'panels' | 'surfaces'>,
  ports: readonly Pick<SurfacePorts, 'processor'>[],
  surface: SurfaceTable,
  processor: Processor,
): Check[] {
  const ids = new Set(surface.types.map(({ panelId }) => panelId));
  const unpaired = panels.flatMap((panel, index) =>
    ids.has(panel.id) && !panel.data.drivenBy.some(({ processorId }) => processorId === processor.id)
      ? [{ panel, index }]
      : [],
  );
  if (unpaired.length === 0) return [];
  const missing = unpaired.map(({ panel }) =>
    panel.data.drivenBy.length > 0 ? [processor.id] : driversOf(panel.id, surfaces.surfaces, ports),
  );
  const silent = unpaired.every(({ panel }) => panel.data.drivenBy.length === 0);
  return [
    {
      id: `ports.pair.${surface.letter}`,
      chapter: 'ports',
      severity: silent ? 'offer' : 'stop',
      measured: unpaired.length,
      limit: silent ? null : 0,
      unit: 'count',
      where: [
        { kind: 'surface', name: surface.letter },
        ...unpaired.map(({ panel }) => ({ kind: 'item' as const, name: panel.name })),
      ],
      sentence: silent
        ? `Not stated on the sheet: which processors drive a panel of ${surfaceWords(surface)}.`
        : `The sheet of a panel of ${surfaceWords(surface)} names other processors, not ${processor.name}.`,
      fix: setFieldsFix(
        missing.every((ids) => ids.length === 1)
          ? 'The sheet allows this pair: write it down'
          : 'The sheet allows these pairs: write them down',
        'processors that drive the panel',
        unpaired.map(({ panel, index }, i) => ({
          path: ['catalogue', 'panels', index, 'data', 'drivenBy'],
          value: [...panel.data.drivenBy, ...missing[i]!.map((processorId) => ({ processorId, portPixels: null }))],
        })),
      ),
    },
  ];
}

/** Ids of the processors that drive a panel on any surface. */
function driversOf(
  panelId: string,
  surfaces: readonly SurfaceTable[],
  ports: readonly Pick<SurfacePorts, 'processor'>[],
): readonly string[] {
  const ids = ports.flatMap(({ processor }, i) =>
    processor !== null && surfaces[i]!.types.some((type) => type.panelId === panelId) ? [processor.id] : [],
  );
  return [...new Set(ids)];
}
