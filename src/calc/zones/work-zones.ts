import type { Mode } from '../../plan/picture';
import type { Source, Step } from '../chapter';
import type { TimingChoice } from '../links/time-canvas';
import { workTiming } from '../links/work-timing';
import { fedRate } from '../picture/fed-rate';
import type { SurfacePorts } from '../ports/port-result';
import type { SurfaceTable } from '../surfaces/surface-table';
import type { ZonesInputs } from './compute-zones';
import { inputPayload } from './input-payload';
import type { SurfaceZones, Zone, ZonesResults } from './zone-result';

const equalZones: Source = { kind: 'practice', text: 'equal zones side by side, one processor each' };

/** How many processors, what of one its canvas uses, and what the canvas asks of its input. */
export function workZones(inputs: ZonesInputs, results: ZonesResults): Step[] {
  return results.surfaces.flatMap((zones, i) => {
    const table = inputs.surfaces.surfaces[i]!;
    if (zones.zones === 0) return [];
    const own = results.zones.filter(({ surfaceId }) => surfaceId === table.surfaceId);
    return [
      ...workProcessors(table, zones, own),
      ...workShare(table, zones, inputs.ports.surfaces[i]!),
      ...workInput(inputs, table, zones, inputs.picture.surfaces[i]!.served),
    ];
  });
}

function workProcessors(table: SurfaceTable, zones: SurfaceZones, own: readonly Zone[]): Step[] {
  const { columns, up } = zones.widths.find((width) => width.chosen)!;
  const figure = `processors of ${table.letter}`;
  const across = Math.ceil(table.columns / columns);
  const empty = across * up - own.length;
  return [
    {
      figure,
      symbol: 'across',
      expression: 'ceil(columns / wide)',
      numbers: { columns: table.columns, wide: columns },
      value: across,
      unit: 'count',
      source: equalZones,
    },
    {
      figure,
      symbol: 'processors',
      expression: empty > 0 ? 'across * up - empty' : 'across * up',
      numbers: empty > 0 ? { across, up, empty } : { across, up },
      value: own.length,
      unit: 'count',
      source: equalZones,
    },
  ];
}

function workShare(table: SurfaceTable, zones: SurfaceZones, ports: SurfacePorts): Step[] {
  const { canvasWidth, canvasHeight } = zones;
  return [
    {
      figure: `share of a processor used on ${table.letter}`,
      symbol: 'used',
      expression: 'width * height / driven',
      numbers: { width: canvasWidth, height: canvasHeight, driven: ports.processorPixels },
      value: (canvasWidth * canvasHeight) / ports.processorPixels,
      unit: 'share',
      source: {
        kind: 'sheet',
        text: 'pixels that the processor drives, scaled by rate and depth like those of a port',
      },
    },
  ];
}

function workInput(choice: TimingChoice, table: SurfaceTable, zones: SurfaceZones, served: readonly Mode[]): Step[] {
  const canvas = { width: zones.canvasWidth, height: zones.canvasHeight };
  if (zones.inputBps === null) return [];
  const worst = served.find((mode) => inputPayload(canvas, [mode], choice) === zones.inputBps)!;
  const figure = `input of a processor on ${table.letter}`;
  const timing = workTiming(figure, canvas, fedRate(worst), choice);
  return [
    ...timing,
    {
      figure,
      symbol: 'payload',
      expression: 'clock * 3 * bits',
      numbers: { clock: timing.at(-1)!.value, bits: worst.depthBits },
      value: zones.inputBps,
      unit: 'bps',
      source: { kind: 'practice', text: 'three colours a pixel, without compression' },
    },
  ];
}
