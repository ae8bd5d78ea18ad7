import { counted } from '../../units/counted';
import { panelAt } from '../surfaces/panel-at';
import type { Culprit, CulpritKind } from './culprit';
import type { ChainSet, FaultModel } from './fault-model';

/** What a part is called: unique in a plan, and what finds it again ('jumper C4 R2 to C4 R3', 'home run 3B-04', 'leg L2 of distro 4'). */
export function culpritName(model: FaultModel, { kind, index }: Culprit): string {
  switch (kind) {
    case 'panel':
      return nameOf(model, index);
    case 'jumper':
      return `jumper ${endsOf(model, model.data, index).join(' to ')}`;
    case 'power-jumper':
      return `power jumper ${endsOf(model, model.power, index).join(' to ')}`;
    case 'home-run':
      return `home run ${model.outlets[index]!.port}`;
    case 'port':
      return `port ${model.outlets[index]!.port}`;
    case 'trunk':
      return `trunk ${model.breakouts[index]!}`;
    case 'breakout':
      return `breakout ${model.breakouts[index]!}`;
    case 'processor':
      return `processor ${model.processors[index]!}`;
    case 'node':
      return `node ${model.nodes[index]!}`;
    case 'circuit':
      return `circuit ${model.circuits[index]!}`;
    case 'distro':
      return `distro ${model.distros[index]!}`;
    case 'leg':
      return `leg L${index + 1}`;
    case 'distro-leg':
      return `leg L${(index % 3) + 1} of distro ${model.distros[Math.floor(index / 3)]!}`;
  }
}

/** Where a part is, in the words of a crew: between which panels, at which port, behind which box. */
export function whereIs(model: FaultModel, { kind, index }: Culprit): string {
  const { data, power, outlets } = model;
  switch (kind) {
    case 'panel': {
      const run = data.chainOf[index]!;
      if (run < 0) return 'on no run';
      const place = data.at[index]! - data.start[run]! + 1;
      return `place ${place} of ${data.count[run]} on port ${portOf(model, run)}`;
    }
    case 'jumper': {
      const run = data.chainOf[data.order[index]!]!;
      return `${placesOf(data, run, index)} on port ${portOf(model, run)}`;
    }
    case 'power-jumper': {
      const circuit = power.chainOf[power.order[index]!]!;
      return `${placesOf(power, circuit, index)} on circuit ${model.circuits[circuit]}`;
    }
    case 'home-run':
    case 'port': {
      const { port, run, end } = outlets[index]!;
      const at = end === 'entry' ? data.start[run]! : data.start[run]! + data.count[run]! - 1;
      return `at port ${port}, ${end} ${nameOf(model, data.order[at]!)}`;
    }
    case 'trunk':
      return `from processor ${/^\d+/.exec(model.breakouts[index]!)?.[0] ?? ''} to breakout ${model.breakouts[index]}`;
    case 'breakout':
      return listed('port', portsInOrder(outlets.filter(({ breakout }) => breakout === index)));
    case 'processor':
      return listed('port', portsInOrder(outlets.filter(({ processor }) => processor === index)));
    case 'node':
      return listed('processor', [
        ...new Set(
          outlets
            .filter(({ run, end }) => end === 'entry' && model.nodeOf[run] === index)
            .map(({ processor }) => `${model.processors[processor]}`),
        ),
      ]);
    case 'circuit':
      return `distro ${model.distros[model.distroOf[index]!]}, entry ${nameOf(model, power.order[power.start[index]!]!)}`;
    case 'distro':
      return listed(
        'circuit',
        model.circuits.filter((_, circuit) => model.distroOf[circuit] === index),
      );
    case 'leg':
      return 'at the supply, before every distro';
    case 'distro-leg':
      return `behind distro ${model.distros[Math.floor(index / 3)]}`;
  }
}

/** What to try first when a part of this kind is suspected: the quickest test, the one that undoes least (common practice, no source). */
export const lookFirst: Readonly<Record<CulpritKind, string>> = {
  jumper: 'Push both plugs home, then change the jumper.',
  'home-run': 'Push it home at both ends, then change it with its neighbour: if the dark part moves, it is the cable.',
  'power-jumper':
    'See whether the first dark panel shows any lamp; with the circuit off, push both plugs home or change it.',
  panel: 'Plug past it with a longer jumper: if what follows lights up, it is the panel.',
  port: 'Move its home run to a free port.',
  circuit: 'See whether its breaker is open, and find out why before it is closed again.',
  trunk: 'Look at the link lamps at both ends; clean or change the trunk.',
  breakout: 'See whether it has power, then change it.',
  processor: 'See whether it has power and a picture at its input, then change it.',
  node: 'See whether it still sends a picture, then put a spare node in its place.',
  'distro-leg': 'Let who answers for the supply measure the leg at the distro.',
  distro: 'Let who answers for the supply look at its feed and its main switch.',
  leg: 'Let who answers for the supply measure the legs at the service.',
};

function nameOf({ surfaces }: FaultModel, panel: number): string {
  return panelAt(surfaces, panel)?.name ?? 'no panel';
}

function endsOf(model: FaultModel, { order }: ChainSet, at: number): readonly [string, string] {
  return [nameOf(model, order[at - 1]!), nameOf(model, order[at]!)];
}

/** 'from place 2 to place 3 of 12' of a chain, for the jumper that leads to the panel at `at`. */
function placesOf({ start, count }: ChainSet, chain: number, at: number): string {
  const place = at - start[chain]!;
  return `from place ${place} to place ${place + 1} of ${count[chain]}`;
}

function portOf({ outlets, entryOf }: FaultModel, run: number): string {
  return outlets[entryOf[run]!]!.port;
}

/** By breakout and number; runs take their ports and those they return to in turns. */
function portsInOrder(outlets: readonly { readonly port: string }[]): string[] {
  return outlets.map(({ port }) => port).sort();
}

/** 'ports 3B-01 to 3B-10 (10)'; 'processor 3'. */
function listed(noun: string, names: readonly string[]): string {
  const [first, ...rest] = names;
  if (first === undefined) return `no ${noun}`;
  const last = rest.at(-1);
  return last === undefined ? `${noun} ${first}` : `${counted(names.length, noun)}, ${first} to ${last}`;
}
