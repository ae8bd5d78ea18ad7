import type { Rate } from '../../units/format-rate';

/** Rates that stages are fed with, rising. Source: ITU-R BT.2020-2, table 2, to 120; above it common practice, no source. */
const usualRates: readonly Rate[] = [
  { frames: 24000, seconds: 1001 },
  { frames: 24, seconds: 1 },
  { frames: 25, seconds: 1 },
  { frames: 30000, seconds: 1001 },
  { frames: 30, seconds: 1 },
  { frames: 48000, seconds: 1001 },
  { frames: 48, seconds: 1 },
  { frames: 50, seconds: 1 },
  { frames: 60000, seconds: 1001 },
  { frames: 60, seconds: 1 },
  { frames: 96, seconds: 1 },
  { frames: 100, seconds: 1 },
  { frames: 120000, seconds: 1001 },
  { frames: 120, seconds: 1 },
  { frames: 144, seconds: 1 },
  { frames: 192, seconds: 1 },
  { frames: 240, seconds: 1 },
];

function compareRates(one: Rate, other: Rate): number {
  return one.frames * other.seconds - other.frames * one.seconds;
}

/** The next usual rate above or below a rate; the rate itself where there is none. */
export function nextRate(rate: Rate, direction: 1 | -1): Rate {
  const beyond =
    direction > 0
      ? usualRates.find((usual) => compareRates(usual, rate) > 0)
      : usualRates.findLast((usual) => compareRates(usual, rate) < 0);
  return beyond ?? rate;
}
