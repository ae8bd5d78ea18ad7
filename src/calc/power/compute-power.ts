import type { Distro } from '../../plan/distro';
import type { Power } from '../../plan/power';
import { type CircuitNumbers, holdCircuits, numberCircuits } from '../names/hold-circuits';
import type { LocatedChain } from '../names/locate-names';
import type { PanelPower } from '../panels/panel-views';
import type { SurfaceSet } from '../surfaces/surface-table';
import { balanceLegs } from './balance-legs';
import { noBranch } from './branch-current';
import { branchLoads } from './branch-loads';
import type { BranchLoads } from './hang-distros';
import { legLoads } from './leg-loads';
import { type LegScheme, legScheme } from './leg-scheme';
import { loadPoints } from './load-points';
import type { PanelCurrent } from './panel-current';
import { type LaidCircuits, planCircuits } from './plan-circuits';
import type { Circuit, DistroLoad, PowerLoad, PowerResults } from './power-result';
import { serviceLimitA } from './service-limit';
import { signalCurrent } from './signal-current';
import { surfaceCurrents } from './surface-currents';
import { surfaceLoad } from './surface-load';
import { typicalWatts } from './typical-watts';

export interface PowerInputs {
  readonly power: Power;
  readonly distros: readonly Distro[];
  readonly panels: readonly PanelPower[];
  readonly surfaces: SurfaceSet;
  /** Processors, breakouts and nodes; they load the legs only where the plan feeds them from the same service. */
  readonly signalLoadW: number;
  /** Circuits whose names are held; null or left out: names follow from the circuits alone. */
  readonly held?: readonly LocatedChain[] | null;
}

interface Fed {
  readonly circuits: readonly Circuit[];
  readonly distros: readonly DistroLoad[];
  /** Branch loads of each distro. */
  readonly byDistro: readonly BranchLoads[];
}

/** Names the circuits, puts each on a leg or pair, and adds up every distro. */
function feed(
  laid: LaidCircuits,
  numbers: CircuitNumbers,
  scheme: LegScheme,
  distro: Distro | null,
  usableShare: number,
): Fed {
  const circuits: Circuit[] = [];
  const distros: DistroLoad[] = [];
  const byDistro: BranchLoads[] = [];
  let stageA = scheme.branches.map(() => 0);
  let start = 0;
  laid.distroStarts.forEach((from, d) => {
    const number = numbers.distros[d]!;
    const own = laid.circuits.slice(from, laid.distroStarts[d + 1] ?? laid.circuits.length);
    // By their numbers, so that a circuit that keeps its name stays on its leg when others come beside it.
    const byNumber = own.map((_, i) => i).sort((a, b) => numbers.circuits[from + a]! - numbers.circuits[from + b]!);
    const balanced = balanceLegs(
      byNumber.map((i) => own[i]!.branch),
      stageA,
    );
    const { byBranch } = balanced;
    const branchOf = new Uint8Array(own.length);
    byNumber.forEach((i, place) => {
      branchOf[i] = balanced.branchOf[place]!;
    });
    own.forEach((circuit, i) => {
      const entry = circuit.panels[0]!;
      const type = circuit.surface.types[circuit.surface.type[entry]!]!;
      const isWall = circuit.surface.kind === 'wall';
      circuits.push({
        name: `D${number}-${numbers.circuits[from + i]}`,
        distro: number,
        surfaceId: circuit.surface.surfaceId,
        leg: scheme.branches[branchOf[i]!]!,
        start,
        count: circuit.panels.length,
        watts: circuit.watts,
        currentA: circuit.currentA,
        limitA: circuit.limitA,
        entryHeightMm: circuit.surface.zMm[entry]! - (isWall ? type.heightMm / 2 : 0),
      });
      start += circuit.panels.length;
    });
    stageA = stageA.map((a, k) => own.reduce((sum, c, i) => (branchOf[i] === k ? sum + c.currentA : sum), a));
    if (distro !== null) {
      const legs = legLoads(scheme, byBranch, distro.legA * usableShare, noBranch);
      distros.push({ number, distroId: distro.id, circuits: own.length, legs });
      byDistro.push(byBranch);
    }
  });
  return { circuits, distros, byDistro };
}

function orderOf(laid: LaidCircuits, total: number): Pick<PowerResults, 'order' | 'circuitOf'> {
  const order = new Uint32Array(total);
  const circuitOf = new Int32Array(total).fill(-1);
  let next = 0;
  laid.circuits.forEach((circuit, c) => {
    for (const panel of circuit.panels) {
      order[next++] = circuit.offset + panel;
      circuitOf[circuit.offset + panel] = c;
    }
  });
  return { order, circuitOf };
}

function panelsACircuit(currents: readonly PanelCurrent[]): PowerResults['panelsACircuit'] {
  const byId = new Map(currents.map((current) => [current.panelId, current]));
  return [...byId.values()].map(({ panelId, panels, currentA }) => ({ panelId, panels, currentA }));
}

/**
 * Circuits, distros, legs and loads. Currents are those of full white at full brightness and the lowest voltage of the supply's
 * range; a circuit's current is the plain sum of its panels', leg and neutral currents are sums of phasors. A panel that the
 * catalogue does not have draws nothing, and the worst leg and neutral are then null.
 */
export function computePower(inputs: PowerInputs): PowerResults {
  const { power, distros, panels, surfaces, signalLoadW, held = null } = inputs;
  const scheme = legScheme(power);
  const currents = surfaceCurrents({ power, panels, surfaces });
  const distro = distros.find((d) => d.id === power.distroId) ?? null;
  const laid = planCircuits(surfaces, currents, scheme, distro, power.circuit.usableShare);
  const most = distro?.circuits ?? null;
  const numbers = held === null ? numberCircuits(laid) : holdCircuits(laid, held, surfaces.total, most);
  const fed = feed(laid, numbers, scheme, distro, power.circuit.usableShare);
  const signal = power.includesSignal ? signalCurrent(power.supply, signalLoadW) : noBranch;
  const { order, circuitOf } = orderOf(laid, surfaces.total);
  const byBranch = branchLoads(surfaces, currents, scheme, fed.circuits, circuitOf);
  const legs = legLoads(scheme, byBranch, serviceLimitA(power), signal);
  const typicalBranch = branchLoads(
    surfaces,
    surfaceCurrents({ power, panels, surfaces }, typicalWatts(power)),
    scheme,
    fed.circuits,
    circuitOf,
  );
  const isKnown = currents.flat().every((current) => current.known);
  const loads: readonly PowerLoad[] = surfaces.surfaces.map((surface) => surfaceLoad(surface, panels, power));
  const total = (watts: (load: PowerLoad) => number) => loads.reduce((sum, load) => sum + watts(load), signalLoadW);
  return {
    circuits: fed.circuits,
    order,
    circuitOf,
    distros: fed.distros,
    points: loadPoints(power, scheme, numbers.distros, fed.byDistro, signal),
    legs,
    typicalLegs: legLoads(scheme, typicalBranch, serviceLimitA(power), signal),
    worstLegA: isKnown ? Math.max(...legs.filter((l) => l.leg !== 'N').map((l) => l.currentA)) : null,
    neutralA: isKnown ? (legs.find((l) => l.leg === 'N')?.currentA ?? null) : null,
    loads,
    signalW: signalLoadW,
    maxW: total((load) => load.fullWhiteW),
    typicalW: total((load) => load.typicalW),
    blackW: total((load) => load.blackW),
    panelsACircuit: panelsACircuit(currents.flat()),
  };
}
