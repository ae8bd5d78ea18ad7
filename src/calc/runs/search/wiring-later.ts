import type { WayOfWiring } from '../../../plan/hand-change';
import type { WiringMeasures, WiringRuns, ZoneWiring } from './zone-wiring';

/**
 * A wiring that is measured and keeps how its runs are laid out, to lay them out only when they are asked for: of some hundred
 * ways that are compared one is used.
 */
export class WiringLater implements ZoneWiring {
  readonly way: WayOfWiring;
  readonly tooLarge: Int32Array;
  readonly ports: number;
  readonly fewestPanels: number;
  readonly mostPanels: number;
  readonly fullestPixels: number;
  readonly fullestShare: number | null;
  readonly entriesOutOfReach: number;
  readonly highestEntryMm: number | null;
  readonly figures: number;
  readonly figureCodes: readonly number[];
  readonly cableMm: number;
  private readonly layOut: () => WiringRuns;
  private runs: WiringRuns | null = null;

  constructor(way: WayOfWiring, tooLarge: Int32Array, measures: WiringMeasures, layOut: () => WiringRuns) {
    this.way = way;
    this.tooLarge = tooLarge;
    this.ports = measures.ports;
    this.fewestPanels = measures.fewestPanels;
    this.mostPanels = measures.mostPanels;
    this.fullestPixels = measures.fullestPixels;
    this.fullestShare = measures.fullestShare;
    this.entriesOutOfReach = measures.entriesOutOfReach;
    this.highestEntryMm = measures.highestEntryMm;
    this.figures = measures.figures;
    this.figureCodes = measures.figureCodes;
    this.cableMm = measures.cableMm;
    this.layOut = layOut;
  }

  get order(): Int32Array {
    return this.laidOut().order;
  }

  get start(): Int32Array {
    return this.laidOut().start;
  }

  get pixels(): Float64Array {
    return this.laidOut().pixels;
  }

  private laidOut(): WiringRuns {
    this.runs ??= this.layOut();
    return this.runs;
  }
}
