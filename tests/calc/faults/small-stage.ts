import type { FaultInputs, FaultRun } from '../../../src/calc/faults/fault-model';
import { wallOf } from '../../arbitraries/wall-fixture';

export interface SmallStage {
  /** Ports of the returns, by run: by default none. */
  readonly returnPorts?: readonly (string | null)[];
  readonly passesUnpowered?: boolean;
  /** Leg of each circuit. */
  readonly legs?: readonly ('L1' | 'L2' | 'L3' | 'L1-L2' | 'L2-L3' | 'L3-L1')[];
}

/**
 * A flat wall of 4 columns and 3 rows, panels 0 to 11 by column and row from the floor.
 * Runs, up each column: 1A-01: 0 1 2; 1A-02: 3 4 5; 1B-01: 6 7 8; 2A-01: 9 10 11. Node N1 feeds processors 1 and 2.
 * Circuits, along the rows: D1-1 row 1: 0 3 6 9; D1-2 row 2: 1 4 7 10; D2-1 row 3: 2 5 8 11.
 */
export function smallStage({
  returnPorts = [],
  passesUnpowered = false,
  legs = ['L1', 'L2', 'L3'],
}: SmallStage = {}): FaultInputs {
  const { table } = wallOf({ columns: 4, rows: 3, jointDeg: 0 });
  const runs = ['1A-01', '1A-02', '1B-01', '2A-01'].map(
    (port, run): FaultRun => ({
      port,
      zone: port.startsWith('1') ? 0 : 1,
      start: run * 3,
      count: 3,
      returnPort: returnPorts[run] ?? null,
    }),
  );
  return {
    surfaces: { surfaces: [table], offsets: [0], total: 12 },
    zones: [{ processor: 1 }, { processor: 2 }],
    runs: {
      runs,
      order: Uint32Array.from({ length: 12 }, (_, i) => i),
      runOf: Int32Array.from({ length: 12 }, (_, i) => Math.floor(i / 3)),
    },
    nodes: { nodes: [{ name: 'N1' }], nodeOfZone: [0, 0] },
    power: {
      circuits: ['D1-1', 'D1-2', 'D2-1'].map((name, circuit) => ({
        name,
        distro: Number(name[1]),
        leg: legs[circuit]!,
        start: circuit * 4,
        count: 4,
      })),
      order: Uint32Array.of(0, 3, 6, 9, 1, 4, 7, 10, 2, 5, 8, 11),
      circuitOf: Int32Array.from({ length: 12 }, (_, i) => i % 3),
    },
    passes: new Uint8Array(12).fill(passesUnpowered ? 1 : 0),
  };
}
