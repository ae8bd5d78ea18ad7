import type { Evaluation } from '../../calc/evaluation';
import { panelAt } from '../../calc/surfaces/panel-at';
import { faultModelOf, type Wired } from '../state/fault-model-of';
import type { Selection } from '../state/selection';
import type { Format } from '../widgets/use-format';

/** One station on the way from the node to a panel and to its circuit. */
export interface WayStation {
  readonly title: string;
  readonly detail: string;
  /** Name of what is picked by a click; null where there is nothing to pick. */
  readonly picks: string | null;
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

type Looked = Wired & Pick<Evaluation, 'ports'>;

function nodeStation(evaluation: Looked, zone: number): WayStation[] {
  const { nodes, nodeOfZone } = evaluation.nodes.results;
  const node = nodes[nodeOfZone[zone] ?? -1];
  if (!node) return [];
  const canvas = `${node.canvasWidth} × ${node.canvasHeight}`;
  return [{ title: `Node ${node.name}`, detail: canvas, picks: `node ${node.name}` }];
}

function processorStation({ zones, ports }: Looked, index: number, format: Format): WayStation[] {
  const zone = zones.results.zones[index];
  if (!zone) return [];
  const { processor, surfaceId } = zone;
  const driven = ports.results.surfaces.find((one) => one.surfaceId === surfaceId)?.processorPixels ?? null;
  return [
    { title: `Processor ${processor}`, detail: `drives ${format(driven, 'px')}`, picks: `processor ${processor}` },
  ];
}

function breakoutStation(evaluation: Looked, port: string): WayStation[] {
  const tag = /^\d+[A-Z]+(?=-)/.exec(port)?.[0];
  if (tag === undefined) return [];
  const used = faultModelOf(evaluation).outlets.filter((outlet) => outlet.port.startsWith(`${tag}-`)).length;
  return [{ title: `Breakout ${tag}`, detail: `${used} ports in use`, picks: `breakout ${tag}` }];
}

/** Node, processor, breakout and port of a run, and the port that it comes back to. */
function runStations(evaluation: Looked, index: number, format: Format): WayStation[] {
  const run = evaluation.runs.results.runs[index];
  if (!run) return [{ title: 'No run', detail: 'on no port', picks: null }];
  const share = format(run.share, 'share');
  return [
    ...nodeStation(evaluation, run.zone),
    ...processorStation(evaluation, run.zone, format),
    ...breakoutStation(evaluation, run.port),
    { title: `Port ${run.port}`, detail: `${run.count} panels, ${share}`, picks: run.port },
  ];
}

function returnStation(evaluation: Looked, index: number): WayStation[] {
  const outlet = faultModelOf(evaluation).outlets[faultModelOf(evaluation).returnOf[index] ?? -1];
  return outlet ? [{ title: `Back to ${outlet.port}`, detail: 'return', picks: `port ${outlet.port}` }] : [];
}

function signalStations(evaluation: Looked, panel: number, format: Format): WayStation[] {
  const { runs, runOf, placeOf } = evaluation.runs.results;
  const index = runOf[panel] ?? -1;
  const run = runs[index];
  const place = run && {
    title: `${ordinal(placeOf[panel] ?? 0)} of ${run.count}`,
    detail: run.inReach ? 'entry in reach' : 'entry too high',
    picks: null,
  };
  return [...runStations(evaluation, index, format), ...(place ? [place] : []), ...returnStation(evaluation, index)];
}

function supplyStations({ power }: Looked, index: number, format: Format): WayStation[] {
  const circuit = power.results.circuits[index];
  if (!circuit) return [{ title: 'No circuit', detail: 'on no distro', picks: null }];
  const { name, count, currentA, leg, distro } = circuit;
  const isPair = leg.includes('-');
  return [
    { title: `Circuit ${name}`, detail: `${count} panels, ${format(currentA, 'A')}`, picks: name },
    { title: leg, detail: isPair ? 'two legs' : 'leg', picks: isPair ? null : `leg ${leg} of distro ${distro}` },
    { title: `Distro ${distro}`, detail: 'feeds it', picks: `distro ${distro}` },
  ];
}

/** The whole way of one panel: node, processor, breakout, port, place on its run, circuit, leg, distro. Null where there is no such panel. */
export function traceWay(evaluation: Looked, index: number, format: Format): PanelWay | null {
  const panel = panelAt(evaluation.surfaces, index);
  if (!panel) return null;
  const local = index - (evaluation.surfaces.offsets[evaluation.surfaces.surfaces.indexOf(panel.surface)] ?? 0);
  const { canvasX, canvasY } = panel.surface;
  const type = `${panel.type.name}, at ${canvasX[local]}, ${canvasY[local]} of its canvas`;
  const circuit = evaluation.power.results.circuitOf[index] ?? -1;
  const stations = [...signalStations(evaluation, index, format), ...supplyStations(evaluation, circuit, format)];
  return { name: panel.name, type, stations };
}

/** Stations on the way of what is picked, as far as it has one: of a part of a run from its node, of a part of a circuit to its distro. */
export function traceSelection(evaluation: Looked, selection: Selection, format: Format): readonly WayStation[] {
  const { data, power, outlets, breakouts } = faultModelOf(evaluation);
  const { index } = 'index' in selection ? selection : { index: -1 };
  if (selection.kind === 'panel') return traceWay(evaluation, index, format)?.stations ?? [];
  if (selection.kind === 'run') return [...runStations(evaluation, index, format), ...returnStation(evaluation, index)];
  if (selection.kind === 'zone')
    return [...nodeStation(evaluation, index), ...processorStation(evaluation, index, format)];
  if (selection.kind === 'circuit') return supplyStations(evaluation, index, format);
  if (selection.kind === 'column') return [];
  switch (selection.part) {
    case 'jumper':
      return signalStations(evaluation, data.order[index]!, format);
    case 'home-run':
    case 'port': {
      const run = outlets[index]!.run;
      return [...runStations(evaluation, run, format), ...returnStation(evaluation, run)];
    }
    case 'trunk':
    case 'breakout': {
      const outlet = outlets.find((one) => one.breakout === index)!;
      const processor = Number.parseInt(breakouts[index]!, 10);
      const zone = evaluation.zones.results.zones.findIndex((one) => one.processor === processor);
      return [
        ...nodeStation(evaluation, zone),
        ...processorStation(evaluation, zone, format),
        ...breakoutStation(evaluation, outlet.port),
      ];
    }
    case 'power-jumper':
      return supplyStations(evaluation, power.chainOf[power.order[index]!]!, format);
    case 'node':
      return nodeParts(evaluation, index, format);
    default:
      return [];
  }
}

/** A node and the processors that it feeds. */
function nodeParts(evaluation: Looked, index: number, format: Format): readonly WayStation[] {
  const zones = evaluation.nodes.results.nodeOfZone.flatMap((node, zone) => (node === index ? [zone] : []));
  const [first] = zones;
  if (first === undefined) return [];
  return [...nodeStation(evaluation, first), ...zones.flatMap((zone) => processorStation(evaluation, zone, format))];
}
