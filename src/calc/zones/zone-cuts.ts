import type { Canvas } from '../links/canvas';
import type { SurfacePorts } from '../ports/port-result';
import type { Strip } from './measure-strip';

/** A rectangle of a surface with panels in it; columns and rows from 1. */
export interface ZoneRectangle {
  readonly firstColumn: number;
  readonly columns: number;
  readonly firstRow: number;
  readonly rows: number;
  readonly panels: number;
  /** Ports it needs at the least, whatever the wiring: pixels, and panels, over what a port takes. */
  readonly portsAtLeast: number;
}

/** A surface cut into zones of one width. */
export interface ZoneCut {
  readonly columns: number;
  readonly up: number;
  readonly processors: number;
  /** The same for every zone: as wide as the widest and as high as the highest of them. */
  readonly canvas: Canvas;
  readonly blankColumns: number;
  readonly portsAtLeast: number;
}

/** Every width of zone from one column to `most`, narrowest first: what it comes to, without the zones themselves. */
export function zoneCuts(strips: readonly Strip[], ports: SurfacePorts, most: number): ZoneCut[] {
  const columns = strips[0]!.panelsBefore.length - 1;
  const height = Math.max(...strips.map(({ canvasHeight }) => canvasHeight));
  const cuts: ZoneCut[] = [];
  for (let wide = 1; wide <= Math.min(most, columns); wide++) {
    let processors = 0;
    let width = 0;
    let portsAtLeast = 0;
    for (const strip of strips) {
      for (let from = 0; from < columns; from += wide) {
        const to = Math.min(from + wide, columns);
        if (strip.panelsBefore[to] === strip.panelsBefore[from]) continue;
        processors++;
        width = Math.max(width, strip.rightBefore[to]! - strip.leftFrom[from]!);
        portsAtLeast = Math.max(portsAtLeast, leastPortsOf(strip, from, to, ports));
      }
    }
    const across = Math.ceil(columns / wide);
    cuts.push({
      columns: wide,
      up: strips.length,
      processors,
      canvas: { width, height },
      blankColumns: across * wide - columns,
      portsAtLeast,
    });
  }
  return cuts;
}

/** The zones of one width with panels in them: the lowest strip first, each from column 1 up. */
export function zoneRectangles(strips: readonly Strip[], wide: number, ports: SurfacePorts): ZoneRectangle[] {
  const columns = strips[0]!.panelsBefore.length - 1;
  const zones: ZoneRectangle[] = [];
  for (const strip of strips) {
    for (let from = 0; from < columns; from += wide) {
      const to = Math.min(from + wide, columns);
      const panels = strip.panelsBefore[to]! - strip.panelsBefore[from]!;
      if (panels === 0) continue;
      zones.push({
        firstColumn: from + 1,
        columns: to - from,
        firstRow: strip.firstRow + 1,
        rows: strip.rows,
        panels,
        portsAtLeast: leastPortsOf(strip, from, to, ports),
      });
    }
  }
  return zones;
}

function leastPortsOf(strip: Strip, from: number, to: number, ports: SurfacePorts): number {
  const panels = strip.panelsBefore[to]! - strip.panelsBefore[from]!;
  const pixels = strip.pixelsBefore[to]! - strip.pixelsBefore[from]!;
  // With one type the panels that fit a port decide; with several their pixels.
  const most = ports.byType.length === 1 ? ports.byType[0]!.panelsAPort : ports.panelsMost;
  if (most < 1 || ports.usablePixels < 1) return panels;
  return Math.max(Math.ceil(panels / most), Math.ceil(pixels / ports.usablePixels));
}
