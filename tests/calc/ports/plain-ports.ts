import { computePicture } from '../../../src/calc/picture/compute-picture';
import type { PortsInputs } from '../../../src/calc/ports/compute-ports';
import type { SurfaceTable } from '../../../src/calc/surfaces/surface-table';
import type { Mode } from '../../../src/plan/picture';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';
import { mode, plainBreakout, plainPanel, plainProcessor, plainSignal } from './plain-items';

/** Inputs of the ports chapter for one wall of 4 x 3 invented panels of 216 x 216, changed where a test wants it. */
export function plainPorts(
  rest: Partial<PortsInputs> & { readonly wall?: SurfaceTable; readonly base?: Mode } = {},
): PortsInputs {
  const { wall = plainSurface({ columns: 4, bands: [{ type: plainType(216), rows: 3 }] }), base = mode(60) } = rest;
  const surfaces = rest.surfaces ?? setOf(wall);
  return {
    signal: plainSignal(),
    processors: [plainProcessor()],
    breakouts: [plainBreakout()],
    panels: [plainPanel(216)],
    surfaces,
    picture: computePicture({ picture: { base, bySurface: [], alsoServe: [] }, surfaces }),
    ...rest,
  };
}
