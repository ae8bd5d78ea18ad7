import type { Breakout } from '../../plan/breakout';
import type { Processor } from '../../plan/processor';
import type { Check, Fix } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import type { SurfaceTable } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import type { PortsInputs } from './compute-ports';
import { countOutlets } from './count-outlets';
import type { SurfacePorts } from './port-result';

/** The breakout that a processor's sheet asks for, and whether one trunk carries all the ports of it. */
export function checkOutlets(
  { breakouts, processors }: PortsInputs,
  surface: SurfaceTable,
  processor: Processor,
  ports: SurfacePorts,
): Check[] {
  const { outlets } = processor;
  if (outlets.kind === 'direct') return [];
  const box = breakouts.find(({ id }) => id === outlets.breakoutId);
  const where = [{ kind: 'surface' as const, name: surface.letter }];
  if (box === undefined) {
    const index = processors.indexOf(processor);
    const fix = takeBreakout(processor, index, breakouts);
    return [
      {
        id: `ports.breakout.${surface.letter}`,
        chapter: 'ports',
        severity: 'stop',
        measured: null,
        limit: null,
        unit: 'count',
        where: [...where, { kind: 'field', name: `catalogue.processors[${index}].outlets.breakoutId` }],
        sentence: `The breakout that the processor of ${surfaceWords(surface)} needs is not in the catalogue, so it has no port.`,
        ...(fix === null ? {} : { fix }),
      },
    ];
  }
  const carriesNone = ports.portsABreakout === 0;
  return [
    {
      id: `ports.trunk.${surface.letter}`,
      chapter: 'ports',
      severity: carriesNone ? 'stop' : ports.portsABreakout < box.ports ? 'watch' : 'pass',
      measured: box.ports * processor.port.lineMbps * 1e6,
      limit: box.trunkMbps * 1e6,
      unit: 'bps',
      where,
      sentence: carriesNone
        ? `A trunk of {limit} carries not one port of the processor of ${surfaceWords(surface)}.`
        : ports.portsABreakout < box.ports
          ? `On ${surfaceWords(surface)} a trunk of {limit} carries {carried} of the {ports} ports of its breakout; the others stay unused.`
          : `On ${surfaceWords(surface)} a trunk of {limit} carries every port of its breakout: {ports}.`,
      values: {
        carried: { value: ports.portsABreakout, unit: 'count' },
        ports: { value: box.ports, unit: 'count' },
      },
    },
  ];
}

function takeBreakout(processor: Processor, index: number, breakouts: readonly Breakout[]): Fix | null {
  const { outlets } = processor;
  if (outlets.kind === 'direct') return null;
  const box = breakouts.find(({ id }) => {
    const tried: Processor = { ...processor, outlets: { ...outlets, breakoutId: id } };
    return countOutlets(tried, breakouts).portsAProcessor > 0;
  });
  if (box === undefined) return null;
  return setFieldsFix(`Take ${box.name}`, 'breakout', [
    { path: ['catalogue', 'processors', index, 'outlets', 'breakoutId'], value: box.id },
  ]);
}
