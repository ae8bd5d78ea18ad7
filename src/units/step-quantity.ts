import type { DisplayOptions } from './display-options';
import { exactFactors } from './exact-factors';
import { plainUnit } from './plain-unit';
import { settleQuantity } from './settle-quantity';
import type { Unit } from './unit';

/** What an arrow key and what a page key moves a figure by, in its own unit. */
type Steps = readonly [arrow: number, page: number];

const lengthSteps: Readonly<Record<string, Steps>> = {
  mm: [1, 10],
  cm: [10, 100],
  m: [100, 1000],
  in: [exactFactors.mmAnInch / 8, exactFactors.mmAnInch],
  ft: [exactFactors.mmAnInch, exactFactors.mmAFoot],
};

const steps: Readonly<Record<Exclude<Unit, 'mm'>, Steps>> = {
  m2: [1, 10],
  m3: [10, 100],
  deg: [0.5, 5],
  px: [1, 100],
  kg: [0.1, 1],
  kPa: [0.1, 1],
  A: [1, 10],
  V: [1, 10],
  W: [10, 100],
  tons: [1, 10],
  btuh: [1000, 10_000],
  'm3/s': [0.1, 1],
  min: [1, 10],
  s: [1, 10],
  Hz: [10, 100],
  fps: [1, 10],
  bit: [2, 2],
  bps: [1e6, 1e8],
  share: [0.01, 0.1],
  money: [10, 100],
  days: [1, 7],
  K: [1, 5],
  count: [1, 10],
};

/** One step of a key up or down. The figure comes to the next whole multiple of the step: 7.32 m goes up to 7.4 m. */
export function stepQuantity(
  value: number,
  unit: Unit,
  key: { readonly up: boolean; readonly page: boolean },
  options: DisplayOptions,
  plain?: string,
): number {
  const [arrow, page] = unit === 'mm' ? (lengthSteps[plainUnit(unit, options, plain)] ?? lengthSteps.mm!) : steps[unit];
  const step = key.page ? page : arrow;
  const at = value / step;
  // A figure within a thousandth of a step of a multiple stands on it.
  const whole = Math.round(at);
  const isOnMultiple = Math.abs(at - whole) < 1e-3;
  const next = key.up ? (isOnMultiple ? whole + 1 : Math.ceil(at)) : isOnMultiple ? whole - 1 : Math.floor(at);
  return settleQuantity(next * step, unit);
}
