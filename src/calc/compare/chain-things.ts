import { counted } from '../../units/counted';
import type { PowerResults } from '../power/power-result';
import type { RunsResults } from '../runs/run-result';
import type { SurfaceSet } from '../surfaces/surface-table';
import { chainWords } from './chain-words';
import type { ThingList } from './thing';

interface NamedChain {
  readonly name: string;
  readonly start: number;
  readonly count: number;
  readonly detail: string;
}

/** Runs by their port: content is which panels in which order, detail the port that the last goes back to. */
export function runThings(
  { runs, order }: Pick<RunsResults, 'runs' | 'order'>,
  surfaces: SurfaceSet,
  marks: readonly string[],
): ThingList {
  const chains = runs.map(({ port, start, count, returnPort }) => {
    return { name: port, start, count, detail: returnPort === null ? '' : `returns to ${returnPort}` };
  });
  return chainThings(chains, order, surfaces, marks);
}

/** Circuits: content is which panels in which order, detail the leg. */
export function circuitThings(
  { circuits, order }: Pick<PowerResults, 'circuits' | 'order'>,
  surfaces: SurfaceSet,
  marks: readonly string[],
): ThingList {
  const chains = circuits.map(({ name, leg, start, count }) => ({ name, start, count, detail: `on ${leg}` }));
  return chainThings(chains, order, surfaces, marks);
}

function chainThings(
  chains: readonly NamedChain[],
  order: Uint32Array,
  surfaces: SurfaceSet,
  marks: readonly string[],
): ThingList {
  const panelsOf = ({ start, count }: NamedChain) => order.subarray(start, start + count);
  return {
    things: chains.map((chain) => {
      const content = Array.from(panelsOf(chain), (panel) => marks[panel]).join(' ');
      return { name: chain.name, content, detail: chain.detail };
    }),
    sayContent: (index) => {
      const chain = chains[index]!;
      return [`${counted(chain.count, 'panel')}: ${chainWords(surfaces, panelsOf(chain))}`];
    },
    sayDetail: (index) => (chains[index]!.detail === '' ? [] : [chains[index]!.detail]),
  };
}
