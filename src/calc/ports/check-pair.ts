import type { Processor } from '../../plan/processor';
import type { Check } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import type { SurfaceTable } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import type { PortsInputs } from './compute-ports';

/** Whether the sheets of a surface's panels name the processor that drives them. */
export function checkPair({ panels }: PortsInputs, surface: SurfaceTable, processor: Processor): Check[] {
  const ids = new Set(surface.types.map(({ panelId }) => panelId));
  const unpaired = panels.flatMap((panel, index) =>
    ids.has(panel.id) && !panel.data.drivenBy.some(({ processorId }) => processorId === processor.id)
      ? [{ panel, index }]
      : [],
  );
  if (unpaired.length === 0) return [];
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
        'The sheet allows this pair: write it down',
        'processors that drive the panel',
        unpaired.map(({ panel, index }) => ({
          path: ['catalogue', 'panels', index, 'data', 'drivenBy'],
          value: [...panel.data.drivenBy, { processorId: processor.id, portPixels: null }],
        })),
      ),
    },
  ];
}
