import type { Evaluation } from '../../calc/evaluation';
import { panelAt } from '../../calc/surfaces/panel-at';
import type { Format } from '../widgets/use-format';

/** One station on the way from the node to a panel and to its circuit. */
export interface WayStation {
  readonly title: string;
  readonly detail: string;
  /** What is picked by a click; null where there is nothing to pick. */
  readonly picks: { readonly kind: 'zone' | 'run' | 'circuit' | 'panel'; readonly name: string } | null;
}

export interface PanelWay {
  readonly name: string;
  readonly type: string;
  readonly stations: readonly WayStation[];
}

const ordinalRules = new Intl.PluralRules('en', { type: 'ordinal' });
const ordinalEnds: Readonly<Record<string, string>> = { one: 'st', two: 'nd', few: 'rd' };

export function ordinal(place: number): string {
  return `${place}${ordinalEnds[ordinalRules.select(place)] ?? 'th'}`;
}

type Looked = Pick<Evaluation, 'surfaces' | 'zones' | 'ports' | 'runs' | 'power'>;

function signalStations({ zones, ports, runs }: Looked, index: number, format: Format): WayStation[] {
  const { runs: all, runOf, placeOf } = runs.results;
  const run = all[runOf[index] ?? -1];
  if (!run) return [{ title: 'No run', detail: 'on no port', picks: null }];
  const zone = zones.results.zones[run.zone];
  const stations: WayStation[] = [];
  if (zone) {
    const { processor, canvasWidth, canvasHeight, breakouts } = zone;
    const driven = ports.results.surfaces.find((one) => one.surfaceId === run.surfaceId)?.processorPixels ?? null;
    const picks = { kind: 'zone', name: `processor ${processor}` } as const;
    stations.push({ title: `Node ${processor}`, detail: `${canvasWidth} × ${canvasHeight}`, picks: null });
    stations.push({ title: `Processor ${processor}`, detail: `drives ${format(driven, 'px')}`, picks });
    const letter = /^\d+([A-Z])-/.exec(run.port)?.[1];
    if (letter !== undefined) {
      const tag = `${processor}${letter}`;
      const used = all.filter((one) => one.port.startsWith(`${tag}-`)).length;
      stations.push({ title: `Breakout ${tag}`, detail: `${used} ports, one of ${breakouts}`, picks: null });
    }
  }
  stations.push({
    title: `Port ${run.port}`,
    detail: `${run.count} panels, ${format(run.share, 'share')}`,
    picks: { kind: 'run', name: run.port },
  });
  stations.push({
    title: `${ordinal(placeOf[index] ?? 0)} of ${run.count}`,
    detail: run.inReach ? 'entry in reach' : 'entry too high',
    picks: null,
  });
  return stations;
}

function supplyStations({ power }: Looked, index: number, format: Format): WayStation[] {
  const circuit = power.results.circuits[power.results.circuitOf[index] ?? -1];
  if (!circuit) return [{ title: 'No circuit', detail: 'on no distro', picks: null }];
  return [
    {
      title: `Circuit ${circuit.name}`,
      detail: `${circuit.count} panels, ${format(circuit.currentA, 'A')}`,
      picks: { kind: 'circuit', name: circuit.name },
    },
    { title: circuit.leg, detail: `distro ${circuit.distro}`, picks: null },
  ];
}

/** The whole way of one panel: node, processor, breakout, port, place on its run, circuit, leg. Null where there is no such panel. */
export function traceWay(evaluation: Looked, index: number, format: Format): PanelWay | null {
  const panel = panelAt(evaluation.surfaces, index);
  if (!panel) return null;
  const local = index - (evaluation.surfaces.offsets[evaluation.surfaces.surfaces.indexOf(panel.surface)] ?? 0);
  const { canvasX, canvasY } = panel.surface;
  const type = `${panel.type.name}, at ${canvasX[local]}, ${canvasY[local]} of its canvas`;
  const stations = [...signalStations(evaluation, index, format), ...supplyStations(evaluation, index, format)];
  return { name: panel.name, type, stations };
}
