import type { WayFigures } from '../../../calc/runs/run-result';
import { wayWords } from './way-words';

/** Size of the chart, and what its scales take of each side. */
export interface ChartFrame {
  readonly wide: number;
  readonly high: number;
  readonly frame: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
}

/** One way of wiring on the chart. */
export interface Mark {
  readonly key: string;
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly isChosen: boolean;
  readonly title: string;
}

interface Tick {
  readonly at: number;
  readonly value: number;
}

export interface Chart {
  readonly marks: readonly Mark[];
  /** Where the least possible number of ports stands. */
  readonly least: number;
  readonly across: readonly Tick[];
  readonly upwards: readonly Tick[];
}

const radiusOf = (figures: number) => Math.min(11, 3 + 1.4 * Math.sqrt(figures));

/** Places ways by ports and by the free share of their fullest port; both scales show their ends and the middle. */
export function placeMarks(ways: readonly WayFigures[], portsLeast: number, { wide, high, frame }: ChartFrame): Chart {
  const free = ways.map(({ fullestShare }) => 1 - fullestShare);
  const ports = [portsLeast, ...ways.map((way) => way.ports)];
  const x = scale(Math.min(...ports), Math.max(...ports), frame.left + 12, wide - frame.right - 12);
  const y = scale(Math.min(...free), Math.max(...free), high - frame.bottom - 12, frame.top + 12);
  return {
    // The way in use is painted last, so that no other covers it.
    marks: ways
      .map((way, i) => ({
        key: JSON.stringify(way.way),
        x: x(way.ports),
        y: y(free[i]!),
        radius: radiusOf(way.figures),
        isChosen: way.chosen,
        title: `${wayWords(way.way)}: ${way.ports} ports, ${Math.round(free[i]! * 100)} % free, ${way.figures} figures`,
      }))
      .sort((a, b) => Number(a.isChosen) - Number(b.isChosen)),
    least: x(portsLeast),
    across: ticks(Math.min(...ports), Math.max(...ports), x, Math.round),
    upwards: ticks(Math.min(...free), Math.max(...free), y, (share) => share),
  };
}

/** A straight scale; where everything is equal, the middle. */
function scale(least: number, most: number, from: number, to: number): (value: number) => number {
  return (value) => (most === least ? (from + to) / 2 : from + ((value - least) / (most - least)) * (to - from));
}

function ticks(least: number, most: number, at: (value: number) => number, rounded: (value: number) => number): Tick[] {
  const values = [...new Set([least, rounded((least + most) / 2), most])];
  return values.map((value) => ({ at: at(value), value }));
}
