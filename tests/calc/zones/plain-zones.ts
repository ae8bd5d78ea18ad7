import { computePorts, type PortsInputs } from '../../../src/calc/ports/compute-ports';
import type { SolveZone } from '../../../src/calc/runs/zone-solver';
import type { SurfaceTable } from '../../../src/calc/surfaces/surface-table';
import type { ZonesInputs } from '../../../src/calc/zones/compute-zones';
import type { Mode } from '../../../src/plan/picture';
import { plainPorts } from '../ports/plain-ports';
import { columnSolver } from '../runs/column-wiring';

/** Inputs of the zones chapter, wired column by column unless another solver is given. */
export function plainZones(
  rest: Partial<PortsInputs> & { readonly wall?: SurfaceTable; readonly base?: Mode; readonly solve?: SolveZone } = {},
): ZonesInputs {
  const given = plainPorts(rest);
  return {
    signal: given.signal,
    timing: 'reduced-2',
    containerId: null,
    surfaces: given.surfaces,
    picture: given.picture,
    ports: computePorts(given),
    solve: rest.solve ?? columnSolver().solve,
  };
}
