import { panelByName } from '../runs/existing/panel-by-name';
import type { Culprit } from './culprit';
import type { ChainSet, FaultModel } from './fault-model';

/**
 * The part that a text names, as `culpritName` writes it or shorter: 'distro 4', 'N3', 'node 3', 'breakout 3B', '3B',
 * 'leg L2', 'jumper A C38 R9 to A C38 R10', 'port 3B-04', '3B-04', 'D4-11', 'A C38 R9'. Case and spacing do not matter.
 * Null where nothing has that name.
 */
export function findCulprit(model: FaultModel, text: string): Culprit | null {
  const name = text.trim().toUpperCase().replace(/\s+/g, ' ');
  for (const { pattern, find } of forms) {
    const parts = pattern.exec(name);
    const found = parts === null ? null : find(model, parts[1] ?? '', parts[2] ?? '');
    if (found !== null && found.index >= 0) return found;
  }
  const panel = panelByName(model.surfaces, name);
  return panel < 0 ? null : { kind: 'panel', index: panel };
}

interface Form {
  readonly pattern: RegExp;
  readonly find: (model: FaultModel, first: string, second: string) => Culprit | null;
}

const outletOf = ({ outlets }: FaultModel, port: string) =>
  outlets.findIndex((outlet) => outlet.port.toUpperCase() === port);

const forms: readonly Form[] = [
  {
    pattern: /^POWER JUMPER (.+) TO (.+)$/,
    find: (model, from, to) => ({ kind: 'power-jumper', index: linkOf(model, model.power, from, to) }),
  },
  {
    pattern: /^JUMPER (.+) TO (.+)$/,
    find: (model, from, to) => ({ kind: 'jumper', index: linkOf(model, model.data, from, to) }),
  },
  { pattern: /^HOME RUN (.+)$/, find: (model, port) => ({ kind: 'home-run', index: outletOf(model, port) }) },
  { pattern: /^(?:PORT )?(\d+[A-Z]*-\d+)$/, find: (model, port) => ({ kind: 'port', index: outletOf(model, port) }) },
  { pattern: /^TRUNK (.+)$/, find: ({ breakouts }, tag) => ({ kind: 'trunk', index: breakouts.indexOf(tag) }) },
  {
    pattern: /^(?:BREAKOUT )?(\d+[A-Z]+)$/,
    find: ({ breakouts }, tag) => ({ kind: 'breakout', index: breakouts.indexOf(tag) }),
  },
  {
    pattern: /^PROCESSOR (\d+)$/,
    find: ({ processors }, number) => ({ kind: 'processor', index: processors.indexOf(Number(number)) }),
  },
  {
    pattern: /^(?:NODE N?|N)(\d+)$/,
    find: ({ nodes }, number) => ({ kind: 'node', index: nodes.indexOf(`N${Number(number)}`) }),
  },
  {
    pattern: /^(?:CIRCUIT )?(D\d+-\d+)$/,
    find: ({ circuits }, name) => ({ kind: 'circuit', index: circuits.indexOf(name) }),
  },
  {
    pattern: /^DISTRO D?(\d+)$/,
    find: ({ distros }, number) => ({ kind: 'distro', index: distros.indexOf(Number(number)) }),
  },
  {
    pattern: /^(?:LEG )?L([123]) OF DISTRO (\d+)$/,
    find: ({ distros }, leg, number) => {
      const distro = distros.indexOf(Number(number));
      return distro < 0 ? null : { kind: 'distro-leg', index: 3 * distro + Number(leg) - 1 };
    },
  },
  {
    pattern: /^(?:LEG )?L([123])$/,
    find: ({ circuits }, leg) => (circuits.length === 0 ? null : { kind: 'leg', index: Number(leg) - 1 }),
  },
];

/** Place in the order of a chain of the second of two panels that follow each other on it; -1 where they do not. */
function linkOf({ surfaces }: FaultModel, { order, at, chainOf, start }: ChainSet, from: string, to: string): number {
  const panel = panelByName(surfaces, to);
  const chain = chainOf[panel] ?? -1;
  if (chain < 0 || at[panel] === start[chain]) return -1;
  return order[at[panel]! - 1] === panelByName(surfaces, from) ? at[panel]! : -1;
}
