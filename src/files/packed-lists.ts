import type { HeldNames } from '../plan/held-names';
import type { Plan } from '../plan/plan';
import type { Anchor } from '../plan/primitives';
import { type PackedColumn, packColumn, unpackColumn } from './packed-column';

type Chains = HeldNames['ports'];
type Wiring = NonNullable<Plan['existingWiring']>;

/** A plan with its long lists in columns: names that are held, and a wiring that exists. */
export interface PackedLists {
  readonly names: readonly (readonly PackedColumn[])[] | null;
  readonly existingWiring: readonly [source: string, ...columns: PackedColumn[]] | null;
}

export function packLists({ names, existingWiring }: Pick<Plan, 'names' | 'existingWiring'>): PackedLists {
  return {
    names:
      names === null
        ? null
        : [
            [
              packColumn(names.processors.map(({ number }) => String(number))),
              packColumn(names.processors.map(({ at }) => writeAnchor(at))),
            ],
            packChains(names.ports),
            packChains(names.circuits),
          ],
    existingWiring:
      existingWiring === null
        ? null
        : [
            existingWiring.source,
            packColumn(existingWiring.rows.map(({ panel }) => panel)),
            packColumn(existingWiring.rows.map(({ port }) => port)),
            packColumn(existingWiring.rows.map(({ place }) => String(place))),
          ],
  };
}

/** The lists as a plan has them; null where the columns are none, or do not go together. */
export function unpackLists({
  names,
  existingWiring,
}: {
  readonly names?: unknown;
  readonly existingWiring?: unknown;
}): {
  readonly names: unknown;
  readonly existingWiring: unknown;
} | null {
  const [held, wiring] = [unpackNames(names), unpackWiring(existingWiring)];
  return held === undefined || wiring === undefined ? null : { names: held, existingWiring: wiring };
}

function packChains(chains: Chains): readonly PackedColumn[] {
  return [
    packColumn(chains.map(({ name }) => name)),
    packColumn(chains.map(({ first }) => writeAnchor(first))),
    packColumn(chains.map(({ last }) => writeAnchor(last))),
  ];
}

/** Undefined where it is no list of names. */
function unpackNames(packed: unknown): HeldNames | null | undefined {
  if (packed === null) return null;
  if (!Array.isArray(packed) || packed.length !== 3) return undefined;
  const [numbers, ports, circuits] = packed.map(unpackTable);
  if (!numbers || !ports || !circuits) return undefined;
  return {
    processors: numbers.map(([number, at]) => ({ number: Number(number), at: readAnchor(at) })),
    ports: ports.map(chainOf),
    circuits: circuits.map(chainOf),
  };
}

function unpackWiring(packed: unknown): Wiring | null | undefined {
  if (packed === null) return null;
  if (!Array.isArray(packed)) return undefined;
  const [source, ...columns] = packed as readonly unknown[];
  const rows = unpackTable(columns);
  if (typeof source !== 'string' || rows === null) return undefined;
  return { source, rows: rows.map(([panel = '', port = '', place]) => ({ panel, port, place: Number(place) })) };
}

/** Rows out of columns of one length. */
function unpackTable(packed: unknown): readonly (readonly string[])[] | null {
  if (!Array.isArray(packed)) return null;
  const columns = packed.map(unpackColumn);
  const [first] = columns;
  if (!first || columns.some((column) => column?.length !== first.length)) return null;
  return first.map((_, row) => columns.map((column) => column![row]!));
}

function chainOf([name = '', first, last]: readonly string[]): Chains[number] {
  return { name, first: readAnchor(first), last: readAnchor(last) };
}

/** 'wall left 3 -2': ids have no blanks. */
function writeAnchor({ surfaceId, segmentId, column, row }: Anchor): string {
  return `${surfaceId} ${segmentId ?? ''} ${column} ${row}`;
}

/** What is read is judged with the rest of the plan. */
function readAnchor(text = ''): Anchor {
  const [surfaceId = '', segmentId = '', column, row] = text.split(' ');
  return { surfaceId, segmentId: segmentId === '' ? null : segmentId, column: Number(column), row: Number(row) };
}
