import type { Run } from '../runs/run-result';
import type { ThingList } from './thing';

type Plugged = Pick<Run, 'port' | 'returnPort'>;

/** Trunks by processor and breakout ('3B'): content is which runs and returns come through it. None of direct ports. */
export function trunkThings(runs: readonly Plugged[], marks: readonly string[]): ThingList {
  const trunks = new Map<string, { readonly ends: string[]; readonly ports: string[] }>();
  const plug = (port: string, end: string) => {
    const [, name, number] = /^(\d+[A-Z]+)-(\d+)$/.exec(port) ?? [];
    if (name === undefined || number === undefined) return;
    const trunk = trunks.get(name) ?? { ends: [], ports: [] };
    trunks.set(name, trunk);
    trunk.ends.push(end);
    trunk.ports.push(number);
  };
  runs.forEach(({ port, returnPort }, run) => {
    plug(port, `to ${marks[run]}`);
    if (returnPort !== null) plug(returnPort, `from ${marks[run]}`);
  });
  const list = [...trunks].map(([name, { ends, ports }]) => ({ name, ends: ends.sort(), ports: ports.sort() }));
  return {
    things: list.map(({ name, ends }) => ({ name, content: ends.join(', '), detail: '' })),
    sayContent: (index) => [`ports ${list[index]!.ports.join(' ')}`],
    sayDetail: () => [],
  };
}
