import type { Mode } from '../../plan/picture';
import type { Processor } from '../../plan/processor';
import type { Signal, SurfaceSignal } from '../../plan/signal';
import type { TimingChoice } from '../links/time-canvas';
import { portsARun } from '../ports/outlets';
import type { SurfacePorts } from '../ports/port-result';
import { matchZones } from '../runs/match-zones';
import { runLimits } from '../runs/run-limits';
import { zoneGrid } from '../runs/zone-grid';
import type { SolveZone, ZoneAnswer } from '../runs/zone-solver';
import type { SurfaceTable } from '../surfaces/surface-table';
import { brokenLimit } from './broken-limit';
import { measureStrip, rowEdges, type Strip } from './measure-strip';
import { splitRows } from './split-rows';
import { type ZoneCut, type ZoneRectangle, zoneCuts, zoneRectangles } from './zone-cuts';

export interface CutInputs {
  readonly table: SurfaceTable;
  readonly signal: Pick<Signal, 'reachMm' | 'priority' | 'ceilingEntry'>;
  readonly own: SurfaceSignal | null;
  readonly processor: Processor;
  readonly ports: SurfacePorts;
  readonly served: readonly Mode[];
  readonly choice: TimingChoice;
  readonly solve: SolveZone;
}

/** A zone and the runs of its wiring. */
export interface WiredZone extends ZoneRectangle {
  readonly runs: number;
}

/** A surface cut into zones that a processor drives, beside the other widths that would do. */
export interface SurfaceCut {
  readonly cut: ZoneCut;
  readonly zones: readonly WiredZone[];
  /** Widths whose canvas fits and whose ports may suffice, widest first; `cut` is one of them. */
  readonly widths: readonly ZoneCut[];
  /** False where even the narrowest zone needs more ports than a processor has. */
  readonly portsSuffice: boolean;
}

/** Numbers of zones up that are weighed against each other on a ceiling, where nobody must reach. */
const upsTogether = 4;

/** A surface with so many zones up: its strips, and the widths whose canvas fits, narrowest first. */
interface Layer {
  readonly strips: readonly Strip[];
  readonly fitting: readonly ZoneCut[];
}

/**
 * Cuts a surface into equal zones: as few up as fit, then the fewest processors, then the fewest blank columns. On a ceiling,
 * wired from above, fewer processors come before fewer zones up. Null where not even one panel is a zone.
 */
export function cutSurface(inputs: CutInputs): SurfaceCut | null {
  const { table, own } = inputs;
  const edges = rowEdges(table);
  const asked = own?.zonesUp ?? null;
  const last = asked ?? table.rows;
  const together = table.kind === 'ceiling' ? upsTogether : 1;
  let breaksLeast: Layer | null = null;
  for (let up = asked ?? leastUp(inputs); up <= last; up += together) {
    const layers: Layer[] = [];
    for (let next = up; next < up + together && next <= last; next++) {
      const starts = splitRows(edges, next);
      if (starts === null) continue;
      const strips = starts.slice(0, -1).map((from, strip) => measureStrip(table, from, starts[strip + 1]!));
      const fitting = fittingCuts(inputs, strips);
      if (fitting.length > 0) layers.push({ strips, fitting });
    }
    const found = firstThatWires(inputs, layers);
    if (found !== null) return found;
    breaksLeast ??= layers[0] ?? null;
  }
  return breaksLeast === null ? null : narrowestCut(inputs, breaksLeast);
}

function fittingCuts({ processor, ports, served, choice, own }: CutInputs, strips: readonly Strip[]): ZoneCut[] {
  return zoneCuts(strips, ports, own?.zoneColumnsMost ?? Number.POSITIVE_INFINITY).filter(
    ({ canvas, processors }) => processors > 0 && brokenLimit(canvas, processor, ports, served, choice) === null,
  );
}

/** The best cut, by merit, whose zones all have ports enough when they are wired. */
function firstThatWires(inputs: CutInputs, layers: readonly Layer[]): SurfaceCut | null {
  const { ports } = inputs;
  const mayDo = ({ portsAtLeast }: ZoneCut) => portsAtLeast <= ports.runsAProcessor;
  const byMerit = layers
    .flatMap((layer) => layer.fitting.filter(mayDo).map((cut) => ({ layer, cut })))
    .sort(
      ({ cut: a }, { cut: b }) =>
        a.processors - b.processors || a.up - b.up || a.blankColumns - b.blankColumns || a.columns - b.columns,
    );
  const failed = new Set<ZoneCut>();
  for (const { layer, cut } of byMerit) {
    const zones = wireAll(inputs, zoneRectangles(layer.strips, cut.columns, ports), ports.runsAProcessor);
    if (zones !== null) {
      const widths = layer.fitting.filter((width) => mayDo(width) && !failed.has(width)).reverse();
      return { cut, zones, widths, portsSuffice: true };
    }
    failed.add(cut);
  }
  return null;
}

function narrowestCut(inputs: CutInputs, { strips, fitting }: Layer): SurfaceCut {
  const cut = fitting[0]!;
  const zones = wireAll(inputs, zoneRectangles(strips, cut.columns, inputs.ports), Number.POSITIVE_INFINITY)!;
  return { cut, zones, widths: [cut], portsSuffice: false };
}

/** Zones up below which not even one column of the narrowest panels is a canvas that the processor drives. */
function leastUp({ table, processor, ports, served, choice }: CutInputs): number {
  const width = Math.min(...table.types.map(({ pixelsWide }) => pixelsWide));
  const fits = (height: number) => brokenLimit({ width, height }, processor, ports, served, choice) === null;
  if (fits(table.canvasHeight)) return 1;
  let low = 0;
  let high = table.canvasHeight;
  while (high - low > 1) {
    const middle = low + Math.floor((high - low) / 2);
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return low === 0 ? table.rows + 1 : Math.ceil(table.canvasHeight / low);
}

/** Zones with the ports that each one's wiring takes; null as soon as one needs more than `most`. Those likely to fail go first. */
function wireAll(inputs: CutInputs, zones: readonly ZoneRectangle[], most: number): WiredZone[] | null {
  const { table, signal, ports, solve } = inputs;
  const limits = runLimits(table.kind, ports, signal);
  const terms = {
    priority: signal.priority,
    portsThere: ports.runsAProcessor,
    portsABreakout: ports.portsABreakout / portsARun(ports),
  };
  const answers = new Map<ZoneRectangle, ZoneAnswer>();
  for (const zone of [...zones].sort((a, b) => b.portsAtLeast - a.portsAtLeast)) {
    const answer = solve(zoneGrid(table, zone, signal.ceilingEntry).grid, limits, terms);
    if (answer.chosen.ports > most) return null;
    answers.set(zone, answer);
  }
  const wirings = matchZones(zones.map((zone) => answers.get(zone)!));
  return zones.map((zone, i) => ({ ...zone, runs: wirings[i]!.ports }));
}
