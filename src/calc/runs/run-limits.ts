import type { Signal } from '../../plan/signal';
import type { SurfacePorts } from '../ports/port-result';
import type { SurfaceTable } from '../surfaces/surface-table';
import type { RunLimits } from './wiring-grid';

/** What one run on a surface may hold and where it may begin; on a ceiling, wired from above, reach is off. */
export function runLimits(kind: SurfaceTable['kind'], ports: SurfacePorts, signal: Pick<Signal, 'reachMm'>): RunLimits {
  return {
    usablePixels: ports.usablePixels,
    panelsMost: ports.panelsMost,
    counting: ports.counting,
    reachMm: kind === 'ceiling' ? Number.POSITIVE_INFINITY : signal.reachMm,
    ...(ports.returns === 'none' ? {} : { returns: true }),
  };
}
