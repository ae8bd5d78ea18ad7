import type { Culprit } from './culprit';
import type { ChainSet, FaultModel } from './fault-model';

/** Numbers of the panels that hang on a part itself: both ends of a jumper, the panel at a home run, what a port, a box or a circuit feeds. */
export function panelsOn(model: FaultModel, { kind, index }: Culprit): readonly number[] {
  const { data, power, outlets, nodeOf, distroOf, legsOf } = model;
  switch (kind) {
    case 'panel':
      return [index];
    case 'jumper':
      return [data.order[index - 1]!, data.order[index]!];
    case 'power-jumper':
      return [power.order[index - 1]!, power.order[index]!];
    case 'home-run': {
      const { run, end } = outlets[index]!;
      return [data.order[data.start[run]! + (end === 'entry' ? 0 : data.count[run]! - 1)]!];
    }
    case 'port':
      return chained(data, (run) => run === outlets[index]!.run);
    case 'trunk':
    case 'breakout':
      return onOutlets(model, ({ breakout }) => breakout === index);
    case 'processor':
      return onOutlets(model, ({ processor }) => processor === index);
    case 'node':
      return chained(data, (run) => nodeOf[run] === index);
    case 'circuit':
      return chained(power, (circuit) => circuit === index);
    case 'distro':
      return chained(power, (circuit) => distroOf[circuit] === index);
    case 'leg':
      return chained(power, (circuit) => (legsOf[circuit]! & (1 << index)) !== 0);
    case 'distro-leg':
      return chained(
        power,
        (circuit) => distroOf[circuit] === Math.floor(index / 3) && (legsOf[circuit]! & (1 << (index % 3))) !== 0,
      );
  }
}

function onOutlets({ data, outlets }: FaultModel, isOn: (outlet: FaultModel['outlets'][number]) => boolean) {
  const runs = new Set(outlets.filter(isOn).map(({ run }) => run));
  return chained(data, (run) => runs.has(run));
}

function chained({ order, start, count }: ChainSet, isOn: (chain: number) => boolean): readonly number[] {
  const panels: number[] = [];
  for (let chain = 0; chain < start.length; chain++) {
    if (!isOn(chain)) continue;
    for (let place = start[chain]!; place < start[chain]! + count[chain]!; place++) panels.push(order[place]!);
  }
  return panels;
}
